import { fittingAt } from '../../network/fitting-at.ts';
import type { Network } from '../../network/network.ts';
import type { Item, Vec } from '../display-list.ts';
import type { Passed } from './long-ground.ts';
import type { UnrolledPiece } from './ribbon-run.ts';

/** What stands on a run: tees, reducers and things in line as marks, all of it in words. */
export function standingOn(
  network: Network,
  pieces: readonly UnrolledPiece[],
  at: (p: Vec) => Vec,
): { items: Item[]; passed: Passed[] } {
  const items: Item[] = [];
  const passed: Passed[] = [];
  const mark = (name: string, place: Vec, ink: string): Item => ({
    t: 'mark',
    mark: name,
    at: place,
    turnDeg: 0,
    ink,
  });
  const seen = new Set<string>();
  for (const p of pieces) {
    for (const [i, vertex] of p.vertices.entries()) {
      if (seen.has(vertex) || !network.vertices.has(vertex)) continue;
      seen.add(vertex);
      const place = i === 0 ? p.from : p.upTo;
      const fitting = fittingAt(network, vertex);
      if (fitting.is === 'tee') items.push(mark('tee', at(place), p.style.ink));
      if (fitting.is === 'reducer' || fitting.is === 'transition') items.push(mark('reducer', at(place), p.style.ink));
      if (fitting.is === 'tee' || fitting.is === 'reducer' || fitting.is === 'elbow' || fitting.is === 'bend') {
        passed.push({ alongMm: place[0], words: fitting.is === 'bend' ? 'bend pulled in' : fitting.is });
      }
      for (const id of network.vertices.get(vertex)?.items ?? []) {
        const item = network.plan.items[id];
        if (!item) continue;
        items.push(mark(`item:${item.kind}`, at(place), p.style.ink));
        passed.push({ alongMm: place[0], words: item.kind });
      }
    }
  }
  return { items, passed };
}
