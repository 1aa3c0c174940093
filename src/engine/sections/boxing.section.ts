import { constant, figure } from '../../reference/figure.ts';
import { edition } from '../../reference/tables.ts';
import { exact, roundQuantity } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { type BoxedRow, boxedRow } from '../building/boxed-pipes.ts';
import { sayVoid, type VoidPart } from '../building/void-parts.ts';
import { defineSection } from '../define-section.ts';
import type { Given } from '../given.ts';
import { sentence } from '../say-names.ts';
import { type BoxGaps, type SmallestBox, smallestBox } from '../structure/smallest-box.ts';

/** Null where the edition of gas clearances the job has pinned is not here. */
function gapsOf(given: Given): BoxGaps | null {
  const table = edition('gas-clearance', given.plan.basis.editions);
  const gas = table && figure(table, 'pipe', 'mm');
  if (gas?.is !== 'known') return null;
  return {
    between: constant('boxing', 'between', 'mm'),
    gas: gas.lo,
    over: constant('boxing', 'over pipes', 'mm'),
    board: constant('boxing', 'board', 'mm'),
  };
}

const CITES = [{ source: 'trade-practice', clause: 'boxing', table: 'boxing' }];

function verdict(box: SmallestBox, row: BoxedRow): { state: State; say: string } {
  const across = Math.floor(row.drawnAcrossMm);
  const out = row.drawnOutMm === null ? null : Math.floor(row.drawnOutMm);
  const drawn = out === null ? `${across}` : `${across} by ${out}`;
  const fits = row.drawnAcrossMm >= box.innerWidth.lo && (row.drawnOutMm ?? 0) >= box.innerDepth.lo;
  return fits
    ? { state: 'pass', say: `drawn ${drawn}, room enough` }
    : { state: 'check', say: `drawn ${drawn}, smaller than that` };
}

function rowsOf(row: BoxedRow, gaps: BoxGaps): { rows: Row[]; state: State } {
  const ids = [row.space.id];
  const heading: Row = {
    kind: 'heading',
    label: sentence(sayVoid(row.space)),
    say: row.upright ? 'pipes in order along the wall' : 'pipes in order from below',
    ids,
  };
  const unread: Row[] = row.unread.map((name) => ({
    kind: 'assumed',
    say: `${name} is left out: its size is not known`,
    ids,
  }));
  if (row.pipes.length === 0) return { rows: [heading, ...unread], state: 'cantTell' };
  const box = smallestBox(row.pipes, gaps);
  const { state, say } = verdict(box, row);
  const pipes = row.pipes.map((p, i): Row => {
    const lagged = p.insulationMm > 0 ? `, lagged ${Math.round(p.insulationMm)}` : '';
    return {
      kind: 'fact',
      label: p.name,
      figure: roundQuantity(exact(box.middles[i] ?? 0, 'mm', 0, 'practice')),
      say: `to its middle from the side${lagged}`,
      ids: [p.run],
    };
  });
  const across = row.upright ? 'along the wall' : 'in height';
  return {
    state: unread.length > 0 && state === 'pass' ? 'cantTell' : state,
    rows: [
      heading,
      ...pipes,
      {
        kind: 'sum',
        label: `Smallest inside, ${across}`,
        how: say,
        result: roundQuantity(box.innerWidth),
        cites: CITES,
        ids,
      },
      {
        kind: 'sum',
        label: 'Smallest inside, out from the wall',
        how: 'the widest pipe and its lagging, and room over it',
        result: roundQuantity(box.innerDepth),
        cites: CITES,
        ids,
      },
      {
        kind: 'sum',
        label: `Outside, ${across}, in a corner`,
        how: 'one side board',
        result: roundQuantity(box.outerInCorner),
        cites: CITES,
        ids,
      },
      {
        kind: 'sum',
        label: `Outside, ${across}, on a flat wall`,
        how: 'two side boards',
        result: roundQuantity(box.outerOnWall),
        cites: CITES,
        ids,
      },
      {
        kind: 'sum',
        label: 'Outside, out from the wall',
        how: 'the front board',
        result: roundQuantity(box.outerDepth),
        cites: CITES,
        ids,
      },
      ...unread,
    ],
  };
}

const RANK: readonly State[] = ['check', 'cantTell', 'pass'];

export default defineSection({
  id: 'boxing',
  order: 32,
  write(given) {
    const gaps = gapsOf(given);
    const spaces = new Map<string, VoidPart[]>();
    for (const part of given.voidParts) {
      if (part.space.kind === 'boxing') spaces.set(part.space.id, [...(spaces.get(part.space.id) ?? []), part]);
    }
    const read = [...spaces.values()].flatMap((parts) => {
      const space = parts[0]?.space;
      const row = space && boxedRow(given, space, parts);
      return row && gaps ? [rowsOf(row, gaps)] : [];
    });
    if (read.length === 0) return null;
    const state = RANK.find((s) => read.some((r) => r.state === s)) ?? 'none';
    return {
      title: 'Boxing',
      answer: read.length === 1 ? '1 box' : `${read.length} boxes`,
      state,
      rows: [
        ...read.flatMap((r) => r.rows),
        { kind: 'note', say: 'Panels to open stand over every valve and union.', unverified: false, cites: CITES },
      ],
    };
  },
});
