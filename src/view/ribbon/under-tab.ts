import type { DisplayList, Item } from '../../drawing/display-list.ts';

type Parts = DisplayList['items'];

/** Half the tab and half a line of text, px: a text nearer to the work height would be cut by the tab. */
const NEAR_PX = 21;

const isUnder = (item: Item, z: number, near: number): boolean => item.t === 'text' && Math.abs(item.at[1] - z) < near;

/** Heights of the texts that the tab lies on, as one word: the same while it is dragged over nothing new. */
export function underTab(parts: Parts, work: number | undefined, perMm: number): string {
  if (work === undefined) return '';
  const texts = parts.flatMap((p) => p.items.filter((i) => isUnder(i, work, NEAR_PX / perMm)));
  return texts.map((t) => (t.t === 'text' ? t.at[1] : '')).join(' ');
}

/** The parts without those texts. */
export function without(parts: Parts, under: string): Parts {
  if (under === '') return parts;
  const gone = new Set(under.split(' ').map(Number));
  return parts.map((p) => ({ ...p, items: p.items.filter((i) => i.t !== 'text' || !gone.has(i.at[1])) }));
}
