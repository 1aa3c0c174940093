import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import type { Outcome } from '../../report/finding.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';

/** What is wrong with an end; `say` is the sentence of the rule. */
export interface EndFault {
  readonly outcome: Outcome;
  readonly say: string;
  readonly missing: readonly string[];
  readonly found?: Quantity;
  readonly wanted?: Quantity;
}

const LIMITS = 'condensate-limits';
const ask = (...missing: string[]): EndFault[] => [{ outcome: 'cantTell', say: 'cantTell', missing }];
const no = (outcome: Outcome, say: string): EndFault[] => [{ outcome, say, missing: [] }];

function limitMm(row: string): Quantity | null {
  const found = figure(LIMITS, row, 'mm');
  return found.is === 'known' ? found : null;
}

/** Of a stack: told, or at least as far above its foot as it is above the lowest floor, since the bend lies under it. */
function aboveFoot(given: Given, point: Point, at: Xyz | null): number | null {
  const told = point.fields.aboveFootMm;
  if (typeof told === 'number') return told;
  const floors = Object.values(given.plan.storeys).map((s) => s.floorMm);
  return at && floors.length > 0 ? at.z - Math.min(...floors) : null;
}

function ofStack(given: Given, point: Point, at: Xyz | null): EndFault[] {
  const least = limitMm('above foot bend');
  const above = aboveFoot(given, point, at);
  if (!least) return ask('how high above the foot of a stack a branch may enter');
  if (above !== null && above >= least.lo) return [];
  if (typeof point.fields.aboveFootMm !== 'number')
    return ask('how far the boss is above the bend at the foot of the stack');
  return [{ outcome: 'stop', say: 'lowInStack', missing: [], found: exact(above ?? 0, 'mm', 0), wanted: least }];
}

function wallsAway(given: Given, at: Xyz): number | null {
  const walls = Object.values(given.plan.walls).filter((w) => given.network.alive.has('walls', w.id));
  const far = walls.map((w) => {
    const { u, v } = intoWall(w, at);
    const past = u < 0 ? -u : Math.max(0, u - wallLength(w));
    return Math.hypot(past, Math.max(0, Math.abs(v) - w.thicknessMm / 2));
  });
  return far.length === 0 ? null : Math.min(...far);
}

function ofSoakaway(given: Given, point: Point, at: Xyz | null): EndFault[] {
  const { ground, soil, fromWallMm } = point.fields;
  const clay = ground === 'clay' || (ground === null && typeof soil === 'string' && /\bclay\b/i.test(soil));
  if (clay) return no('stop', 'clay');
  const least = limitMm('soakaway from foundations');
  const away = typeof fromWallMm === 'number' ? fromWallMm : at ? wallsAway(given, at) : null;
  if (least && away !== null && away < least.lo)
    return [{ outcome: 'stop', say: 'nearWall', missing: [], found: exact(away, 'mm', 0), wanted: least }];
  const missing = [
    ...(ground !== 'free' ? ['whether the soil drains'] : []),
    ...(away === null ? ['how far it is from the foundations'] : []),
  ];
  if (missing.length > 0) return ask(...missing);
  return point.fields.chippings === false ? no('check', 'bareSoakaway') : [];
}

function ofSurface(point: Point, then: () => EndFault[]): EndFault[] {
  if (point.fields.drains === 'surface') return no('stop', 'surface');
  if (point.fields.drains !== 'foul') return ask('whether it drains to foul or to surface water');
  return then();
}

function ofSinkWaste(point: Point): EndFault[] {
  const { aboveTrap, airBreak } = point.fields;
  if (aboveTrap === true || airBreak === true) return [];
  if (aboveTrap === null) return ask('whether it enters above the trap');
  return airBreak === null ? ask('whether there is an air break before it') : no('check', 'belowTrap');
}

function ofRainwater(point: Point): EndFault[] {
  return ofSurface(point, () => {
    if (point.fields.airBreak === true) return [];
    return point.fields.airBreak === null
      ? ask('whether there is an outside air break before it')
      : no('stop', 'noAirBreak');
  });
}

function ofGully(point: Point): EndFault[] {
  return ofSurface(point, () => [
    ...(point.fields.trapped === false ? no('check', 'untrapped') : []),
    ...(point.fields.trapped !== false && point.fields.belowGrating === false ? no('check', 'overGrating') : []),
  ]);
}

function ofBranch(given: Given, point: Point): EndFault[] {
  if (point.fields.laid === true) return [];
  const told = typeof point.fields.before === 'string' && point.fields.before.trim() !== '';
  const held = (given.plan.job.holdPoints ?? []).some((h) => h.on !== null && h.owner.trim() !== '');
  return no(told || held ? 'note' : 'check', told || held ? 'toLay' : 'toLayWhen');
}

/** What is wrong where condensate ends at a point; nothing where the point may take it. `at`: where the pipe meets it. */
export function endFaults(given: Given, point: Point, at: Xyz | null): EndFault[] {
  switch (point.kind) {
    case 'gully':
      return ofGully(point);
    case 'rainwater-pipe':
      return ofRainwater(point);
    case 'sink-waste':
      return ofSinkWaste(point);
    case 'soil-stack':
      return ofStack(given, point, at);
    case 'soakaway':
      return ofSoakaway(given, point, at);
    case 'condensate-drain':
      return ofBranch(given, point);
    case 'outside-end':
      return no('stop', 'fault');
    default:
      return [];
  }
}
