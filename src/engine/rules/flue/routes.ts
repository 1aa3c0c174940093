import type { Void } from '../../../plan/records/building.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example, type Stop } from '../../example.ts';

const FLUE = { kind: 'flue', size: '60/100', joining: 'pushFit' } as const;

export interface RouteWords {
  readonly boiler?: Point['fields'];
  readonly terminal?: Point['fields'];
  readonly option?: string | null;
  readonly assumed?: boolean;
  /** Where the terminal stands, from the boiler: 4000 to the right, and its middle 2400 up. */
  readonly end?: readonly [x: number, z: number];
}

/** A boiler at the origin with its top at 2000, and a flue over some corners to a terminal whose mouth looks away. */
export function route(corners: readonly Stop[], words: RouteWords = {}): ExamplePlan {
  const { boiler = {}, terminal = {}, option = 'A', assumed = false, end = [4000, 2400] } = words;
  const e = example()
    .point('boiler', 'b', [0, 0, 1300], boiler, option)
    .point('flue-terminal', 't', [end[0], -150, end[1] - 50], terminal, option);
  const place = e.plan.points.t?.place;
  // Turned so that its back looks to the boiler.
  if (place?.on === 'storey') place.angleDeg = 90;
  return e.run('f', 'flue', [{ point: 'b', connection: 'flue' }, ...corners, { point: 't', connection: 'in' }], {
    ...FLUE,
    option,
    assumed,
  });
}

/** Up 180 from the boiler and across, rising as newer guides want over 4 m. */
export const rising = (by: number, words: RouteWords = {}): ExamplePlan => route([[0, -150, 2400 - by]], words);

/** A void over all of the way, from 2100 up. */
export const overhead = (change: Partial<Void> = {}): Void => ({
  id: 'v',
  storey: 'ground',
  name: 'hall ceiling',
  kind: 'ceiling',
  outline: [
    { x: -500, y: -1000 },
    { x: 3800, y: -1000 },
    { x: 3800, y: 1000 },
    { x: -500, y: 1000 },
  ],
  holes: [],
  bottom: { from: 'datum', of: null, mm: 2050 },
  top: { from: 'datum', of: null, mm: 2600 },
  joists: null,
  bearings: [],
  ventilated: null,
  mayBeCut: null,
  option: null,
  sureness: 'seen',
  ...change,
});
