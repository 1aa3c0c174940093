import { type TubeSize, tube } from '../../reference/tubes.ts';
import type { Given } from '../given.ts';
import { newPipes } from './bare-pipe.ts';
import { type HotWay, hotWays } from './hot-ways.ts';

/** New hot pipe without insulation between a source and the tap with most of it. */
export interface BareWay {
  readonly source: string;
  readonly way: HotWay;
  readonly legs: readonly string[];
  readonly runs: readonly string[];
  readonly metres: number;
  /** The largest of it: the limit is shortest there. Null where a size is not known. */
  readonly largest: TubeSize | null;
}

function bareOf(
  way: HotWay,
  bare: ReadonlyMap<string, { readonly metres: number; readonly run: string; readonly size: TubeSize | undefined }>,
): BareWay | null {
  const legs = way.sections.flatMap((s) => s.legs.filter((l) => bare.has(l)));
  const parts = legs.flatMap((l) => bare.get(l) ?? []);
  if (parts.length === 0) return null;
  const sizes = parts.flatMap((p) => p.size ?? []).sort((a, b) => b.odMm - a.odMm);
  return {
    source: way.source.id,
    way,
    legs,
    runs: [...new Set(parts.map((p) => p.run))].sort(),
    metres: parts.reduce((n, p) => n + p.metres, 0),
    largest: sizes.length === parts.length ? (sizes[0] ?? null) : null,
  };
}

const known = new WeakMap<Given, readonly BareWay[]>();

/** The longest bare way of each source, in the order of sources. Worked out once for each plan and case. */
export function bareWays(given: Given): readonly BareWay[] {
  const found = known.get(given);
  if (found) return found;
  const bare = new Map(
    newPipes(given)
      .filter((p) => p.of === 'hot' && p.bare)
      .map((p) => [p.edge.id, { metres: p.metres, run: p.edge.run, size: tube(p.edge.tube.kind, p.edge.tube.size) }]),
  );
  const longest = new Map<string, BareWay>();
  for (const way of bare.size === 0 ? [] : hotWays(given)) {
    const one = bareOf(way, bare);
    if (one && one.metres > (longest.get(one.source)?.metres ?? 0)) longest.set(one.source, one);
  }
  const made = [...longest.values()].sort((a, b) => (a.source < b.source ? -1 : 1));
  known.set(given, made);
  return made;
}
