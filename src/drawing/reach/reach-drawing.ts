import type { Plan } from '../../plan/plan.ts';
import type { ReachAnswer } from '../../report/report.ts';
import type { Box, Item, LineStyle, Vec, View } from '../display-list.ts';
import { SPOT_MM } from '../labels/finding-marks.ts';
import { boxAt, overlap } from '../labels/paper.ts';
import { SCREEN, SIZE } from '../look/tokens.ts';
import { planeOf } from '../pipes/plane.ts';
import { notTwice } from './not-twice.ts';
import { stateMark, words, wordsBox } from './reach-marks.ts';

export interface ReachDrawing {
  /** Over the pipes. */
  readonly ways: readonly Item[];
  /** Over everything, at a scale: how each end stands, and what is in the way. Words keep within what shows. */
  marks(mmPerPaperMm: number, visible?: Box): readonly Item[];
  /** What the marks and words take at that scale, in mm of the plane: no label goes there. */
  taken(mmPerPaperMm: number, visible?: Box): readonly Box[];
}

export interface ReachChoice {
  /** Key of the answer that is looked at: the others stand back, and its words are written out. */
  readonly looked: string | null;
}

/** Names one answer among all. */
export const reachKey = (a: Pick<ReachAnswer, 'appliance' | 'service' | 'end'>): string =>
  `${a.appliance} ${a.service} ${a.end}`;

const RANK: Readonly<Record<ReachAnswer['state'], number>> = { pass: 0, check: 1, cantTell: 2, stop: 3 };
/** Reached: a long beat in the accent. Not reached: a short thin one. Told apart without colour. */
const REACHED: LineStyle = { ink: 'accent', pen: 0.6, dash: [3, 1.1], fit: false, cap: 'butt' };
const STOPPED: LineStyle = { ink: 'stop', pen: 0.5, dash: [1.2, 1.1], fit: false, cap: 'butt' };
/** Those that are not looked at stand back. */
const BACK: LineStyle = { ink: 'ink3', pen: 0.25, dash: [1.2, 1.1], fit: false, cap: 'butt' };
/** A strip of paper under a way parts it from the pipes it runs along or over. */
const STRIP_MM = 0.5;
const RADIUS_MM = 1.4;
const ACROSS_MM = SIZE.mark / SCREEN.pxPerMm;

interface Drawn {
  readonly answer: ReachAnswer;
  readonly key: string;
  readonly pts: readonly Vec[];
  readonly end: Vec;
}

/** One service at a time: condensate, or what is looked at. Two waters on one drawing are none. */
function picked(answers: readonly ReachAnswer[], looked: string | null): readonly ReachAnswer[] {
  const service = answers.find((a) => reachKey(a) === looked)?.service;
  const main = answers.some((a) => a.service === 'condensate') ? 'condensate' : 'boilerRelief';
  return answers.filter((a) => a.service === (service ?? main));
}

function wayItems({ answer, key }: Drawn, parts: readonly (readonly Vec[])[], looked: string | null): Item[] {
  const ink = answer.state === 'cantTell' ? 'cantTell' : STOPPED.ink;
  const own = answer.state === 'pass' || answer.state === 'check' ? REACHED : { ...STOPPED, ink };
  const back = looked !== null && key !== looked;
  const style = back ? BACK : own;
  const strip: LineStyle = { ink: 'paper', pen: style.pen + STRIP_MM, dash: [], fit: false, cap: 'butt' };
  return (back ? [style] : [strip, style]).flatMap((of) =>
    parts.map((pts): Item => ({ t: 'line', pts, style: of, roundMm: RADIUS_MM })),
  );
}

/** Where a mark may stand beside its end, paper mm: near by first. */
const BESIDE: readonly Vec[] = [5.2, 9, 13].flatMap((d): Vec[] => [
  [d, d],
  [d, -d],
  [-d, d],
  [-d, -d],
  [d * 1.4, 0],
  [0, d * 1.4],
  [-d * 1.4, 0],
  [0, -d * 1.4],
]);

