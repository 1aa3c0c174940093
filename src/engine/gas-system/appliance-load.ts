import { pointKinds } from '../../catalogue/point-kinds.ts';
import type { Field, Point } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { type GasKind, heatInput } from '../gas/heat-input.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';

export interface ApplianceLoad {
  readonly working: Working;
  /** True while a generic class stands in for the data plate. */
  readonly assumedClass: boolean;
}

function told(field: Field | undefined): Quantity | null {
  if (typeof field === 'number') return exact(field, 'kW', 1, 'page');
  if (field !== null && typeof field === 'object') {
    return { lo: field.lo, hi: field.hi, value: null, unit: 'kW', digits: 1, sureness: 'practice' };
  }
  return null;
}

/** Row of the table of classes: the appliance's own class where one was chosen, else what its kind stands for. */
function classKey(point: Point): string | null {
  const own = point.fields.class;
  if (typeof own === 'string') return point.fields.type === 'heatOnly' ? `boiler${own}heatOnly` : `boiler${own}`;
  return pointKinds.get(point.kind)?.gasClass ?? null;
}

/**
 * Gross heat input of an appliance in kW from what its record says; a generic class stands in, marked assumed, until
 * the data plate is read. Nothing told: no result, and `missing` names the appliance.
 */
export function applianceLoad(point: Point, name: string, gas: GasKind): ApplianceLoad {
  const kind = pointKinds.get(point.kind);
  const given = (kind?.gasInputs ?? []).map((key) => ({ key, quantity: told(point.fields[key]) }));
  if (given.some((g) => g.quantity !== null)) {
    const of = (test: (key: string) => boolean): Quantity | null => given.find((g) => test(g.key))?.quantity ?? null;
    const stated = point.fields.inputBasis;
    return {
      assumedClass: false,
      working: heatInput({
        name,
        gas,
        heating: of((key) => key !== 'inputKwHotWater'),
        hotWater: of((key) => key === 'inputKwHotWater'),
        stated: stated === 'gross' || stated === 'net' || stated === 'output' ? stated : null,
        use: 'larger',
        rangeRated: told(point.fields.rangeRatedKw),
      }),
    };
  }
  const key = classKey(point);
  const row = key === null ? null : figure('gas-appliance-classes', key, 'grossKw');
  if (row?.is !== 'known') {
    return { assumedClass: false, working: cannot(`Load of ${name}`, [`heat input of ${name}`]) };
  }
  const load = quantityOf(row, 1);
  const label =
    typeof point.fields.class === 'string' ? `${point.fields.class} kW class` : `usual ${name.toLowerCase()}`;
  return {
    assumedClass: true,
    working: {
      title: `Load of ${name}`,
      steps: [step('Heat input, gross', label, load, citesOf(row.cite))],
      result: load,
      missing: [],
      assumed: [`${name}: ${label}, ${load.lo === load.hi ? load.lo : `${load.lo} to ${load.hi}`} kW of heat input`],
    },
  };
}
