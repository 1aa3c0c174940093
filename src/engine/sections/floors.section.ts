import type { Void } from '../../plan/records/building.ts';
import { figure } from '../../reference/figure.ts';
import type { Table } from '../../reference/schema/table-schema.ts';
import { exact, type Quantity, roundQuantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { isCut, type JoistMeeting } from '../building/joist-cuts.ts';
import { joistEnds, sayBands } from '../building/joist-ends.ts';
import { byJoist, joistTable, limitsAt, solidCut } from '../building/joist-reading.ts';
import { sayVoid } from '../building/void-parts.ts';
import { defineSection } from '../define-section.ts';
import type { Given } from '../given.ts';
import { sayRun, saySize, sentence } from '../say-names.ts';
import { widestAt } from '../structure/joist-cut.ts';
import { bandsFromOneEnd, type CutLimits } from '../structure/joist-limits.ts';
import { supportRows } from './support-rows.ts';

const KIND: Readonly<Record<string, string>> = {
  solid: 'solid timber',
  engineered: 'made joists',
  metalWeb: 'metal web joists',
  truss: 'trusses',
  battens: 'battens',
  unknown: 'kind not known',
};
const mm = (n: number): Quantity => exact(Math.floor(n), 'mm', 0);

function joistRow(space: Void): Row[] {
  const { joists } = space;
  if (!joists) return [];
  const size = [joists.depthMm, joists.breadthMm].map((n) => (n === null ? '?' : `${Math.round(n)}`)).join(' by ');
  const say = `${KIND[joists.kind] ?? joists.kind}, ${size}, at ${Math.round(joists.centresMm)}`;
  return [{ kind: 'fact', label: 'Joists', figure: null, say: sentence(say), ids: [space.id] }];
}

/** "1100 to 1760 from either end: x 3400 to 4060 or x 4940 to 5600". */
function bandRow(label: string, limits: CutLimits, m: JoistMeeting): Row[] {
  if (limits.fromMm === null || limits.toMm === null) return [];
  const ends = joistEnds(m.space, m.joists, m.met);
  const bands = sayBands(m.joists, ends, bandsFromOneEnd(limits, m.met.spanMm));
  const from = `${Math.round(limits.fromMm)} to ${Math.round(limits.toMm)} from either end`;
  const say = bands === '' ? from : `${from}: ${bands}`;
  return [{ kind: 'fact', label, figure: null, say, ids: [m.space.id] }];
}

function limitRows(table: Table, m: JoistMeeting): Row[] {
  if (m.joists.kind !== 'solid') return [];
  const { hole, notch } = limitsAt(table, m);
  const most = (label: string, { mostMm }: CutLimits): Row[] =>
    mostMm === null ? [] : [{ kind: 'fact', label, figure: mm(mostMm.lo), say: '', ids: [m.space.id] }];
  const told = m.met.ends === 'outline' ? 'as drawn, not told' : 'clear between bearings';
  return [
    { kind: 'fact', label: 'Span', figure: mm(m.met.spanMm), say: told, ids: [m.space.id] },
    ...bandRow('Holes', hole, m),
    ...most('Widest hole by depth', hole),
    ...bandRow('Notches in the top', notch, m),
    ...most('Deepest notch', notch),
  ];
}

/** What the nearest two holes of any joist leave room for; a pair of one run at one place is not told. */
function spacingRow(table: Table, meetings: readonly JoistMeeting[], space: Void): Row[] {
  const apart = figure(table, 'hole', 'apart');
  if (apart.is !== 'known') return [];
  const gaps = byJoist(meetings).flatMap((cuts) => {
    const holes = cuts.filter((m) => solidCut(m)?.as === 'hole');
    return holes.slice(1).map((m, i) => m.alongMm - (holes[i]?.alongMm ?? m.alongMm));
  });
  const least = Math.min(...gaps.filter((g) => g > 0));
  if (!Number.isFinite(least)) return [];
  const say = `nearest two holes are ${Math.round(least)} between centres`;
  return [
    { kind: 'fact', label: 'Widest hole by spacing', figure: mm(widestAt(least, apart.lo)), say, ids: [space.id] },
  ];
}

const once = (of: readonly number[]): string => {
  const [lo, hi] = [Math.round(Math.min(...of)), Math.round(Math.max(...of))];
  return lo === hi ? `${lo}` : `${lo} to ${hi}`;
};

const isHole = (m: JoistMeeting): boolean =>
  m.reading !== null && m.reading !== 'lengthwise' && m.reading.as === 'hole';

/** One row a run: how many, how high in the timber, how far from the near end. */
function runRows(given: Given, meetings: readonly JoistMeeting[], hole: boolean): Row[] {
  const runs = new Map<string, JoistMeeting[]>();
  for (const m of meetings.filter((m) => isHole(m) === hole && m.reading !== 'lengthwise'))
    runs.set(m.run, [...(runs.get(m.run) ?? []), m]);
  return [...runs].map(([run, cuts]): Row => {
    const sizes = [...new Set(cuts.map((m) => saySize(m.pipe.edge.tube)))].join(' and ');
    const height = once(cuts.flatMap((m) => m.met.aboveBottomMm ?? []));
    const near = once(cuts.map((m) => m.met.toNearEndMm));
    return {
      kind: 'fact',
      label: `${sayRun(given.plan, run)} ${sizes}`,
      figure: exact(
        cuts.length,
        hole ? (cuts.length === 1 ? 'hole' : 'holes') : cuts.length === 1 ? 'notch' : 'notches',
        0,
      ),
      say: `middle ${height} above the underside, ${near} from the near end`,
      ids: [run],
    };
  });
}

function voidRows(given: Given, table: Table | undefined, meetings: readonly JoistMeeting[]): Row[] {
  const first = meetings[0];
  if (!first) return [];
  const { space } = first;
  const cut = meetings.filter(isCut);
  const holes = runRows(given, cut, true);
  const notches = runRows(given, cut, false);
  const sample = cut[0] ?? first;
  const nothing = cut.length === 0 ? 'nothing is cut' : '';
  const made = first.joists.kind === 'metalWeb' ? 'pipes pass between the webs' : nothing;
  return [
    { kind: 'heading', label: sentence(sayVoid(space)), say: made, ids: [space.id] },
    ...joistRow(space),
    ...(table && cut.length > 0 ? limitRows(table, sample) : []),
    ...(table ? spacingRow(table, cut, space) : []),
    ...holes,
    ...notches,
    ...(holes.length > 0 && first.joists.kind !== 'metalWeb'
      ? [
          {
            kind: 'fact' as const,
            label: 'Holes in all',
            figure: exact(cut.filter(isHole).length, 'holes', 0),
            say: '',
            ids: [space.id],
          },
        ]
      : []),
    ...supportRows(given, space),
  ];
}

export default defineSection({
  id: 'floors',
  order: 30,
  write(given) {
    const table = joistTable(given);
    const spaces = new Map<string, JoistMeeting[]>();
    for (const m of given.joistMeetings) spaces.set(m.space.id, [...(spaces.get(m.space.id) ?? []), m]);
    if (spaces.size === 0) return null;
    const holes = given.joistMeetings.filter((m) => m.joists.kind !== 'metalWeb' && isHole(m)).length;
    const rows = [...spaces.values()].flatMap((meetings) => voidRows(given, table, meetings));
    const unverified = table?.sureness === 'memory';
    return {
      title: 'Floors',
      answer: holes === 0 ? 'no holes' : holes === 1 ? '1 hole' : `${holes} holes`,
      state: 'none',
      rows: [
        ...rows.map(
          (row): Row => (row.kind === 'fact' && row.figure ? { ...row, figure: roundQuantity(row.figure) } : row),
        ),
        ...(table && holes > 0
          ? [
              {
                kind: 'note' as const,
                say: 'Bands are for solid softwood on a bearing at each end. Near a heavy load, a trimmer or a beam ask an engineer.',
                unverified,
                cites: [{ source: table.source, clause: table.clause, table: table.id }],
              },
            ]
          : []),
      ],
    };
  },
});
