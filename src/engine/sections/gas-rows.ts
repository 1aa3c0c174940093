import { tube } from '../../reference/tubes.ts';
import { againstMost, type Quantity, roundQuantity, sayFigures, type Verdict } from '../../report/quantity.ts';
import type { Bar, Row, State } from '../../report/section.ts';
import { metresLeft } from '../gas/metres-left.ts';
import { pathDrop } from '../gas/path-drop.ts';
import { sectionDrop } from '../gas/section-drop.ts';
import { asSize, type PathSection, sizeSteps } from '../gas/size-answers.ts';
import type { GasAppliance, GasSection } from '../gas-system/solve-gas.ts';
import type { Given } from '../given.ts';

export const stateOf = (verdict: Verdict | 'cantTell'): State => verdict;

export const barOf = (figure: Quantity, limit: Quantity | null, verdict: Verdict | 'cantTell'): Bar => ({
  figure: roundQuantity(figure),
  limit: limit?.lo ?? null,
  state: stateOf(verdict),
});

export const partsOf = (given: Given, a: GasAppliance): GasSection[] =>
  a.path.flatMap((id) => given.gas.sections.get(id) ?? []);

/** How it stands, in the words of the panel. */
export function sayVerdict(a: GasAppliance, anyNew: boolean): string {
  const { drop } = a.drop;
  if (a.verdict === 'pass') return 'passes';
  if (a.verdict === 'check') return anyNew ? 'new pipe: go a size up' : 'old pipe: measure';
  if (a.verdict === 'cantTell')
    return `can't tell: ${[...new Set([...a.load.missing, ...a.drop.working.missing])].join(', ') || 'no single way from the meter'}`;
  const over =
    a.limit === null
      ? ''
      : sayFigures({ ...drop, lo: drop.lo - a.limit.lo, hi: drop.hi === null ? null : drop.hi - a.limit.lo });
  return `over by ${over}`;
}

const label = (s: PathSection): string => tube(s.tubeKind, s.size)?.label ?? s.size ?? 'unknown';

/** "room for 7 m more of 28", of the longest new section; null where it cannot be told or there is none left. */
export function sayRoom(given: Given, a: GasAppliance): string | null {
  const fresh = partsOf(given, a).filter((p) => !p.ask.kept);
  const longest = [...fresh].sort((x, y) => (y.result.effectiveLength.hi ?? 0) - (x.result.effectiveLength.hi ?? 0))[0];
  if (!longest || a.limit === null) return null;
  const left = metresLeft(a.drop.drop, longest.result, a.limit.lo);
  if (left === null) return null;
  return left < 1 ? 'no length left' : `room for ${Math.floor(left)} m more of ${label(longest.ask)}`;
}

/** "28, then 22": the sizes of a path in order, each named once. */
export function saySizes(parts: readonly PathSection[]): string {
  const labels = parts.map(label).filter((l, i, all) => l !== all[i - 1]);
  return labels.length === 1 ? `${labels[0]} all the way` : labels.join(', then ');
}

/** A way of making the path: its sizes, its loss, how much is left, and what choosing it would change. */
export function choiceRow(
  given: Given,
  a: GasAppliance,
  parts: readonly GasSection[],
  asked: readonly PathSection[],
  name: string,
  chosen: boolean,
): Row {
  const dropped = asked.map(sectionDrop);
  const whole = pathDrop(name, dropped);
  const limit = a.limit;
  const verdict = limit === null ? 'cantTell' : againstMost(whole.drop, limit.lo);
  const fresh = dropped.filter((_, i) => asked[i]?.kept === false);
  const longest = [...fresh].sort((x, y) => (y.effectiveLength.hi ?? 0) - (x.effectiveLength.hi ?? 0))[0];
  const left = longest && limit ? metresLeft(whole.drop, longest, limit.lo) : null;
  const change = asked.flatMap((s, i) => {
    const part = parts[i];
    if (!part || s.size === null || s.size === part.ask.size) return [];
    return part.section.legs
      .filter((leg) => given.network.edges.get(leg)?.state === 'new')
      .map((leg) => ({ leg, kind: s.tubeKind, size: s.size ?? '' }));
  });
  return {
    kind: 'choice',
    label: name,
    figure: roundQuantity(whole.drop),
    bar: barOf(whole.drop, limit, verdict),
    state: stateOf(verdict),
    room: left === null ? null : left < 1 ? 'no length left' : `${Math.floor(left)} m left`,
    chosen,
    change,
    ids: [a.point],
  };
}

/** The same route with all its new pipe in one size, one row a size; the way it is drawn first where it mixes sizes. */
export function routeChoices(given: Given, a: GasAppliance): Row[] {
  const parts = partsOf(given, a);
  const asks = parts.map((p) => p.ask);
  const fresh = asks.filter((s) => !s.kept);
  const kind = fresh[0]?.tubeKind;
  if (kind === undefined) return [];
  const now = new Set(fresh.map((s) => s.size));
  const drawn = now.size > 1 ? [choiceRow(given, a, parts, asks, saySizes(asks), true)] : [];
  const uniform = sizeSteps(kind).map((size) => {
    const asked = asks.map((s) => asSize(s, size));
    const named = tube(kind, size)?.label ?? size;
    return choiceRow(given, a, parts, asked, `${named} all the way`, now.size === 1 && now.has(size));
  });
  return [...drawn, ...uniform];
}

/** One section in every size, the rest of the path as it is drawn: what passes, and how much longer it may be. */
export function sectionChoices(given: Given, a: GasAppliance, index: number): Row[] {
  const parts = partsOf(given, a);
  const asks = parts.map((p) => p.ask);
  const section = asks[index];
  if (!section || section.kept) return [];
  return sizeSteps(section.tubeKind).map((size) => {
    const asked = asks.map((s, i) => (i === index ? { ...s, size } : s));
    const dropped = asked.map(sectionDrop);
    const whole = pathDrop('', dropped);
    const here = dropped[index];
    const verdict = a.limit === null ? 'cantTell' : againstMost(whole.drop, a.limit.lo);
    const left = here && a.limit ? metresLeft(whole.drop, here, a.limit.lo) : null;
    return {
      kind: 'choice',
      label: `${tube(section.tubeKind, size)?.label ?? size} here`,
      figure: roundQuantity(whole.drop),
      bar: barOf(whole.drop, a.limit, verdict),
      state: stateOf(verdict),
      room: left === null ? null : left < 1 ? 'no length left' : `${Math.floor(left)} m left`,
      chosen: size === section.size,
      change: (parts[index]?.section.legs ?? [])
        .filter((leg) => given.network.edges.get(leg)?.state === 'new' && size !== section.size)
        .map((leg) => ({ leg, kind: section.tubeKind, size })),
      ids: [a.point],
    } satisfies Row;
  });
}
