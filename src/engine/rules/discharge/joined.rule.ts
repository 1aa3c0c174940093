import { type Figure, figure } from '../../../reference/figure.ts';
import { tubeKinds } from '../../../reference/tubes.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges, nominalOf, type TundishPipe } from '../../drainage/discharges.ts';
import type { DrainStep } from '../../drainage/drains.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { LOW, OUT, vessel } from './houses.ts';

type Params = { readonly larger: Figure };

/** Nominal sizes of copper, smallest first. */
function copperSizes(): number[] {
  const kind = tubeKinds().find((k) => k.kind === 'copper');
  return [...new Set((kind?.sizes ?? []).map((s) => Number(s.label)).filter(Number.isFinite))].sort((a, b) => a - b);
}

/** So many sizes above; undefined past the largest. */
function above(size: number, steps: number): number | undefined {
  const sizes = copperSizes();
  const at = sizes.indexOf(size);
  return at < 0 ? undefined : sizes[at + steps];
}

interface Common {
  readonly pipes: readonly TundishPipe[];
  readonly steps: readonly DrainStep[];
}

/** Pipe that carries what comes from several tundishes, one entry for each way out. */
function commons(pipes: readonly TundishPipe[]): Common[] {
  const byEnd = new Map<string, TundishPipe[]>();
  for (const p of pipes) {
    const to = p.steps[p.steps.length - 1]?.to;
    if (p.tundish !== null && to !== undefined) byEnd.set(to, [...(byEnd.get(to) ?? []), p]);
  }
  return [...byEnd.values()].flatMap((here) => {
    const counted = (s: DrainStep): number => here.filter((p) => p.steps.some((q) => q.edge.id === s.edge.id)).length;
    const steps = (here[0]?.steps ?? []).filter((s) => counted(s) > 1);
    return steps.length === 0 ? [] : [{ pipes: here, steps }];
  });
}

function judge(given: Given, { larger }: Params): Fault[] {
  if (larger.is !== 'known') return [];
  return commons(discharges(given).tundishPipes).flatMap(({ pipes, steps }): Fault[] => {
    const shared = new Set(steps.map((s) => s.edge.id));
    const first = steps[0];
    if (!first || !steps.some((s) => s.edge.state === 'new')) return [];
    const own = pipes.flatMap((p) => p.steps.filter((s) => !shared.has(s.edge.id)).map(nominalOf));
    const common = steps.map(nominalOf);
    const base = {
      ids: [...new Set([first.edge.run, ...pipes.flatMap((p) => p.tundish?.id ?? [])])],
      legs: [...shared],
      at: atEdge(given.network, first.edge.id),
    };
    const words = { run: sayRun(given.plan, first.edge.run), count: `${pipes.length}` };
    if (own.includes(null) || common.includes(null))
      return [{ outcome: 'cantTell', ...base, words, missing: ['the sizes of the pipes that are joined'] }];
    const largest = Math.max(...own.map((n) => n ?? 0));
    const narrowest = Math.min(...common.map((n) => n ?? 0));
    const wanted = above(largest, larger.lo);
    if (wanted !== undefined && narrowest >= wanted) return [];
    return [
      {
        outcome: 'stop',
        ...base,
        words: { ...words, largest: `${largest}`, wanted: wanted === undefined ? 'larger than is made' : `${wanted}` },
        found: exact(narrowest, 'mm', 0, 'page'),
        wanted: wanted === undefined ? null : exact(wanted, 'mm', 0, larger.sureness),
        wantedIs: 'atLeast',
      },
    ];
  });
}

function two(size: string | null) {
  const e = vessel();
  e.point('cylinder', 'c2', [-2000, 0, 0], { valveOutlet: 'G1/2' });
  e.point('tundish', 't2', [-2400, -245, 855], { serves: 'c2', seen: true });
  e.point('outside-end', 'o', [-6000, -245, 0], LOW);
  e.run('d2', 'discharge', [OUT, [-375, -275, 455], [-2400, -275, 435]], {});
  const joint = e.nodesOf('d2')[2] ?? '';
  e.run('d3', 'discharge', [{ point: 't2', connection: 'out' }, joint], {});
  return e.run('d4', 'discharge', [joint, [-6000, -275, 400], { point: 'o', connection: 'in' }], { size }).plan;
}

export default defineRule<Params>({
  id: 'discharge/joined',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'document-g-quoted', clause: '3.59', table: 'discharge-joined' }],
  needs: ['sizes of the pipes that are joined'],
  params: () => ({ larger: figure('discharge-joined', 'common pipe', 'sizes') }),
  judge,
  say: {
    fault: {
      title: '{run} takes {count} tundishes and is not larger than each',
      why: 'Two valves may open together. The common pipe is one size larger than the largest that joins it, which is {largest}.',
      todo: 'Take {wanted} from where they join, or give each vessel a pipe of its own.',
    },
    cantTell: {
      title: "Can't tell whether {run} may take {count} tundishes",
      why: 'Not known: {missing}.',
      todo: 'Choose the sizes, in copper.',
    },
    pass: 'The common pipe is one size larger than the largest that joins it.',
  },
  examples: [
    { name: '22 and 22 into 28', given: () => two('28x0.9'), expect: 'pass' },
    { name: 'each its own', given: () => vessel().plan, expect: 'pass' },
    {
      name: '22 and 22 into 22',
      given: () => two('22x0.9'),
      expect: 'stop',
      found: { lo: 22, hi: 22, tolerance: 0 },
      from: 'size of the common pipe as drawn',
    },
    { name: 'into a size nobody chose', given: () => two(null), expect: 'cantTell' },
  ],
});
