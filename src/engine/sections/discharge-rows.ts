import type { Point } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import { tubeKinds } from '../../reference/tubes.ts';
import { exact, roundQuantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import type { SizeChoice } from '../drainage/discharge-size.ts';
import { sayOutlet } from '../drainage/discharge-size.ts';
import { discharges, type TundishPipe } from '../drainage/discharges.ts';
import type { Drain } from '../drainage/drains.ts';
import { aboveGround } from '../drainage/outside-height.ts';
import { pipeSize } from '../drainage/tundish-pipe-size.ts';
import type { Given } from '../given.ts';
import { midSentence, sayAll, sayPoint, sayRun } from '../say-names.ts';

const bends = ({ lo, hi }: { lo: number; hi: number }): string =>
  lo === hi ? `${lo} ${lo === 1 ? 'bend' : 'bends'}` : `${lo} to ${hi} bends`;

/** The size of a nominal diameter in copper as the plan stores it; undefined where none is made. */
const copperSize = (nominal: number): string | undefined =>
  tubeKinds()
    .find((k) => k.kind === 'copper')
    ?.sizes.find((s) => s.label === `${nominal}`)?.size;

function sayRoom(c: SizeChoice): string | null {
  if (c.leftM === null) return null;
  return c.leftM < 0 ? `${(-c.leftM).toFixed(1)} m too long` : `room for ${c.leftM.toFixed(1)} m more`;
}

function choiceRow(pipe: TundishPipe, c: SizeChoice, drawn: number | null): Row {
  const size = copperSize(c.size);
  const change = pipe.steps.filter((s) => s.edge.state === 'new' && s.edge.kind === 'leg').map((s) => s.edge.id);
  return {
    kind: 'choice',
    label: `${c.size}, at most ${c.most.lo.toFixed(0)} m`,
    figure: roundQuantity(c.total),
    bar: { figure: roundQuantity(c.total), limit: c.most.lo, state: c.verdict },
    state: c.verdict,
    room: sayRoom(c),
    chosen: c.size === drawn,
    change: size === undefined || c.size === drawn ? [] : change.map((leg) => ({ leg, kind: 'copper', size })),
    ids: [...pipe.runs],
  };
}

/** A pipe from a tundish: how long it counts, what each size would allow, and how it starts. */
export function tundishPipeRows(given: Given, pipe: TundishPipe): Row[] {
  const run = sayRun(given.plan, pipe.runs[0] ?? '');
  const ids = [...pipe.runs];
  const length = roundQuantity(pipe.lengthM);
  const serves = pipe.vessels.map((v) => midSentence(sayPoint(given.plan, v.id)));
  const title = serves.length > 0 ? `${run}: ${sayAll(serves)}` : run;
  if (pipe.boilersOnly || pipe.vessels.length === 0) {
    const say = pipe.boilersOnly ? 'carries boiler relief from its tundish' : 'no vessel is known to let out into it';
    return [{ kind: 'fact', label: title, figure: length, say: `${bends(pipe.bends)}; ${say}`, ids }];
  }
  const { own, choices, outlet, drawn } = pipeSize(pipe);
  const rows: Row[] = [];
  if (own)
    rows.push({
      kind: 'answer',
      label: title,
      of: `${own.size} from the tundish, as straight pipe`,
      figure: roundQuantity(own.total),
      bar: { figure: roundQuantity(own.total), limit: own.most.lo, state: outlet === null ? 'cantTell' : own.verdict },
      say: outlet === null ? 'the outlet of its valve was not read' : own.verdict === 'pass' ? 'passes' : 'too long',
      room: sayRoom(own),
      ids,
    });
  else rows.push({ kind: 'fact', label: title, figure: length, say: bends(pipe.bends), ids });
  const working = own ?? choices[0];
  if (working)
    rows.push({
      kind: 'sum',
      label: 'Working',
      how: `${pipe.lengthM.lo.toFixed(1)} m + ${bends(pipe.bends)} x ${working.bend.lo.toFixed(1)} m`,
      result: roundQuantity(working.total),
      cites: [working.cite],
      ids,
    });
  if (outlet === null) rows.push({ kind: 'assumed', say: 'outlet of the valve not read: sizes shown for G 1/2', ids });
  else rows.push({ kind: 'heading', label: 'Sizes', say: `outlet ${sayOutlet(outlet)}, copper`, ids: [] });
  rows.push(...choices.map((c) => choiceRow(pipe, c, drawn)), ...dropRow(pipe));
  return rows;
}

function dropRow(pipe: TundishPipe): Row[] {
  const least = figure('discharge-limits', 'straight drop', 'mm');
  if (pipe.straightDropMm === null || least.is !== 'known') return [];
  return [
    {
      kind: 'fact',
      label: 'Straight down below the tundish',
      figure: roundQuantity(exact(pipe.straightDropMm, 'mm', 0)),
      say: `${least.lo.toFixed(0)} wanted before the first bend`,
      ids: [...pipe.runs],
    },
  ];
}

/** Which tundish a vessel has, and how near it may be by two editions. */
export function vesselRows(given: Given, vessel: Point): Row[] {
  const tundishes = discharges(given).tundishesOf(vessel);
  const most = figure('discharge-limits', 'valve to tundish', 'mm');
  const older = figure('discharge-limits', 'valve to tundish, older', 'mm');
  const far =
    most.is === 'known' && older.is === 'known'
      ? `; at most ${most.lo.toFixed(0)} mm from its valve, ${older.lo.toFixed(0)} in older texts`
      : '';
  const say =
    tundishes.length === 0
      ? vessel.fields.tundish === 'found'
        ? 'tundish found on survey'
        : 'no tundish drawn'
      : `${sayAll(tundishes.map((t) => midSentence(sayPoint(given.plan, t.id))))}${far}`;
  return [{ kind: 'fact', label: sayPoint(given.plan, vessel.id), figure: null, say, ids: [vessel.id] }];
}

/** A boiler's relief: how long, how many bends, how high it ends. */
export function reliefRows(given: Given, relief: Drain): Row[] {
  const end = relief.end === null ? null : (given.plan.points[relief.end.point] ?? null);
  const above = aboveGround(given, end, relief.steps[relief.steps.length - 1]?.b?.at ?? null);
  const mm = relief.steps.reduce((sum, s) => sum + s.edge.lengthMm.lo, 0);
  const to = end ? `ends in: ${midSentence(sayPoint(given.plan, end.id))}` : 'its end is not drawn';
  const high = above === null ? '' : `, ${Math.round(above)} mm above the ground`;
  return [
    {
      kind: 'fact',
      label: sayRun(given.plan, relief.runs[0] ?? ''),
      figure: roundQuantity(exact(mm / 1000, 'm', 1)),
      say: `${to}${high}`,
      ids: [...relief.runs],
    },
  ];
}
