import type { Edge } from '../../network/network.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import type { Given } from '../given.ts';
import { contentCite, litresByHeat, panelLitres, tubeLitres, usualLitres } from '../heating/content.ts';
import { total } from '../heating/spread.ts';
import { midSentence, sayPoint, saySize, sayTubeKind, sentence } from '../say-names.ts';
import { heatOf } from './loads.ts';
import { heatingTails, type WaterSystem, waterSystems } from './water-systems.ts';

export type Holder = 'pipe' | 'unseen' | 'radiator' | 'boiler' | 'coil' | 'vessel' | 'behind';

export interface WaterPart {
  readonly holder: Holder;
  readonly label: string;
  /** Not bounded from above where nobody told. */
  readonly litres: Quantity;
  readonly say: string;
  /** No sheet or size was read for it. */
  readonly assumed: boolean;
  /** What would have to be told; null where it is. */
  readonly missing: string | null;
  readonly cite: Cite | null;
  readonly ids: readonly string[];
}

export interface WaterContent {
  readonly system: WaterSystem;
  readonly parts: readonly WaterPart[];
  readonly litres: Quantity;
  readonly missing: readonly string[];
}

const told = (n: unknown): Quantity | null => (typeof n === 'number' && n >= 0 ? exact(n, 'litres', 1, 'page') : null);
const anything: Quantity = { lo: 0, hi: null, value: null, unit: 'litres', digits: 1, sureness: 'derived' };
const metresOf = (edges: readonly Edge[]): Quantity =>
  total(
    edges.map(({ lengthMm: { lo, hi, value } }) => ({
      lo: lo / 1000,
      hi: hi === null ? null : hi / 1000,
      value: value === null ? null : value / 1000,
      unit: 'm',
      digits: 1,
      sureness: 'derived' as const,
    })),
    'm',
    1,
  );

/** "9.3 m", "8.0 to 11.0 m". */
const sayMetres = (q: Quantity): string =>
  q.hi === null
    ? `at least ${q.lo.toFixed(1)} m`
    : q.lo.toFixed(1) === q.hi.toFixed(1)
      ? `${q.lo.toFixed(1)} m`
      : `${q.lo.toFixed(1)} to ${q.hi.toFixed(1)} m`;

/** Pipes of one size and service together; what nobody saw apart. */
function pipeParts(system: WaterSystem): WaterPart[] {
  const groups = new Map<string, Edge[]>();
  for (const e of system.edges) {
    const key = [e.kind, e.circuit, e.tube.kind, e.tube.size].join('|');
    const here = groups.get(key);
    if (here) here.push(e);
    else groups.set(key, [e]);
  }
  return [...groups.values()].flatMap((edges): WaterPart[] => {
    const [first] = edges;
    if (!first) return [];
    const metres = metresOf(edges);
    const litres = tubeLitres(first.tube.kind, first.tube.size, metres);
    const unseen = first.kind === 'stretch';
    const leg = first.circuit === 'heatingReturn' ? 'return' : 'flow';
    const label = sentence(`${leg}, ${sayTubeKind(first.tube)} ${saySize(first.tube)}${unseen ? ', not seen' : ''}`);
    return [
      {
        holder: unseen ? 'unseen' : 'pipe',
        label,
        litres: litres ?? anything,
        say: litres ? sayMetres(metres) : `${sayMetres(metres)} of a size nobody read`,
        assumed: unseen || litres === null,
        missing: litres === null ? 'the size of a pipe' : metres.hi === null ? 'how far an unseen pipe goes' : null,
        cite: null,
        ids: [...new Set(edges.map((e) => e.run))].sort(),
      },
    ];
  });
}

type Bare = Omit<WaterPart, 'label' | 'ids' | 'holder'>;
const byTold = (litres: Quantity): Bare => ({ litres, say: 'as told', assumed: false, missing: null, cite: null });

