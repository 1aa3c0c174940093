import { type Corner, copper, floor, type HouseKit, type StretchTold, voidBottom } from './house-kit.ts';
import { FIRST, FLOOR_VOID, GROUND } from './two-storey-building.ts';

type Pair = readonly [number, number];
/** Middle of the joists, where holes may go. */
export const middle = (at: Pair) => ({ at, storey: FIRST, height: voidBottom(FLOOR_VOID, 97.5) });
export const GAS_TEE = 'gas-tee';
export const COLD_TEE = 'cold-tee';
export const HOT_JOIN = 'hot-join';

const at = (point: string, connection: string): Corner => ({ point, connection });
const low = (name: string, place: Pair, mm: number): Corner => ({ name, at: place, height: floor(GROUND, mm) });
const behindBath = (name: string, y: number): Corner => ({
  name,
  at: [6845, y],
  storey: FIRST,
  height: floor(FIRST, 150),
});

function unseen(id: string, from: Corner, to: Corner, lengthMm: Pair, bends: Pair, size = '15x0.7'): StretchTold {
  return { id, from, to, lengthMm, bends, tube: copper(size) };
}

function gas(k: HouseKit): void {
  const corners = [at('meter', 'outlet'), { ...middle([6805, 700]), name: GAS_TEE }];
  const told = { id: 'gas-old', service: 'gas', name: 'Gas as it is', joining: 'endFeed' as const };
  k.run({ ...told, tube: copper('22x0.9'), corners }, null);
  const tee = { node: GAS_TEE };
  k.unseen('gas-old', [
    unseen('gas-to-old-boiler', tee, at('old-boiler', 'gas'), [6500, 8500], [4, 7]),
    unseen('gas-to-hob', tee, at('hob', 'gas'), [6000, 8000], [4, 7]),
  ]);
}

function heating(k: HouseKit): void {
  for (const end of ['flow', 'return'] as const) {
    const [service, name] = end === 'flow' ? ['heatingFlow', 'Old flow'] : ['heatingReturn', 'Old return'];
    k.run({ id: `${end}-old`, service, name, joining: 'endFeed', tube: copper('22x0.9'), corners: [] }, null);
    const way = [at('old-boiler', end), at('old-tails', end)] as const;
    k.unseen(`${end}-old`, [unseen(`${end}-to-old-tails`, ...way, [2400, 3200], [2, 4], '22x0.9')]);
  }
}

function cold(k: HouseKit): void {
  const told = { id: 'cold-old', service: 'cold', name: 'Cold as it is', joining: 'endFeed' as const };
  const corners = [at('stop-tap', 'out'), low('cold-sink-tee', [500, 5600], 600), low(COLD_TEE, [500, 5600], 700)];
  k.run({ ...told, tube: copper('22x0.9'), corners }, null);
  k.run(
    { ...told, tube: copper('15x0.7'), corners: [behindBath('cold-bath-tee', 4610), at('bath-taps', 'cold')] },
    null,
  );
  k.unseen('cold-old', [
    unseen('cold-to-sink', { node: 'cold-sink-tee' }, at('sink-taps', 'cold'), [400, 900], [2, 4]),
    unseen('cold-to-old-boiler', { node: COLD_TEE }, at('old-boiler', 'cold'), [2200, 3200], [2, 4]),
    unseen('cold-to-bath', { node: COLD_TEE }, { node: 'cold-bath-tee' }, [8000, 10500], [5, 9]),
    unseen('cold-to-basin', { node: 'cold-bath-tee' }, at('basin-taps', 'cold'), [1800, 2800], [2, 5]),
  ]);
}

function hot(k: HouseKit): void {
  const told = { id: 'hot-old', service: 'hot', name: 'Hot as it is', joining: 'endFeed' as const };
  const corners = [low(HOT_JOIN, [3900, 3540], 2300), low('hot-tee', [3900, 3540], 2000)];
  k.run({ ...told, tube: copper('15x0.7'), corners }, null);
  k.run({ ...told, tube: copper('15x0.7'), corners: [behindBath('hot-bath-tee', 4790), at('bath-taps', 'hot')] }, null);
  k.unseen('hot-old', [
    unseen('hot-from-old-boiler', at('old-boiler', 'hot'), { node: HOT_JOIN }, [2400, 3200], [2, 4]),
    unseen('hot-to-sink', { node: 'hot-tee' }, at('sink-taps', 'hot'), [4500, 6000], [4, 7]),
    unseen('hot-to-bath', { node: 'hot-tee' }, { node: 'hot-bath-tee' }, [5500, 7500], [4, 8]),
    unseen('hot-to-basin', { node: 'hot-bath-tee' }, at('basin-taps', 'hot'), [1800, 2800], [2, 5]),
  ]);
}

/** Pipe that is there: what can be seen as legs, what is behind plaster and under boards as stretches. */
export function twoStoreyOldRuns(k: HouseKit): void {
  gas(k);
  heating(k);
  cold(k);
  hot(k);
}
