import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example, type RunWords, type Stop } from '../../example.ts';

type Fields = Point['fields'];

export interface Vessel {
  readonly fields?: Fields;
  /** Null: no tundish drawn. */
  readonly tundish?: Fields | null;
  /** How far below the valve the tundish hangs, mm. */
  readonly below?: number;
  readonly d1?: RunWords;
  readonly option?: string | null;
}

/** Where the safety valve of a cylinder that stands at the origin lets out. */
const VALVE: readonly [number, number, number] = [-275, -275, 1275];

/** A cylinder with its valve's pipe down to a tundish `t`. */
export function vessel(how: Vessel = {}): ExamplePlan {
  const { fields, tundish = {}, below = 300, d1, option = 'A' } = how;
  const e = example().point('cylinder', 'c', [0, 0, 0], { valveOutlet: 'G1/2', ...fields }, option);
  if (tundish === null) return e;
  const [x, y, z] = VALVE;
  // Its open top is at its middle, 30 out and 120 up.
  e.point('tundish', 't', [x - 100, y + 30, z - below - 120], { seen: true, ...tundish }, option);
  return e.run(
    'd1',
    'discharge',
    [{ point: 'c', connection: 'relief' }, [x - 100, y, z], { point: 't', connection: 'in' }],
    { size: '15x0.7', option, ...d1 },
  );
}

export const OUT = { point: 't', connection: 'out' } as const;
/** Where the tundish of `vessel` lets out, with the usual 300 below the valve. */
export const FROM = { x: -375, y: -275, z: 855 } as const;

export interface Away {
  readonly vessel?: Vessel;
  readonly dropMm?: number;
  /** Metres along, falling. */
  readonly alongM?: number;
  readonly fallMm?: number;
  readonly words?: RunWords;
  /** More elbows: a jog of 200 for each pair. */
  readonly jogs?: number;
  readonly kind?: string | null;
  readonly end?: Fields;
  readonly connection?: string;
}

export const LOW: Fields = { ends: 'lowLevel', aboveGroundMm: 80, caged: true };

/** A vessel, its tundish, and the pipe from there: down, along, and down to its end. */
export function away(how: Away = {}): Plan {
  const { dropMm = 400, alongM = 2, words, jogs = 0, kind = 'outside-end', end = LOW, connection = 'in' } = how;
  const fallMm = how.fallMm ?? alongM * 10;
  const e = vessel(how.vessel);
  const z = FROM.z - dropMm;
  const x = FROM.x - alongM * 1000;
  const stops: Stop[] = [OUT, [FROM.x, FROM.y, z]];
  for (let j = 0; j < jogs; j++) {
    const at = FROM.x - ((j + 1) * (alongM * 1000)) / (jogs + 2);
    const fall = (fallMm * (j + 1)) / (jogs + 3);
    const y = FROM.y - (j % 2) * 200;
    stops.push([at, y, z - fall], [at, FROM.y - ((j + 1) % 2) * 200, z - fall - 2]);
  }
  const y = FROM.y - (jogs % 2) * 200;
  stops.push([x, y, z - fallMm]);
  if (kind === null) stops.push([x, y, 80]);
  else {
    e.point(kind, 'end', [x, y, 0], end);
    const local = e.plan.points.end?.connections.find((c) => c.id === connection);
    const point = e.plan.points.end;
    // The end stands so that the pipe comes straight down on it.
    if (local && point?.place.on === 'storey')
      e.plan.points.end = { ...point, place: { ...point.place, x: x - local.at.x, y: y + local.at.y } } as Point;
    stops.push({ point: 'end', connection });
  }
  return e.run('d2', 'discharge', stops, words ?? {}).plan;
}