function boilerPart(point: Point): Bare {
  const own = told(point.fields.waterLitres);
  if (own) return byTold(own);
  const say = 'usual for a wall boiler; its sheet tells';
  return {
    litres: usualLitres('boiler'),
    say,
    assumed: true,
    missing: null,
    cite: contentCite('boiler', 'litres'),
  };
}

function radiatorPart(point: Point): Bare {
  const own = told(point.fields.litres);
  if (own) return byTold(own);
  const panels = typeof point.fields.panels === 'string' ? point.fields.panels : null;
  const { widthMm, heightMm } = point.size;
  const word = panels === 'single' ? 'one panel' : panels === 'double' ? 'two panels' : 'one panel or two';
  return {
    litres: panelLitres(panels, widthMm, heightMm),
    say: `${word}, ${widthMm} x ${heightMm}`,
    assumed: true,
    missing: null,
    cite: contentCite(panels ?? 'panel', 'perM'),
  };
}

function coilPart(point: Point): Bare {
  const own = told(point.fields.coilLitres);
  if (own) return byTold(own);
  const say = 'usual for the coil of a cylinder; its sheet tells';
  return { litres: usualLitres('coil'), say, assumed: true, missing: null, cite: contentCite('coil', 'litres') };
}

/** What lies behind tails or a join nobody drew further: told, or by its heat, or anything. */
function behindPart(point: Point): Bare {
  const own = told(point.fields.litresBehind);
  if (own) return byTold(own);
  const heat = heatOf(point);
  if (!heat) {
    const say = 'nobody told how much heating lies behind';
    return { litres: anything, say, assumed: true, missing: 'what lies behind the old pipe', cite: null };
  }
  return {
    litres: litresByHeat(heat, 'any'),
    say: `${heat.hi === null || heat.lo === heat.hi ? heat.lo : `${heat.lo} to ${heat.hi}`} kW of heating, by what is usual for each kW`,
    assumed: true,
    missing: null,
    cite: contentCite('any', 'perKw'),
  };
}

const HOLDERS: Readonly<Record<string, readonly [Holder, (p: Point) => Bare]>> = {
  boiler: ['boiler', boilerPart],
  radiator: ['radiator', radiatorPart],
  cylinder: ['coil', coilPart],
  'preheat-vessel': ['coil', coilPart],
  'old-tails': ['behind', behindPart],
  'join-point': ['behind', behindPart],
};

function pointParts(given: Given, system: WaterSystem): WaterPart[] {
  const onFlow = (p: Point): boolean =>
    heatingTails(given, p).some((t) => given.network.vertices.get(t)?.service === 'heatingFlow');
  const behind = system.points.filter((p) => HOLDERS[p.kind]?.[0] === 'behind');
  const flows = behind.filter(onFlow);
  return system.points.flatMap((p): WaterPart[] => {
    const [holder, make] = HOLDERS[p.kind] ?? [];
    if (!holder || !make) return [];
    // What lies behind is told once, at the flow.
    if (holder === 'behind' && flows.length > 0 && !onFlow(p) && told(p.fields.litresBehind) === null) return [];
    const name = sayPoint(given.plan, p.id);
    const label =
      holder === 'coil' ? `Coil of ${midSentence(name)}` : holder === 'behind' ? `Behind: ${midSentence(name)}` : name;
    return [{ holder, label, ids: [p.id], ...make(p) }];
  });
}

const contents = new WeakMap<Given, readonly WaterContent[]>();

/** How much water each heating system holds, part by part, and how much of that is assumed. */
export function waterContents(given: Given): readonly WaterContent[] {
  const found = contents.get(given);
  if (found) return found;
  const made = waterSystems(given).map((system): WaterContent => {
    const parts = [...pipeParts(system), ...pointParts(given, system)];
    const litres = total(
      parts.map((p) => p.litres),
      'litres',
      0,
    );
    return { system, parts, litres, missing: [...new Set(parts.flatMap((p) => p.missing ?? []))] };
  });
  contents.set(given, made);
  return made;
}
