import { createStore } from 'zustand/vanilla';
import { themeProperties } from './theme-properties.ts';
import type { ThemeName } from './tokens.ts';

/** What the user asked for; `system` follows the device. */
export type ThemeChoice = 'system' | ThemeName;
export const THEME_CHOICES: readonly ThemeChoice[] = ['system', 'day', 'night'];

export type Shown = ThemeName | 'forced';

export interface ThemeState {
  readonly choice: ThemeChoice;
  /** What is shown now. `forced`: the device's own few colours go before any of ours. */
  readonly shown: Shown;
}

const KEY = 'kickset.theme';
const darkQuery = '(prefers-color-scheme: dark)';
const forcedQuery = '(forced-colors: active)';

function stored(): ThemeChoice {
  // Storage may be closed to the page (private windows): the system's own choice is then good enough.
  try {
    const value = localStorage.getItem(KEY);
    return value === 'day' || value === 'night' ? value : 'system';
  } catch {
    return 'system';
  }
}

function keep(choice: ThemeChoice): void {
  try {
    if (choice === 'system') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, choice);
  } catch {
    // Nowhere to keep it: it holds until the page is closed.
  }
}

function resolve(choice: ThemeChoice): Shown {
  if (matchMedia(forcedQuery).matches) return 'forced';
  return choice === 'system' ? (matchMedia(darkQuery).matches ? 'night' : 'day') : choice;
}

export const theme = createStore<ThemeState>(() => ({ choice: 'system', shown: 'day' }));

function apply(shown: Shown): void {
  const root = document.documentElement;
  root.dataset.theme = shown;
  const properties = themeProperties(shown);
  for (const [name, value] of properties) root.style.setProperty(name, value);
  root.style.colorScheme = shown === 'day' ? 'light' : shown === 'night' ? 'dark' : 'light dark';
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', properties.get('--panel') ?? '');
}

export function chooseTheme(choice: ThemeChoice): void {
  keep(choice);
  const shown = resolve(choice);
  apply(shown);
  theme.setState({ choice, shown });
}

/** Puts the theme on the page and keeps following the system while nothing else was chosen. */
export function startTheme(): void {
  const choice = stored();
  const shown = resolve(choice);
  apply(shown);
  theme.setState({ choice, shown });
  matchMedia(darkQuery).addEventListener('change', () => {
    if (theme.getState().choice === 'system') chooseTheme('system');
  });
  matchMedia(forcedQuery).addEventListener('change', () => chooseTheme(theme.getState().choice));
}
