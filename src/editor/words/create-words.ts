import { createStore } from 'zustand/vanilla';
import { services } from '../../catalogue/services.ts';
import type { Editor } from '../editor-api.ts';
import { chipsOf, pointAt } from './chips.ts';
import { digitOf, directionOf, heightWordOf, withDigit } from './key-words.ts';
import { kindsFor, padOf, tailOfKey, tellsAngle, wantsClass } from './pad.ts';
import { createRetelling } from './retelling.ts';
import { createTelling } from './telling.ts';
import { tell } from './where.ts';
import type { Words, WordsState } from './words-api.ts';

const BLANK: WordsState = {
  phase: 'service',
  service: null,
  tail: null,
  branchAt: null,
  run: null,
  pending: null,
  changing: null,
  waiting: [],
};

/** The telling of runs in words, over an editor. It starts with the last run whose end is open, if there is one. */
export function createWords(editor: Editor): Words {
  const store = createStore<WordsState>()(() => BLANK);
  const get = store.getState;
  const { assumptions } = editor;
  const telling = createTelling(editor, store);
  const { change } = createRetelling(telling, store, assumptions);
  const { put, plan, told, endPoint, closePending } = telling;

  /** Reads back from the document what was taken away or put back elsewhere. */
  function catchUp(): void {
    const state = get();
    const has = (run: string): boolean => plan().runs[run] !== undefined;
    const waiting = state.waiting.filter(has);
    const run = state.run !== null && has(state.run) ? state.run : null;
    const branchAt = state.branchAt !== null && plan().nodes[state.branchAt] ? state.branchAt : null;
    const tail = state.tail && plan().points[state.tail.point] ? state.tail : null;
    put({ waiting, run, branchAt, tail, changing: run === null ? null : state.changing });
    if (state.phase === 'service' || state.phase === 'from') return;
    const end = endPoint();
    if (run === null && branchAt === null && tail === null)
      put({ phase: state.service === null ? 'service' : 'from', pending: null });
    else if (end) put({ phase: wantsClass(end) ? 'class' : 'told' });
    else if (state.phase !== 'told' || run === null) put({ phase: 'route' });
  }

  function route(key: string): boolean {
    const { pending, service } = get();
    const direction = directionOf(key);
    const digit = digitOf(key);
    const word = heightWordOf(key);
    if (direction) return closePending() && put({ phase: 'route', pending: { dir: direction, typed: '' } });
    if (key === 'tee') return telling.branch();
    if (digit !== undefined && pending) return put({ pending: { ...pending, typed: withDigit(pending.typed, digit) } });
    if (word) return telling.layTo(word);
    if (key === 'own angle') return turn();
    if (key === 'repeat' && pending) {
      const before = told()?.steps.findLast((s) => s.dir !== 'up' && s.dir !== 'down');
      return before ? put({ pending: { ...pending, typed: String(Math.round(before.lengthMm)) } }) : false;
    }
    if (key === 'rub' && pending) return put({ pending: { ...pending, typed: pending.typed.slice(0, -1) } });
    if (key.startsWith('to ')) return telling.endAtTail(tailOfKey(key));
    if (service !== null && kindsFor(service, 'end').some((k) => k.id === key)) return telling.endAt(key);
    return false;
  }

  /** The digits after left or right are degrees and not a length. */
  function turn(): boolean {
    const { pending } = get();
    if (!pending || !tellsAngle(pending)) return false;
    return put({ pending: { ...pending, typed: '', turnDeg: Number(pending.typed) } });
  }

  function act(key: string): boolean {
    const { phase, changing } = get();
    if (changing) return change(key);
    if (key === 'back') {
      const took = telling.takeBack();
      if (took) catchUp();
      return took;
    }
    if (key === 'keep') return get().service !== null && phase !== 'from' ? closePending() && telling.done() : false;
    if ((phase === 'service' || phase === 'told') && services.has(key)) {
      editor.setInHand({ service: key });
      return put({ ...BLANK, service: key, phase: 'from' });
    }
    if (phase === 'from') return telling.start(key);
    if (phase === 'class' && key.startsWith('class ')) return telling.tellClass(key.slice('class '.length));
    return phase === 'route' || (phase === 'told' && !endPoint()) ? route(key) : false;
  }

  function resume(run: string | null): boolean {
    if (run === null) return put(BLANK);
    const here = tell(editor, run);
    if (!here) return false;
    const start = plan().nodes[here.start]?.place;
    const tail = start?.on === 'connection' ? { point: start.point, connection: start.connection } : null;
    const last = plan().legs[here.steps.at(-1)?.leg ?? ''];
    const record = plan().runs[run];
    const laid = last && record ? { tube: last.tube, joining: record.joining, turns: record.turns } : {};
    editor.setInHand({ service: here.service, ...laid });
    put({ ...BLANK, service: here.service, run, tail, phase: 'route' });
    telling.forgetSteps();
    catchUp();
    return true;
  }

  const open = Object.keys(plan().runs).at(-1);
  if (open !== undefined && !pointAt(plan(), tell(editor, open)?.end)) resume(open);
  const stop = editor.store.subscribe((now, before) => {
    if (now.plan === before.plan || telling.busy()) return;
    telling.forgetSteps();
    catchUp();
  });

  return {
    store,
    press(key) {
      const did = act(key);
      telling.show();
      return did;
    },
    keys: () => padOf(plan(), editor.store.getState().chosen, get(), endPoint()?.kind, assumptions),
    chips() {
      const { tail } = get();
      return chipsOf(plan(), get(), tail ? plan().points[tail.point] : undefined, told(), assumptions);
    },
    retype(step) {
      if (step === 'class') return endPoint() ? put({ phase: 'class', changing: null }) : false;
      return told()?.steps[step] ? put({ changing: { step, typed: '' }, pending: null }) : false;
    },
    resume,
    dispose: stop,
  };
}
