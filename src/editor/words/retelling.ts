import type { StoreApi } from 'zustand/vanilla';
import type { HeightRef } from '../../plan/records/parts.ts';
import { raised } from '../commands/place-arg.ts';
import type { Assumptions } from '../editor-api.ts';
import { digitOf, heightWordOf, withDigit } from './key-words.ts';
import { hereOf } from './lay-leg.ts';
import type { Telling } from './telling.ts';
import type { ToldStep } from './told-run.ts';
import { heightOfWord } from './word-heights.ts';
import type { WordsState } from './words-api.ts';

/** Tells a step that is in the document again. Gives what a pressed key does while that goes on. */
export function createRetelling(telling: Telling, store: StoreApi<WordsState>, assumptions: Assumptions) {
  const get = store.getState;
  const { plan, put, told, commit } = telling;

  /** Where an upright of that length would end, told from what its start is told from. */
  function lengthAsHeight(step: ToldStep, mm: number): HeightRef | undefined {
    const here = hereOf(plan(), { is: 'node', node: step.from, run: get().run });
    return here && raised(here.height, step.dir === 'up' ? mm : -mm);
  }

  /** The level an upright leads to is set anew: the uprights at its other end take it up, and a tail stays at its height. */
  function tellHeight(step: ToldStep, height: HeightRef | undefined): boolean {
    const place = plan().nodes[step.to]?.place;
    if (!height || !place) return false;
    if (place.on === 'storey') return commit('node.height', { node: step.to, height }) !== null;
    const point = plan().points[place.point];
    const tail = point?.connections.find((c) => c.id === place.connection);
    if (!point || !tail) return false;
    const moved = { ...point.place, height: raised(height, -tail.at.z) };
    return commit('point.move', { point: point.id, place: moved }) !== null;
  }

  function change(key: string): boolean {
    const { changing, run } = get();
    const step = changing && told()?.steps[changing.step];
    if (!changing || !step || run === null) return false;
    const digit = digitOf(key);
    if (digit !== undefined) return put({ changing: { ...changing, typed: withDigit(changing.typed, digit) } });
    if (key === 'rub') return put({ changing: { ...changing, typed: changing.typed.slice(0, -1) } });
    if (key === 'back') return put({ changing: null });
    const word = heightWordOf(key);
    const upright = step.dir === 'up' || step.dir === 'down' ? step.dir : null;
    const place = hereOf(plan(), { is: 'node', node: step.from, run });
    const height = word && upright && place ? heightOfWord(word, plan(), place, upright, assumptions) : undefined;
    if (word && !height) return false;
    if (!word && key !== 'keep') return false;
    if (!word && changing.typed === '') return put({ changing: null });
    if (upright)
      return tellHeight(step, height ?? lengthAsHeight(step, Number(changing.typed))) && put({ changing: null });
    const retold = { lengthMm: Number(changing.typed) };
    return commit('run.retell', { run, index: step.index, change: retold }) ? put({ changing: null }) : false;
  }

  return { change };
}
