import { toHouse } from '../../geometry/hosting.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { type Sited, site, standing } from './sited.ts';

const middle = ({ point, body }: Sited): Xyz =>
  toHouse(body.frame, { x: 0, y: point.size.depthMm / 2, z: point.size.heightMm / 2 });

/** Along the walls and up and down, never across a room at a slant. */
const square = (a: Xyz, b: Xyz): number => Math.abs(a.x - b.x) + Math.abs(a.y - b.y) + Math.abs(a.z - b.z);

/** Metres of cable between two things, at least: square to the house, by way of the cables drawn, nearest first. */
export function cableMetres(from: Sited, to: Sited, by: readonly Sited[] = []): Quantity {
  const left = [...by];
  let [at, mm] = [middle(from), 0];
  while (left.length > 0) {
    const here = at;
    left.sort((a, b) => square(here, middle(a)) - square(here, middle(b)));
    const next = left.shift();
    if (!next) break;
    mm += square(at, middle(next));
    at = middle(next);
  }
  return between((mm + square(at, middle(to))) / 1000, null, 'm', 1);
}

/** Cables drawn that say they feed a thing, by its name or what it is. */
export function cablesFor(given: Given, words: readonly string[]): Sited[] {
  const wanted = words.filter((w) => w !== '').map((w) => w.toLowerCase());
  return standing(given, 'cable-route')
    .filter((p) => wanted.some((w) => `${p.fields.feeds ?? ''}`.toLowerCase().includes(w)))
    .flatMap((p) => site(given, p) ?? []);
}

const byKind = new WeakMap<Given, Map<string, readonly Sited[]>>();

function sitedOf(given: Given, kind: string): readonly Sited[] {
  const kept = byKind.get(given) ?? new Map<string, readonly Sited[]>();
  byKind.set(given, kept);
  const known = kept.get(kind);
  if (known) return known;
  const made = standing(given, kind).flatMap((p) => site(given, p) ?? []);
  kept.set(kind, made);
  return made;
}

/** The nearest of a kind to a thing, on any storey. */
export function nearestOf(given: Given, kind: string, to: Sited, which: (s: Sited) => boolean = () => true) {
  const at = middle(to);
  let nearest: { readonly sited: Sited; readonly mm: number } | null = null;
  for (const sited of sitedOf(given, kind)) {
    const mm = square(middle(sited), at);
    if (which(sited) && (!nearest || mm < nearest.mm)) nearest = { sited, mm };
  }
  return nearest?.sited ?? null;
}
