import type { Ring, Section, Trace } from '../../network/trace.ts';

/** Loss of a section at a flow in m3/h, in any unit; rises with the flow. */
export type Loss = (section: string, flowM3PerH: number) => number;

interface Turned {
  readonly id: string;
  /** 1 where the way round goes with the section, -1 where it goes against it. */
  readonly way: 1 | -1;
}

/** The sections of a ring in the order met going round it, with the way each is met. */
function wayRound(ring: Ring, byId: ReadonlyMap<string, Section>): Turned[] {
  const left = new Map(ring.sections.flatMap((id) => (byId.get(id) ? [[id, byId.get(id) as Section] as const] : [])));
  const [first] = left.values();
  if (!first) return [];
  const round: Turned[] = [{ id: first.id, way: 1 }];
  left.delete(first.id);
  let here = first.to;
  while (left.size > 0) {
    const next = [...left.values()].find((s) => s.from === here || s.to === here);
    if (!next) return [];
    const way = next.from === here ? 1 : -1;
    round.push({ id: next.id, way });
    here = way === 1 ? next.to : next.from;
    left.delete(next.id);
  }
  return here === first.from ? round : [];
}

/** The flow to add the way round that makes the losses round the ring cancel; losses rise with it, so halving finds it. */
function balance(round: readonly Turned[], flows: ReadonlyMap<string, number>, loss: Loss): number {
  const most = round.reduce((sum, t) => sum + Math.abs(flows.get(t.id) ?? 0), 0);
  const over = (extra: number): number =>
    round.reduce((sum, t) => {
      const q = (flows.get(t.id) ?? 0) * t.way + extra;
      return sum + Math.sign(q) * loss(t.id, Math.abs(q));
    }, 0);
  let [lo, hi] = [-most, most];
  for (let i = 0; i < SWEEPS; i++) {
    const middle = (lo + hi) / 2;
    if (over(middle) > 0) hi = middle;
    else lo = middle;
  }
  return (lo + hi) / 2;
}

/** Halvings, and rounds over all rings: both far past what a float can tell apart in a house. */
const SWEEPS = 60;
const SETTLED = 1e-9;

/**
 * Flow in every section of a trace with rings, m3/h, positive from `from` to `to`. `demand` is what each end takes.
 * Continuity holds at every vertex from the start (flows of the tree); each ring is then balanced in turn until the
 * losses both ways round agree (loop balancing, standard texts on pipe networks).
 */
export function ringFlows(trace: Trace, demand: (vertex: string) => number, loss: Loss): ReadonlyMap<string, number> {
  const byId = new Map(trace.sections.map((s) => [s.id, s]));
  const flows = new Map(trace.sections.map((s) => [s.id, s.serves.reduce((sum, v) => sum + demand(v), 0)]));
  const rounds = trace.rings.map((r) => wayRound(r, byId)).filter((r) => r.length > 0);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let moved = 0;
    for (const round of rounds) {
      const extra = balance(round, flows, loss);
      moved = Math.max(moved, Math.abs(extra));
      for (const t of round) flows.set(t.id, (flows.get(t.id) ?? 0) + extra * t.way);
    }
    if (moved < SETTLED) break;
  }
  return flows;
}
