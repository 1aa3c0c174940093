import { pointKinds } from '../../catalogue/point-kinds.ts';
import { sayField } from '../../catalogue/say-point.ts';
import { partsOf, SHEET_READ } from '../../catalogue/thing-parts.ts';
import type { Thing } from '../../plan/records/statements.ts';

/** Figures that tell one thing from another of its kind. */
const TELLING = ['class', 'inputKw', 'inputKwHotWater', 'inputKwHeating', 'litres'] as const;

/** "boiler; heat input, hot water 31.2 kW; 400 x 300 x 700". */
export function sayKept(thing: Thing): string {
  const kind = pointKinds.get(thing.kind);
  if (!kind) return `${thing.kind}: this version does not know it`;
  const { size } = partsOf(thing);
  const told = TELLING.flatMap((key) => {
    const spec = kind.fields.find((f) => f.key === key);
    const value = thing.fields[key];
    const said = spec && sayField(spec, value as never);
    return spec && said !== undefined ? [spec.kind === 'choice' ? said : `${spec.label.toLowerCase()} ${said}`] : [];
  });
  return [kind.label.toLowerCase(), ...told.slice(0, 2), `${size.widthMm} x ${size.depthMm} x ${size.heightMm}`].join(
    '; ',
  );
}

export const isAssumed = (thing: Thing): boolean => thing.fields[SHEET_READ] === false;

/** The order in which kinds of things stand, and what a person may make from nothing. */
export const THING_KINDS: readonly string[] = [
  'boiler',
  'cylinder',
  'preheat-vessel',
  'hob',
  'cooker',
  'gas-fire',
  'condensate-pump',
  'radiator',
  'mixing-valve',
  'diverting-valve',
];
