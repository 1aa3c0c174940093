import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';
import type { Way } from './way-back.ts';

/** What sets the pressure of a supply: a reducer, or the main itself. `id` is of an item or a point; null of the main. */
export interface PressureFrom {
  readonly id: string | null;
  readonly say: string;
  readonly setBar: number | null;
}

export const bar = (n: unknown): number | null => (typeof n === 'number' && Number.isFinite(n) ? n : null);

/** Every reducer on the way, in the order the water meets them. */
export function reducersOn(given: Given, way: Way): PressureFrom[] {
  return way.steps.flatMap((s): PressureFrom[] => {
    if (s.is === 'item' && s.item.kind === 'pressure-reducer')
      return [
        {
          id: s.item.id,
          say: s.item.name === '' ? 'a pressure reducing valve' : midSentence(s.item.name),
          setBar: bar(s.item.fields.setBar),
        },
      ];
    if (s.is === 'point' && s.point.kind === 'inlet-group')
      return [
        {
          id: s.point.id,
          say: `the ${midSentence(sayPoint(given.plan, s.point.id))}`,
          setBar: bar(s.point.fields.setBar),
        },
      ];
    return [];
  });
}

/** What sets the pressure at the end of a way: its last reducer, else the main; null where the drawing stops before. */
export function pressureFrom(given: Given, way: Way): PressureFrom | null {
  const last = reducersOn(given, way).pop();
  if (last) return last;
  return way.origin.is === 'main' ? { id: null, say: 'the main', setBar: null } : null;
}
