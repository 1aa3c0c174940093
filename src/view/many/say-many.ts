import type { Selected } from '../../editor/editor-api.ts';

/** Kinds in the order they are counted, one and several. */
const WORDS: readonly (readonly [Selected['map'], string, string])[] = [
  ['walls', 'wall', 'walls'],
  ['openings', 'opening', 'openings'],
  ['rooms', 'room', 'rooms'],
  ['voids', 'void', 'voids'],
  ['points', 'thing', 'things'],
  ['runs', 'run', 'runs'],
  ['legs', 'leg', 'legs'],
  ['stretches', 'unseen stretch', 'unseen stretches'],
  ['nodes', 'corner', 'corners'],
  ['items', 'item', 'items'],
  ['roofs', 'roof', 'roofs'],
  ['grounds', 'ground level', 'ground levels'],
  ['blobRefs', 'photo', 'photos'],
];

/** "2 walls, 1 run": what is chosen, by kind; empty where nothing is. */
export function sayMany(selection: readonly Selected[]): string {
  return WORDS.flatMap(([map, one, several]) => {
    const n = selection.filter((s) => s.map === map).length;
    return n === 0 ? [] : [`${n} ${n === 1 ? one : several}`];
  }).join(', ');
}
