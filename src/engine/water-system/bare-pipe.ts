import type { Edge } from '../../network/network.ts';
import { constant } from '../../reference/figure.ts';
import { surroundings } from '../drainage/surroundings.ts';
import type { Given } from '../given.ts';

/** What carries heat that is wanted, and what can freeze. */
const HOT: ReadonlySet<string> = new Set(['hot', 'preheated']);
const HEATING: ReadonlySet<string> = new Set(['heatingFlow', 'heatingReturn']);
const COLD: ReadonlySet<string> = new Set(['cold', 'balancedCold']);
const of = (edge: Edge): NewPipe['of'] | null =>
  HOT.has(edge.service) ? 'hot' : HEATING.has(edge.service) ? 'heating' : COLD.has(edge.service) ? 'cold' : null;

/** One new leg of hot, heating or cold water, and what is round it. Metres. */
export interface NewPipe {
  readonly edge: Edge;
  readonly of: 'hot' | 'heating' | 'cold';
  readonly metres: number;
  readonly bare: boolean;
  /** In floors, ceilings, boxings and other voids. */
  readonly inVoidM: number;
  /** Outside or in a space told to be unheated; `maybe`: under a lowest floor nobody told of. */
  readonly coldM: number;
  readonly maybeColdM: number;
}

const MM = 1000;
const WALL_MM = constant('hot-lagging-limits', 'cold part', 'mm');

function work(given: Given): NewPipe[] {
  const legs = [...given.network.edges.values()].filter((e) => e.kind === 'leg' && e.state === 'new' && of(e) !== null);
  if (legs.length === 0) return [];
  const wanted = new Set(legs.map((e) => e.id));
  const inVoid = new Map<string, number>();
  for (const { pipe, lengthMm } of given.voidParts) {
    if (wanted.has(pipe.edge.id)) inVoid.set(pipe.edge.id, (inVoid.get(pipe.edge.id) ?? 0) + lengthMm);
  }
  const around = surroundings(given);
  return legs.flatMap((edge): NewPipe[] => {
    const what = of(edge);
    const whole = edge.lengthMm.value;
    if (what === null || whole === null) return [];
    const place = (vertex: string) => given.network.vertices.get(vertex)?.place ?? null;
    const step = { edge, from: edge.a, to: edge.b, a: place(edge.a), b: place(edge.b), drop: null, flatMm: null };
    const bare = (edge.insulation?.thicknessMm ?? 0) <= 0;
    const parts = bare ? (around.parts(step) ?? []).filter((p) => p.toMm - p.fromMm > WALL_MM) : [];
    const sum = (round: readonly string[]): number =>
      parts.filter((p) => round.includes(p.round)).reduce((n, p) => n + p.toMm - p.fromMm, 0) / MM;
    return [
      {
        edge,
        of: what,
        metres: whole / MM,
        bare,
        inVoidM: Math.min(whole, inVoid.get(edge.id) ?? 0) / MM,
        coldM: sum(['outside', 'cold']),
        maybeColdM: sum(['maybeCold']),
      },
    ];
  });
}

const known = new WeakMap<Given, readonly NewPipe[]>();

/** New hot, heating and cold pipe, leg by leg. Worked out once for each plan and case. */
export function newPipes(given: Given): readonly NewPipe[] {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}
