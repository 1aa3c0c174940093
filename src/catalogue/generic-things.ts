import type { Xyz } from '../plan/records/parts.ts';
import type { Field } from '../plan/records/pipework.ts';
import type { Thing } from '../plan/records/statements.ts';
import { figure } from '../reference/figure.ts';
import { tables } from '../reference/tables.ts';
import { pointKinds } from './point-kinds.ts';
import { SHEET_READ } from './thing-parts.ts';

const TABLE = 'generic-things';
const FIGURES = ['litres', 'coilKw', 'inputKwHeating'] as const;

/** What a class is, besides the figures that its row of the table gives. */
const CLASSES: Readonly<Record<string, { readonly kind: string; readonly fields: Readonly<Record<string, Field>> }>> = {
  combi24: { kind: 'boiler', fields: { type: 'combi', class: '24' } },
  combi28: { kind: 'boiler', fields: { type: 'combi', class: '28' } },
  combi30: { kind: 'boiler', fields: { type: 'combi', class: '30' } },
  combi35: { kind: 'boiler', fields: { type: 'combi', class: '35' } },
  system18: { kind: 'boiler', fields: { type: 'system', inputBasis: 'gross' } },
  system24: { kind: 'boiler', fields: { type: 'system', inputBasis: 'gross' } },
  system30: { kind: 'boiler', fields: { type: 'system', inputBasis: 'gross' } },
  heatOnly15: { kind: 'boiler', fields: { type: 'heatOnly', class: '15' } },
  heatOnly18: { kind: 'boiler', fields: { type: 'heatOnly', class: '18' } },
  cylinder150: { kind: 'cylinder', fields: { unvented: true } },
  cylinder210: { kind: 'cylinder', fields: { unvented: true } },
  cylinder250: { kind: 'cylinder', fields: { unvented: true } },
  preheat120: { kind: 'preheat-vessel', fields: { unvented: true } },
  hob60: { kind: 'hob', fields: {} },
  cooker60: { kind: 'cooker', fields: {} },
  fire: { kind: 'gas-fire', fields: {} },
};

const first = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

/** A figure of the table as a field: a range where it only bounds. */
function told(row: string, column: string): Field {
  const found = figure(TABLE, row, column);
  if (found.is !== 'known' || found.hi === null) return null;
  return found.lo === found.hi ? found.lo : { lo: found.lo, hi: found.hi };
}

function make(key: string, title: string): Thing[] {
  const known = CLASSES[key];
  const kind = known && pointKinds.get(known.kind);
  const [widthMm, depthMm, heightMm] = ['widthMm', 'depthMm', 'heightMm'].map((c) => told(key, c));
  if (!known || !kind || typeof widthMm !== 'number' || typeof depthMm !== 'number' || typeof heightMm !== 'number')
    return [];
  const size = { widthMm, depthMm, heightMm };
  const figures = FIGURES.flatMap((c): [string, Field][] => {
    const value = told(key, c);
    return value === null ? [] : [[c, value]];
  });
  const fields = { ...known.fields, ...Object.fromEntries(figures) };
  const round = ({ x, y, z }: Xyz): Xyz => ({ x: Math.round(x), y: Math.round(y), z: Math.round(z) });
  const connections = kind.connections(size, { ...kind.defaults, ...fields }).map((c) => ({ ...c, at: round(c.at) }));
  const name = `${first(title)}, assumed`;
  return [{ id: `generic-${key}`, kind: kind.id, name, fields: { ...fields, [SHEET_READ]: false }, size, connections }];
}

let made: readonly Thing[] | undefined;

/** Ordinary appliances by class, ready before any sheet is at hand. Every one is assumed, and says so in its name. */
export function genericThings(): readonly Thing[] {
  made ??= (tables().find((t) => t.id === TABLE)?.rows ?? []).flatMap((row) => make(row.key, row.title ?? row.key));
  return made;
}
