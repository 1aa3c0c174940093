import type { State } from '../../report/section.ts';
import type { Item, LineStyle, TextItem, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { findingMm } from '../paint/finding-prims.ts';
import { FIGURE, type LaidDistance, WANTED, WORD_GAP_MM } from './distance-lanes.ts';

/** Told apart by weight and beat; colour only says it again. */
const LINES: Readonly<Record<State, LineStyle>> = {
  stop: { ink: 'stop', pen: PEN.wallEdge, dash: [], fit: false },
  check: { ink: 'ink1', pen: PEN.doorLeaf, dash: [], fit: false },
  cantTell: { ink: 'cantTell', pen: PEN.doorLeaf, dash: [1.6, 1], fit: false },
  note: { ink: 'dimension', pen: PEN.dimension, dash: [], fit: false },
  pass: { ink: 'dimension', pen: PEN.dimension, dash: [], fit: false },
  none: { ink: 'dimension', pen: PEN.dimension, dash: [], fit: false },
};
const EXTENSION: LineStyle = { ink: 'dimension', pen: PEN.batten, dash: [], fit: false };
const BAND: LineStyle = { ink: 'chosen', pen: 3, dash: [], fit: false, cap: 'round' };
const CHOSEN: LineStyle = { ink: 'accent', pen: PEN.wallEdge, dash: [], fit: false };
const GAP_MM = 1.2;
const PAST_MM = 1;

const LETTER: Readonly<Partial<Record<State, string>>> = { stop: 'S', check: 'C', cantTell: '?', note: 'N' };

function extension(end: Vec, foot: Vec, k: number): Item[] {
  const far = Math.hypot(foot[0] - end[0], foot[1] - end[1]);
  if (far < GAP_MM + 0.4) return [];
  const at = (s: number): Vec => [
    (end[0] + ((foot[0] - end[0]) * s) / far) * k,
    (end[1] + ((foot[1] - end[1]) * s) / far) * k,
  ];
  return [{ t: 'line', pts: [at(GAP_MM), at(far + PAST_MM)], style: EXTENSION }];
}

/** A measured line as it is painted at its scale: line, slants, extensions, what was found and what is wanted. */
export function distanceItems(laid: LaidDistance, mmPerPaperMm: number, chosen: boolean): Item[] {
  const k = mmPerPaperMm;
  const { state } = laid.distance;
  const plane = (p: Vec): Vec => [p[0] * k, p[1] * k];
  const style = chosen && state !== 'stop' ? { ...CHOSEN, dash: LINES[state].dash } : LINES[state];
  const pts = laid.line.map(plane);
  const { words, reads: way } = laid;
  const text = (s: number, part: Pick<TextItem, 'text' | 'size' | 'weight' | 'ink'>): TextItem => ({
    t: 'text',
    at: plane([laid.textAt[0] + way[0] * s, laid.textAt[1] + way[1] * s]),
    align: 'left',
    turnDeg: (Math.atan2(way[1], way[0]) * 180) / Math.PI,
    halo: true,
    ...part,
  });
  const figureInk = state === 'stop' ? 'stop' : state === 'cantTell' ? 'cantTell' : 'ink1';
  const items: Item[] = [
    ...(chosen ? [{ t: 'line', pts, style: BAND } as const] : []),
    ...laid.ends.flatMap((end, i) => extension(end, laid.feet[i] ?? end, k)),
    { t: 'line', pts, style },
    ...laid.feet.map(
      (at): Item => ({ t: 'mark', mark: 'slant', at: plane(at), turnDeg: laid.turnDeg, ink: style.ink }),
    ),
    text(words.markMm, { text: words.found, size: FIGURE, weight: 600, ink: figureInk }),
  ];
  if (words.wanted !== '') {
    const s = words.markMm + words.foundMm + WORD_GAP_MM;
    items.push(text(s, { text: words.wanted, size: WANTED, weight: 400, ink: 'ink2' }));
  }
  if (words.mark) {
    const s = findingMm('screen') / 2;
    const at = plane([laid.textAt[0] + way[0] * s, laid.textAt[1] + way[1] * s]);
    items.push({ t: 'mark', mark: `finding:${state}`, at, turnDeg: 0, ink: 'ink1', text: LETTER[state] ?? '' });
  }
  return items;
}

function toSegment([x, y]: Vec, [p, q]: readonly [Vec, Vec]): number {
  const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - p[0]) * dx + (y - p[1]) * dy) / l2));
  return Math.hypot(x - p[0] - t * dx, y - p[1] - t * dy);
}

/** The measured line under a tap (mm of paper), its figure before its line; null where none is so near. */
export function distanceAt(laid: readonly LaidDistance[], at: Vec, reachMm: number): string | null {
  let best: { readonly key: string; readonly off: number } | undefined;
  for (const l of laid) {
    const { box } = l;
    const dx = Math.max(box.minX - at[0], 0, at[0] - box.maxX);
    const dy = Math.max(box.minY - at[1], 0, at[1] - box.maxY);
    const off = Math.min(Math.hypot(dx, dy), toSegment(at, l.line) + 0.5);
    if (off <= reachMm && (!best || off < best.off)) best = { key: l.key, off };
  }
  return best?.key ?? null;
}
