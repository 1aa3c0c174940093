import { createStore } from 'zustand/vanilla';
import { themeProperties } from './theme-properties.ts';
import type { ThemeName } from './tokens.ts';

/** What the user asked for; `system` follows the device. */
export type ThemeChoice = 'system' | ThemeName;
export const THEME_CHOICES: readonly ThemeChoice[] = ['system', 'day', 'night'];

export interface ThemeState {
  readonly choice: ThemeChoice;
  /** What is shown now. */
  readonly shown: ThemeName;
}

const KEY = 'kickset.theme';
const darkQuery = '(prefers-color-scheme: dark)';

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

const resolve = (choice: ThemeChoice): ThemeName =>
  choice === 'system' ? (matchMedia(darkQuery).matches ? 'night' : 'day') : choice;

export const theme = createStore<ThemeState>(() => ({ choice: 'system', shown: 'day' }));

function apply(shown: ThemeName): void {
  const root = document.documentElement;
  root.dataset.theme = shown;
  const properties = themeProperties(shown);
  for (const [name, value] of properties) root.style.setProperty(name, value);
  root.style.colorScheme = shown === 'day' ? 'light' : 'dark';
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
}