/** Marks beside their ends at a scale, none over another or over a ring where there is room. */
function placed(ends: readonly Drawn[], rings: readonly Vec[], k: number): { of: Drawn; by: Vec; box: Box }[] {
  const full: Box[] = rings.map((at) => boxAt(at[0] / k, at[1] / k, 2 * SPOT_MM, 2 * SPOT_MM));
  for (const { end } of ends) full.push(boxAt(end[0] / k, end[1] / k, 2, 2));
  return ends.map((of) => {
    const wide = of.answer.state === 'pass' ? 8.8 : ACROSS_MM;
    const at = ([dx, dy]: Vec): Box => boxAt(of.end[0] / k + dx, of.end[1] / k + dy, wide, ACROSS_MM);
    const by = BESIDE.find((d) => full.every((b) => !overlap(b, at(d)))) ?? BESIDE[0] ?? [0, 0];
    const box = at(by);
    full.push(box);
    return { of, by, box };
  });
}

/** Rings at what is in the way; several ways stopped by one thing at one place share theirs. */
function spots(drawn: readonly Drawn[], place: (p: ReachAnswer['blocks'][number]['at']) => Vec) {
  const found = new Map<string, { at: Vec; what: string; of: string[]; hard: boolean }>();
  for (const { answer, key } of drawn) {
    for (const block of answer.blocks) {
      if (block.ids.includes(answer.end)) continue;
      const at = place(block.at);
      const near = `${block.ids.join(' ')} ${Math.round(at[0] / 100)} ${Math.round(at[1] / 100)}`;
      const there = found.get(near);
      if (there) there.of.push(key);
      else found.set(near, { at, what: block.what, of: [key], hard: answer.state === 'stop' });
    }
  }
  return [...found.values()];
}

/** The ways of a report on a plan, each with how its end stands and rings at what is in the way. Nothing on a wall face. */
export function reachDrawing(
  plan: Plan,
  view: View,
  answers: readonly ReachAnswer[],
  { looked }: ReachChoice,
): ReachDrawing {
  const plane = view.kind === 'plan' ? planeOf(plan, view) : undefined;
  const place = (p: ReachAnswer['blocks'][number]['at']): Vec => plane?.at(p) ?? [p.x, p.y];
  const rank = (d: Drawn): number => (d.key === looked ? -1 : RANK[d.answer.state]);
  const all = (plane ? picked(answers, looked) : [])
    .flatMap((answer): Drawn[] => {
      const pts = answer.way.map(place);
      const end = pts[pts.length - 1];
      return end && pts.length > 1 ? [{ answer, key: reachKey(answer), pts, end }] : [];
    })
    .sort((a, b) => rank(a) - rank(b) || a.pts.length - b.pts.length || (a.key < b.key ? -1 : 1));
  const drawn = all.filter((d) => d.answer.storey === plane?.storey);
  // Where it ends on another floor than it runs on, that floor shows how the end stands.
  const below = all.filter((d) => !drawn.includes(d) && plan.points[d.answer.end]?.storey === plane?.storey);
  const parts = notTwice(drawn.map((d) => d.pts));
  const ways = drawn
    .map((d, i) => wayItems(d, parts[i] ?? [], looked))
    .reverse()
    .flat();
  const rings = spots(drawn, place);
  const ringItems = (k: number, visible: Box | undefined) =>
    rings.flatMap((r): Item[] => {
      const ink = r.hard ? 'stop' : 'ink1';
      const ring: Item = { t: 'mark', mark: 'spot', at: r.at, turnDeg: 0, ink, sizeMm: SPOT_MM };
      return looked !== null && r.of.includes(looked) ? [ring, words(r.at, r.what, k, visible)] : [ring];
    });
  const told = [...drawn, ...below].filter((d) => looked === null || d.key === looked);
  const stand = (k: number) =>
    placed(
      told,
      rings.map((r) => r.at),
      k,
    );
  return {
    ways,
    marks: (k, visible) => [
      ...ringItems(k, visible),
      ...stand(k).flatMap(({ of, by }) => stateMark(of.end, of.answer.state, by)),
    ],
    taken: (k, visible) => [
      ...ringItems(k, visible).flatMap((item) => (item.t === 'text' ? [wordsBox(item, k)] : [])),
      ...stand(k).map(({ box }) => grown(box, k)),
      ...rings.map((r) => boxAt(r.at[0], r.at[1], 2 * SPOT_MM * k, 2 * SPOT_MM * k)),
    ],
  };
}

const grown = (b: Box, k: number): Box => ({ minX: b.minX * k, minY: b.minY * k, maxX: b.maxX * k, maxY: b.maxY * k });
