import { type JoistLine, joistLines } from '../../geometry/joist-lines.ts';
import { direction, left } from '../../geometry/vec.ts';
import type { Joists, Void } from '../../plan/records/building.ts';
import type { Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';

/** Both sides of a timber are told apart down to this on paper; nearer, its middle line stands for it. */
const PAIR_PAPER_MM = 0.7;
/** Nearer than this on paper joists are a grey, and are left away. */
const APART_PAPER_MM = 1.8;
/** What is inside an engineered joist shows from this scale. */
const LARGE = 32;

const SEEN: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [], fit: false };
/** Nobody has looked: the thin dash of things that are hidden. */
const ASSUMED: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [1.6, 0.8], fit: false };
const HIDDEN: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [0.8, 0.6], fit: false };
const TRIMMER: LineStyle = { ...SEEN, pen: 0.5 };

/** Shown at this breadth where none was told, so that its kind shows. */
const USUAL_SHARE = 0.12;
/** Slants of a metal web go along the joist by so many breadths. */
const WEB_BREADTHS = 6;
/** More slants than this in one joist is a broken breadth. */
const MOST_SLANTS = 200;
/** Either side of the middle, as a part of the breadth. */
const WEB_SHARE = 0.12;

export const DOUBLED = 'doubled';
export const TRIMMED = 'trimmer';
export const MISSING = 'missing';

interface Drawn {
  readonly line: JoistLine;
  readonly side: Vec;
  readonly breadth: number;
  readonly style: LineStyle;
  readonly fine: Vec;
}

const beside = ({ line, side }: Drawn, mm: number): [Vec, Vec] => [
  [line.a.x + side[0] * mm, line.a.y + side[1] * mm],
  [line.b.x + side[0] * mm, line.b.y + side[1] * mm],
];

/** The slants of an open web from chord to chord, as one line. */
function zigzag(d: Drawn): Vec[] {
  const { a, b } = d.line;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const n = Math.min(MOST_SLANTS, Math.max(2, Math.round(length / (d.breadth * WEB_BREADTHS))));
  return Array.from({ length: n + 1 }, (_, i): Vec => {
    const t = i / n;
    const off = (d.breadth / 2) * (i % 2 === 0 ? -1 : 1);
    return [a.x + (b.x - a.x) * t + d.side[0] * off, a.y + (b.y - a.y) * t + d.side[1] * off];
  });
}

function within(kind: Joists['kind'], d: Drawn): Item[] {
  const large: Vec = [0, Math.min(LARGE, d.fine[1])];
  const line = (pts: readonly Vec[], style: LineStyle, scales: Vec): Item => ({ t: 'line', pts, style, scales });
  if (kind === 'engineered') return [-1, 1].map((s) => line(beside(d, s * d.breadth * WEB_SHARE), HIDDEN, large));
  if (kind === 'metalWeb') return [line(zigzag(d), d.style, large)];
  if (kind === 'truss') return [line(beside(d, 0), { ...d.style, dash: [6, 1.2] }, d.fine)];
  return [];
}

const sides = (what: string): readonly number[] => (what === DOUBLED ? [-1, 0, 1] : [-0.5, 0.5]);

/**
 * Every joist by its kind: two sides at true width near by, one line further off, nothing where they would only be a
 * grey. Solid timber is two lines; engineered has its web between, an open metal web its slants, a truss a middle line;
 * of an unknown kind only the middle line is drawn. Where nobody has placed them they are dashed.
 */
export function joistItems(v: Pick<Void, 'outline' | 'holes' | 'joists' | 'sureness'>): Item[] {
  const { joists } = v;
  if (!joists) return [];
  const way = left(direction(joists.wayDeg));
  const side: Vec = [way.x, way.y];
  const unsure = joists.assumed?.includes('first') || joists.assumed?.includes('centresMm');
  const plain = unsure ? ASSUMED : SEEN;
  const told = joists.breadthMm !== null && joists.breadthMm > 0;
  const breadth = told ? (joists.breadthMm ?? 0) : joists.centresMm * USUAL_SHARE;
  const fine: Vec = [0, breadth / PAIR_PAPER_MM];
  const coarse: Vec = [told ? fine[1] : 0, Math.max(fine[1], joists.centresMm / APART_PAPER_MM)];
  return joistLines(v).flatMap((line): Item[] => {
    const style = line.what === TRIMMED ? TRIMMER : plain;
    const d: Drawn = { line, side, breadth, style, fine };
    const middle: Item = { t: 'line', pts: beside(d, 0), style, scales: coarse };
    if (!told || joists.kind === 'unknown') return [{ ...middle, scales: [0, coarse[1]] }];
    return [
      ...sides(line.what).map((s): Item => ({ t: 'line', pts: beside(d, s * breadth), style, scales: fine })),
      ...within(joists.kind, d),
      middle,
    ];
  });
}

/** What is said of one joist that is not like the others; empty for one that is. */
export function sayException(e: Joists['exceptions'][number]): string {
  const moved = e.offsetMm === 0 ? '' : `moved ${Math.abs(Math.round(e.offsetMm))}`;
  const what = e.what === MISSING ? 'no joist' : e.what;
  return [what, moved].filter((part) => part !== '').join(', ');
}

/** After everything that is said of pipes. */
const RANK = 9;

/** Words at each joist that is not like the others: at its middle, where it is or would be. */
export function exceptionWishes(v: Pick<Void, 'outline' | 'holes' | 'joists'>): Wish[] {
  const { joists } = v;
  if (!joists || joists.exceptions.length === 0) return [];
  const all = joists.exceptions.map((e) => (e.what === MISSING ? { ...e, what: '' } : e));
  const lines = joistLines({ outline: v.outline, holes: v.holes, joists: { ...joists, exceptions: all } });
  return joists.exceptions.flatMap((e): Wish[] => {
    const line = lines.find((l) => l.index === e.index);
    const what = sayException(e);
    if (!line || what === '') return [];
    const at: Vec = [line.a.x + (line.b.x - line.a.x) / 3, line.a.y + (line.b.y - line.a.y) / 3];
    return [{ w: 'flag', at, what, how: null, rank: RANK, clearMm: 0.5 }];
  });
}
