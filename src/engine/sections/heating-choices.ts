import { figure } from '../../reference/figure.ts';
import { type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import type { Given } from '../given.ts';
import type { HeatCircuit } from '../heating-system/circuits.ts';
import { otherDifferences, otherSizes } from '../heating-system/other-ways.ts';
import { headState } from '../heating-system/pump-head.ts';
import type { HeatingSystem } from '../heating-system/solve-heating.ts';
import { midSentence } from '../say-names.ts';

const sayVelocity = (v: Quantity | null): string =>
  v === null || (v.hi === null && v.lo === 0) ? '' : `${sayFigures(v)} m/s`;

/** Too fast for the quiet of a house goes before what the pump says of it. */
function stateOf(lost: Quantity, velocity: Quantity | null, head: number | null): State {
  const noise = figure('heating-velocity', 'noise', 'most');
  const fast = noise.is === 'known' && velocity !== null && velocity.lo > noise.lo;
  const state = headState(lost, head);
  return fast ? 'check' : state === 'cantTell' ? 'none' : state;
}

/** The primaries a size down, as drawn and a size up: what the whole way then loses. */
export function sizeRows(given: Given, c: HeatCircuit): Row[] {
  const sizes = otherSizes(given, c);
  if (sizes.length < 2) return [];
  return [
    { kind: 'heading', label: 'Primaries in other sizes', say: 'all of their new copper in one', ids: [c.boiler.id] },
    ...sizes.map((o): Row => {
      const state = stateOf(o.lost, o.velocity, c.head);
      return {
        kind: 'choice',
        label: `All ${o.size.label}`,
        figure: o.lost,
        bar: c.head === null ? null : { figure: o.lost, limit: c.head, state },
        state,
        room: sayVelocity(o.velocity) || null,
        chosen: o.chosen,
        change: o.change,
        ids: [c.boiler.id],
      };
    }),
  ];
}

/** The same heat at other differences between flow and return. */
export function differenceRows(system: HeatingSystem, c: HeatCircuit): Row[] {
  const ways = c.kW.lo > 0 ? otherDifferences(system, c) : [];
  if (ways.length === 0) return [];
  return [
    {
      kind: 'heading',
      label: 'At another difference',
      say: `the same heat; drawn for ${system.temps.differenceK} K`,
      ids: [c.boiler.id],
    },
    ...ways.map((o): Row => {
      const speed = sayVelocity(o.velocity);
      const over = headState(o.lost, c.head) === 'check' ? '; more than the pump has left' : '';
      return {
        kind: 'fact',
        label: `${o.kelvin.lo} K, ${midSentence(o.title)}`,
        figure: o.lost,
        say: `${o.times.toFixed(2)} times the water${speed === '' ? '' : `, ${speed} in the primaries`}${over}`,
        ids: [c.boiler.id],
      };
    }),
  ];
}
