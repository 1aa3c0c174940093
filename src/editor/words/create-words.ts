import { createStore } from 'zustand/vanilla';
import { makePoint } from '../../catalogue/make-point.ts';
import { services } from '../../catalogue/services.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { raised } from '../commands/place-arg.ts';
import type { Editor } from '../editor-api.ts';
import { assumedFrom } from '../in-hand.ts';
import { chipsOf, pointAt } from './chips.ts';
import { hereOf, legCommand, placeAt, placeBy } from './lay-leg.ts';
import { classesOf, DIRECTIONS, kindsFor, padOf } from './pad.ts';
import type { ToldStep } from './told-run.ts';
import { baseOf, facingNow, startPlace, tell } from './where.ts';
import { HEIGHT_WORDS, type HeightWord, heightOfWord } from './word-heights.ts';
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
const MOST_DIGITS = 6;
const METER = 'gas-meter';

const digitOf = (key: string): string | undefined =>
  /^(?:digit )?(\d)$/.exec(key)?.[1] ?? (key === '00' ? '00' : undefined);
const withDigit = (typed: string, digit: string): string => (typed + digit).replace(/^0+/, '').slice(0, MOST_DIGITS);
const isHeight = (key: string): HeightWord | undefined =>
  HEIGHT_WORDS.find((w) => w === key || (w === 'off floor' && key.endsWith(' off floor')));
const isDirection = (key: string): (typeof DIRECTIONS)[number] | undefined => DIRECTIONS.find((d) => d === key);

