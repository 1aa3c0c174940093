import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { example, type RunWords, type Stop } from '../../example.ts';

const COPPER = { size: '15x0.7' } as const;
/** Where the relief of the boiler at the origin comes out of its underside. */
export const TAIL: readonly [number, number, number] = [184, -81, 1300];

/** A boiler with its relief through some corners to an end. */
export function relief(stops: readonly Stop[], words: RunWords = {}): Plan {
  const e = example().point('boiler', 'b', [0, 0, 1300]);
  return e.run('p', 'boilerRelief', [{ point: 'b', connection: 'relief' }, ...stops], { ...COPPER, ...words }).plan;
}

/** Down to low level outside, the usual way. */
export const usual = (words: RunWords = {}): Plan =>
  relief(
    [
      [184, -81, 1200],
      [184, 500, 1190],
      [184, 500, 150],
    ],
    words,
  );

type Fields = Point['fields'];
export const LOW: Fields = { ends: 'turnedBack', aboveGroundMm: 150, sharedGround: false };

/** The same with its end drawn as a point of a kind. */
export function endingAt(kind: string, fields: Fields = {}, connection = 'in'): Plan {
  const e = example().point('boiler', 'b', [0, 0, 1300]).point(kind, 'end', [184, 500, 100], fields);
  const local = e.plan.points.end?.connections.find((c) => c.id === connection);
  const [x, y] = [184 + (local?.at.x ?? 0), 500 - (local?.at.y ?? 0)];
  return e.run(
    'p',
    'boilerRelief',
    [
      { point: 'b', connection: 'relief' },
      [184, -81, 1200],
      [x, -81, 1196],
      [x, y, 1190],
      { point: 'end', connection },
    ],
    COPPER,
  ).plan;
}
