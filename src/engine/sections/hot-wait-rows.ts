import { type Quantity, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Bar, Row, State } from '../../report/section.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';
import { easeOf, plugTime, WAIT } from '../water/wait.ts';
import type { HotWay } from '../water-system/hot-ways.ts';
import { otherSizes } from '../water-system/other-sizes.ts';

/** Held against the first reading: surely within, surely over, or over a bound in its doubt. */
export const waitState = (wait: Quantity): State =>
  wait.lo > WAIT.first.lo ? 'check' : wait.hi !== null && wait.hi <= WAIT.first.lo ? 'pass' : 'note';

const barOf = (wait: Quantity): Bar => ({ figure: roundQuantity(wait), limit: WAIT.first.lo, state: waitState(wait) });
const litresOf = (q: Quantity): string => `${sayFigures({ ...q, digits: 2 })} litres`;
const perMinute = (q: Quantity): string => `${sayFigures({ ...q, digits: 1 })} litres a minute`;

function ease(wait: Quantity): string {
  const sure = easeOf(wait);
  if (sure !== null) return sure;
  const ends = [wait.lo, wait.hi].map((s) => (s === null ? 'poor' : (easeOf({ ...wait, lo: s, hi: s }) ?? 'poor')));
  return `${ends[0]} to ${ends[1]}`;
}

/** "9.3 m, 1.35 litres at 12.0 litres a minute (design flow, BS 6700)". */
export const sayWay = (w: HotWay): string =>
  w.litres === null || w.flow === null
    ? `${sayFigures(w.lengthM)} m; not known: ${[...w.missing, ...(w.flow === null ? ['its flow'] : [])].join(', ')}`
    : `${sayFigures(w.lengthM)} m, ${litresOf(w.litres)} at ${perMinute(w.flow)} (${w.flowFrom.say})`;

function sayBefore(before: HotWay | undefined): string | null {
  const wait = before?.wait?.result;
  return before && wait && before.litres
    ? `before: ${sayFigures(wait)} s, ${sayFigures(before.lengthM)} m, ${litresOf(before.litres)}`
    : null;
}

const from = (given: Given, w: HotWay): string =>
  w.heater === null
    ? `${midSentence(sayPoint(given.plan, w.source.id))}, with old pipe before it`
    : midSentence(sayPoint(given.plan, w.heater.id));

export function answerRow(given: Given, w: HotWay, wait: Quantity, before: HotWay | undefined): Row {
  return {
    kind: 'answer',
    label: w.name,
    of: `hot from the ${from(given, w)}: ${sayWay(w)}`,
    figure: roundQuantity(wait),
    bar: barOf(wait),
    say: ease(wait),
    room: sayBefore(before),
    ids: [w.point.id],
  };
}

export function tapRow(w: HotWay, before: HotWay | undefined): Row {
  const wait = w.wait?.result ?? null;
  const was = sayBefore(before);
  const say = [wait ? ease(wait) : null, sayWay(w), was].filter((s) => s !== null).join('; ');
  return { kind: 'fact', label: w.name, figure: wait && roundQuantity(wait), say, ids: [w.point.id] };
}

const sub = (a: number | null, b: number | null): number | null => (a === null || b === null ? null : a - b);
const less = (q: Quantity, by: Quantity): Quantity => ({
  ...q,
  lo: q.lo - (by.hi ?? by.lo),
  hi: sub(q.hi, by.lo),
  value: sub(q.value, by.value),
});

/** What stands in front of old tails; after the work, what it adds there: metres, litres and seconds of running. */
export function tailRow(given: Given, w: HotWay, before: HotWay | undefined): Row {
  const after = given.case.when === 'after';
  const metres = before && after ? less(w.lengthM, before.lengthM) : w.lengthM;
  const litres = before?.litres && w.litres && after ? less(w.litres, before.litres) : w.litres;
  const plug = litres && w.flow && litres.lo >= 0 ? plugTime(litres, w.flow) : null;
  const far = `${sayFigures(metres)} m${after ? ' more than before' : ' up to the tail'}`;
  const run =
    plug && w.flow ? `, ${sayFigures(plug)} s at ${sayFigures({ ...w.flow, digits: 0 })} litres a minute` : '';
  const say =
    litres === null
      ? `${far}; not known: ${w.missing.join(', ')}`
      : `${far}: ${sayFigures({ ...litres, digits: 1 })} litres${run}; what is behind the tail comes on top`;
  return { kind: 'fact', label: w.name, figure: litres && roundQuantity(litres), say, ids: [w.point.id] };
}

export function sizeRows(given: Given, w: HotWay, scale: string): Row[] {
  const sizes = otherSizes(given, w, scale);
  if (sizes.length === 0) return [];
  return [
    { kind: 'heading', label: `${w.name}, other sizes`, say: 'all of its new pipe in one', ids: [w.point.id] },
    ...sizes.map((o): Row => {
      const fast = o.velocity > o.limit.lo;
      const speed = `${o.velocity.toFixed(1)} m/s${fast ? `, ${o.limit.lo.toFixed(1)} at most` : ''}`;
      return {
        kind: 'choice',
        label: `All ${o.size.label}`,
        figure: roundQuantity(o.wait),
        bar: barOf(o.wait),
        state: fast ? 'check' : waitState(o.wait),
        room: `${litresOf(o.litres)}, ${speed}`,
        chosen: o.chosen,
        change: o.change,
        ids: [w.point.id],
      };
    }),
  ];
}

export function sumRows(w: HotWay): Row[] {
  return (w.wait?.steps ?? []).map((s) => ({
    kind: 'sum',
    label: s.label,
    how: s.how ?? '',
    result: s.result && roundQuantity(s.result),
    cites: s.cites,
    ids: [w.point.id],
  }));
}

export function readingRows(): Row[] {
  const { first, other, good, poor } = WAIT;
  const note = (say: string, cites: Extract<Row, { kind: 'note' }>['cites'], unverified = false): Row => ({
    kind: 'note',
    say,
    unverified,
    cites,
  });
  const s = (f: typeof first): string => sayFigures(quantityOf(f));
  return [
    note(`One reading: at least 50 degrees within ${s(first)} seconds, where practicable; a combi may miss it.`, [
      first.cite,
    ]),
    note(`Another wording: 50 degrees within ${s(other)} seconds.`, [other.cite]),
    note(`Up to ${s(good)} seconds is called good, above ${s(poor)} poor, between them borderline.`, [good.cite]),
  ];
}