/** The telling of runs in words, over an editor. It starts with the last run whose end is open, if there is one. */
export function createWords(editor: Editor): Words {
  const store = createStore<WordsState>()(() => BLANK);
  const get = store.getState;
  const put = (change: Partial<WordsState>): true => {
    store.setState(change);
    return true;
  };
  const { assumptions } = editor;
  let busy = false;
  let mine = 0;

  const plan = () => editor.store.getState().plan;
  const told = () => tell(editor, get().run);
  const endPoint = () => pointAt(plan(), told()?.end);

  function commit(command: string, args: unknown): readonly string[] | null {
    busy = true;
    const outcome = editor.run(command, args);
    busy = false;
    if (!outcome.ok) return null;
    mine++;
    return outcome.made;
  }

  /** Lays one leg; the first of a run makes the run. */
  function lay(to: Parameters<typeof legCommand>[1]): boolean {
    const base = baseOf(editor, get());
    const { service } = get();
    if (!base || service === null) return false;
    const { command, args } = legCommand(base, to, editor.store.getState().inHand, service);
    const made = commit(command, args);
    if (!made) return false;
    if (command === 'run.start') put({ run: made[0] ?? null });
    return put({ pending: null });
  }

  function pendingPlace() {
    const { pending } = get();
    const base = baseOf(editor, get());
    const here = base && hereOf(plan(), base);
    if (!pending || !here || pending.typed === '') return undefined;
    return placeBy(here, pending.dir, facingNow(editor, get()), Number(pending.typed));
  }

  function closePending(): boolean {
    const place = pendingPlace();
    return place ? lay(place) : put({ pending: null });
  }

  function layTo(word: HeightWord): boolean {
    const { pending } = get();
    const base = baseOf(editor, get());
    const here = base && hereOf(plan(), base);
    if (!here || (pending?.dir !== 'up' && pending?.dir !== 'down')) return false;
    const height = heightOfWord(word, plan(), here, pending.dir, assumptions, told());
    return height ? lay(placeAt(here, height)) : false;
  }

  function start(key: string): boolean {
    const { service } = get();
    const there = /^at (.+)\/([^/]+)$/.exec(key);
    if (there) return put({ phase: 'route', tail: { point: there[1] ?? '', connection: there[2] ?? '' } });
    const kind = service === null ? undefined : kindsFor(service, 'source').find((k) => k.id === key);
    if (!kind || service === null) return false;
    const { storey, at } = startPlace(editor);
    const outlet = kind.connections(kind.size, kind.defaults).find((c) => c.service === service);
    if (!outlet) return false;
    const told =
      kind.id === METER ? { height: raised(assumedFrom('floor', storey, assumptions.meter), -outlet.at.z) } : {};
    const made = commit('point.add', { kind: key, storey, place: { on: 'storey', ...at, angleDeg: 0, ...told } });
    return made?.[0] === undefined ? false : put({ phase: 'route', tail: { point: made[0], connection: outlet.id } });
  }

  /** Down to the thing itself: to the height its tail is taken to have. */
  function layToTailOf(kind: string): boolean {
    const base = baseOf(editor, get());
    const here = base && hereOf(plan(), base);
    if (!here) return false;
    const place = { on: 'storey', x: here.x, y: here.y, angleDeg: 0 } as const;
    const thing = makePoint(kind, { id: 'shown', storey: here.storey, place, option: null });
    const tail = thing.connections.find((c) => c.service === get().service);
    return tail ? lay(placeAt(here, raised(thing.place.height, tail.at.z))) : false;
  }

  function endAt(kind: string): boolean {
    const { pending } = get();
    const upright = pending?.dir === 'up' || pending?.dir === 'down';
    if (pending && !(upright && pending.typed === '' ? layToTailOf(kind) : closePending())) return false;
    const end = told()?.end;
    if (end === undefined) return false;
    const { x, y } = facingNow(editor, get());
    // It hangs before the walker and looks back at them.
    const angleDeg = (Math.atan2(-x, y) * 180) / Math.PI;
    if (!commit('run.end', { node: end, kind, angleDeg })) return false;
    return classesOf(kind).length > 0 ? put({ phase: 'class' }) : done();
  }

  function tellClass(value: string): boolean {
    const point = endPoint();
    if (!point || !classesOf(point.kind).some((c) => c.value === value)) return false;
    return commit('point.set', { point: point.id, change: {}, fields: { class: value } }) ? done() : false;
  }

  /** After a branch the run it came off goes on; else the run is told. */
  function done(): true {
    const { waiting, run } = get();
    const stem = waiting.at(-1);
    if (stem !== undefined)
      return put({ phase: 'route', run: stem, branchAt: null, waiting: waiting.slice(0, -1), pending: null });
    if (run !== null) editor.select([{ map: 'runs', id: run }]);
    return put({ phase: 'told', pending: null });
  }

  function branch(): boolean {
    if (!closePending()) return false;
    const here = told();
    if (!here) return false;
    return put({ waiting: [...get().waiting, here.run], branchAt: here.end, run: null, pending: null });
  }

  function takeBack(): boolean {
    if (get().pending) return put({ pending: null });
    const last = told()?.steps.at(-1);
    const point = endPoint();
    const back =
      mine > 0
        ? editor.undo()
        : point
          ? editor.run('point.delete', { point: point.id })
          : last && editor.run('leg.delete', { leg: last.leg });
    mine = Math.max(0, mine - 1);
    return back?.ok ?? false;
  }

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
    else if (end) put({ phase: end.fields.class === null && classesOf(end.kind).length > 0 ? 'class' : 'told' });
    else if (state.phase !== 'told' || run === null) put({ phase: 'route' });
  }

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
    const word = isHeight(key);
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

  function route(key: string): boolean {
    const { pending, service } = get();
    const direction = isDirection(key);
    const digit = digitOf(key);
    const word = isHeight(key);
    if (direction) return closePending() && put({ phase: 'route', pending: { dir: direction, typed: '' } });
    if (key === 'tee') return branch();
    if (digit !== undefined && pending) return put({ pending: { ...pending, typed: withDigit(pending.typed, digit) } });
    if (word) return layTo(word);
    if (key === 'repeat' && pending) {
      const before = told()?.steps.findLast((s) => s.dir !== 'up' && s.dir !== 'down');
      return before ? put({ pending: { ...pending, typed: String(Math.round(before.lengthMm)) } }) : false;
    }
    if (key === 'rub' && pending) return put({ pending: { ...pending, typed: pending.typed.slice(0, -1) } });
    if (service !== null && kindsFor(service, 'end').some((k) => k.id === key)) return endAt(key);
    return false;
  }

  function act(key: string): boolean {
    const { phase, changing } = get();
    if (changing) return change(key);
    if (key === 'back') return takeBack();
    if (key === 'keep') return get().service !== null && phase !== 'from' ? closePending() && done() : false;
    if ((phase === 'service' || phase === 'told') && services.has(key)) {
      editor.setInHand({ service: key });
      return put({ ...BLANK, service: key, phase: 'from' });
    }
    if (phase === 'from') return start(key);
    if (phase === 'class' && key.startsWith('class ')) return tellClass(key.slice('class '.length));
    return phase === 'route' || (phase === 'told' && !endPoint()) ? route(key) : false;
  }

  /** The leg that is being told, shown as it would be laid. */
  function show(): void {
    const place = pendingPlace();
    const base = baseOf(editor, get());
    const { service } = get();
    const { inHand, panes, draft } = editor.store.getState();
    const told = place && base && service !== null ? legCommand(base, place, inHand, service) : undefined;
    const next = told ? editor.preview(told.command, told.args) : null;
    if (!next) {
      if (draft) editor.showDraft(null);
      return;
    }
    const before = plan();
    const fresh = [...Object.keys(next.legs), ...Object.keys(next.nodes)].filter(
      (id) => !before.legs[id] && !before.nodes[id],
    );
    editor.showDraft({ pane: panes.active, lines: [], marks: [], labels: [], moved: new Set(fresh), plan: next });
  }

  function resume(run: string | null): boolean {
    if (run === null) return put(BLANK);
    const here = tell(editor, run);
    if (!here) return false;
    const start = plan().nodes[here.start]?.place;
    const tail = start?.on === 'connection' ? { point: start.point, connection: start.connection } : null;
    editor.setInHand({ service: here.service });
    put({ ...BLANK, service: here.service, run, tail, phase: 'route' });
    mine = 0;
    catchUp();
    return true;
  }

  const open = Object.keys(plan().runs).at(-1);
  if (open !== undefined && !pointAt(plan(), tell(editor, open)?.end)) resume(open);
  const stop = editor.store.subscribe((now, before) => {
    if (!busy && now.plan !== before.plan) catchUp();
  });

  return {
    store,
    press(key) {
      const did = act(key);
      show();
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
