import { createElement, type ReactElement } from 'react';
import { inLetters } from './in-letters.ts';

const files = import.meta.glob<string>('../../../shared/look/icons/*.svg', {
  query: '?raw',
  eager: true,
  import: 'default',
});

/** The directions on the pad and a few keys that the drawn set does not have; same grid, same pen. */
const own: Readonly<Record<string, string>> = {
  up: '<path d="M12 19V5M7 10l5-5 5 5"/>',
  down: '<path d="M12 5v14M7 14l5 5 5-5"/>',
  ahead: '<path d="M4 19 13 5M6.5 7.500 13 5l1 7"/>',
  left: '<path d="M19 20v-9l-6-5H4M8.500 1.500 4 6l4.500 4.500"/>',
  right: '<path d="M5 20v-9l6-5h9M15.500 1.500 20 6l-4.500 4.500"/>',
  branch: '<path d="M3 8h18M12 8v12"/>',
  more: '<path d="M4 12h.01M12 12h.01M20 12h.01" stroke-width="3.2"/>',
  close: '<path d="M6 6l12 12M18 6 6 18"/>',
  help: '<path d="M8 9.500V8l3-3h3l2.500 2.500v2.500L12 14v2M12 20v.3"/>',
  day: '<circle cx="12" cy="12" r="4"/><path d="M12 3v2M12 19v2M3 12h2M19 12h2M5.600 5.600 7 7M17 17l1.400 1.400M5.600 18.400 7 17M17 7l1.400-1.400"/>',
  night: '<path d="M19 14.500A8 8 0 0 1 9.500 5 7.500 7.500 0 1 0 19 14.500z"/>',
  fit: '<path d="M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5"/><path d="M9 9h6v6H9z"/>',
  plus: '<path d="M12 5v14M5 12h14"/>',
  minus: '<path d="M5 12h14"/>',
  back: '<path d="M14.500 5 7.500 12l7 7"/>',
  sums: '<path d="M4 8h7M7.500 4.500v7M14.500 8H20M5 20l5.500-5.500M5 14.500l5.500 5.500M14.500 15.500H20M14.500 19H20"/>',
  bin: '<path d="M4 7h16M9 7V4h6v3M6.500 7l1 13h9l1-13"/>',
  photo: '<path d="M3 8h4l2-3h6l2 3h4v11H3z"/><circle cx="12" cy="13" r="3.4" stroke-width="1.4"/>',
  'my-things': '<path d="M6 3h12v14H6z"/><path d="M8.500 17v4M12 17v4M15.500 17v4M9.500 7.500h5" stroke-width="1.4"/>',
  things: '<path d="M9 6h12M9 12h12M9 18h12"/><path d="M4 6h.01M4 12h.01M4 18h.01" stroke-width="3"/>',
};

const REACT_NAMES: Readonly<Record<string, string>> = {
  'stroke-width': 'strokeWidth',
  'stroke-dasharray': 'strokeDasharray',
  'stroke-linecap': 'strokeLinecap',
  'stroke-linejoin': 'strokeLinejoin',
};

/** Only the flat shapes our icons are made of are read: anything else in a file is left out. */
function shapes(markup: string): ReactElement[] {
  const found: ReactElement[] = [];
  for (const [, tag, attributes] of markup.matchAll(/<(path|circle|rect|line)\s([^>]*?)\/?>/g)) {
    if (tag === undefined || attributes === undefined) continue;
    const props: Record<string, string> = {};
    for (const [, name, value] of attributes.matchAll(/([\w-]+)="([^"]*)"/g)) {
      if (name !== undefined && value !== undefined) props[REACT_NAMES[name] ?? name] = value;
    }
    found.push(createElement(tag, { key: found.length, ...props }));
  }
  return found;
}

const drawn = new Map<string, ReactElement[]>();
for (const [path, markup] of Object.entries(files)) {
  const name = /([\w-]+)\.svg$/.exec(path)?.[1];
  if (name !== undefined) drawn.set(name, shapes(markup));
}
for (const [name, markup] of Object.entries(own)) drawn.set(name, shapes(markup));

/** One icon of the set, in the colour of its text. Always beside a word: it says nothing to a screen reader. */
export function Icon({ name, size = 26 }: { readonly name: string; readonly size?: number }) {
  return (
    <svg
      className="icon"
      aria-hidden="true"
      focusable="false"
      width={inLetters(size)}
      height={inLetters(size)}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth={1.7}
      strokeLinecap="round"
      strokeLinejoin="round"
    >
      {drawn.get(name) ?? null}
    </svg>
  );
}
