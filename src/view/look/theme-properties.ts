import { look, type ThemeName } from './tokens.ts';

const kebab = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

/**
 * CSS custom properties of a theme, from the look tokens: `--paper`, `--ink1`, `--stop-tint`, `--service-heating-flow`…
 * One flat list, so that a style sheet never holds a colour of its own.
 */
export function themeProperties(theme: ThemeName | 'forced'): ReadonlyMap<string, string> {
  return theme === 'forced' ? forcedProperties() : ownProperties(theme);
}

const CANVAS =
  /^--(desk|paper|raised|panel|tint|wall-fill|void-wash|opening-fill|halo|.*-tint|.*-fill|stop-letter|focus-gap)$/;
const HIGHLIGHT = /^--(accent|accent-pressed|focus-ring)$/;

/** The same names with the device's own colours: pictures that are no canvas are drawn with them too. */
function forcedProperties(): ReadonlyMap<string, string> {
  return new Map(
    [...ownProperties('day')].map(([name, value]) => {
      if (name.endsWith('-width')) return [name, value];
      if (name === '--key-edge' || name === '--lifted') return [name, 'none'];
      if (name === '--on-accent') return [name, 'HighlightText'];
      if (name === '--stop-fill') return [name, 'CanvasText'];
      return [name, HIGHLIGHT.test(name) ? 'Highlight' : CANVAS.test(name) ? 'Canvas' : 'CanvasText'];
    }),
  );
}

function ownProperties(theme: ThemeName): ReadonlyMap<string, string> {
  const t = look.themes[theme];
  const found = new Map<string, string>();
  for (const group of [t.surface, t.ink, t.accent, t.building] as const) {
    for (const [key, value] of Object.entries(group)) found.set(`--${kebab(key)}`, value);
  }
  found.set('--focus-ring', t.focus.ring);
  found.set('--focus-gap', t.focus.gap);
  found.set('--focus-ring-width', `${t.focus.ringWidth}px`);
  found.set('--focus-gap-width', `${t.focus.gapWidth}px`);
  found.set('--halo', t.text.halo);
  for (const [key, value] of Object.entries(t.finding)) {
    for (const [part, colour] of Object.entries(value)) found.set(`--${kebab(key)}-${part}`, colour);
  }
  for (const [key, value] of Object.entries(t.service)) found.set(`--service-${kebab(key)}`, value);
  const lift = theme === 'day' ? look.elevation.key : 'none';
  const lifted = theme === 'day' ? look.elevation.lifted : look.elevation.liftedNight;
  found.set('--key-edge', lift.replaceAll('{hairline}', t.surface.hairline));
  found.set('--lifted', lifted.replaceAll('{hairline}', t.surface.hairline));
  return found;
}
