import type { StoreApi } from 'zustand/vanilla';
import { makePoint } from '../../catalogue/make-point.ts';
import { raised } from '../commands/place-arg.ts';
import type { Editor } from '../editor-api.ts';
import { assumedFrom } from '../in-hand.ts';
import { pointAt } from './chips.ts';
import { hereOf, legCommand, placeAt, placeBy } from './lay-leg.ts';
import { classesOf, type FreeTail, kindsFor, tailOfKey, wantsClass } from './pad.ts';
import { baseOf, facingNow, startPlace, tell } from './where.ts';
import { type HeightWord, heightOfWord } from './word-heights.ts';
import type { WordsState } from './words-api.ts';

const METER = 'gas-meter';

/** What words do to the document: each told word is one step of it. */
export function createTelling(editor: Editor, store: StoreApi<WordsState>) {
  const get = store.getState;
  const { assumptions } = editor;
  let busy = false;
  let mine = 0;

  const put = (change: Partial<WordsState>): true => {
    store.setState(change);
    return true;
  };
  const plan = () => editor.store.getState().plan;
  const told = () => tell(editor, get().run);
  const endPoint = () => pointAt(plan(), told()?.end);

  /** Runs what is this telling's own doing: its listener is not to take it for somebody else's. */
  function within<T>(work: () => T): T {
    busy = true;
    try {
      return work();
    } finally {
      busy = false;
    }
  }

  function commit(command: string, args: unknown): readonly string[] | null {
    const outcome = within(() => editor.run(command, args));
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
    return placeBy(here, pending.dir, facingNow(editor, get()), Number(pending.typed), pending.turnDeg);
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
    const there = tailOfKey(key);
    if (there) return put({ phase: 'route', tail: there });
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

  /** Takes the run to a tail that is drawn, by what legs that needs. A way with no length yet is gone first. */
  function endAtTail(tail: Pick<FreeTail, 'point' | 'connection'> | undefined): boolean {
    const { pending, service } = get();
    const first = pending && pending.typed === '' ? pending.dir : null;
    if (!tail || service === null || (first === null && !closePending())) return false;
    const base = baseOf(editor, get());
    if (!base) return false;
    const from =
      base.is === 'node'
        ? { at: 'node', node: base.node }
        : { at: 'connection', point: base.point, connection: base.connection };
    const { tube, joining, turns } = editor.store.getState().inHand;
    const { run } = get();
    const way = { from, run, facing: facingNow(editor, get()), first };
    const made = commit('run.reach', { service, tube, joining, turns, ...way, ...tail });
    if (!made) return false;
    if (run === null) put({ run: made[0] ?? null });
    put({ pending: null });
    const end = endPoint();
    return end && wantsClass(end) ? put({ phase: 'class' }) : done();
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

  /** The last told step goes: by undo where it was told here, else by deleting what it made. */
  function takeBack(): boolean {
    if (get().pending) return put({ pending: null });
    const last = told()?.steps.at(-1);
    const point = endPoint();
    if (mine > 0) {
      mine--;
      return within(() => editor.undo()).ok;
    }
    if (point) return within(() => editor.run('point.delete', { point: point.id })).ok;
    return last ? within(() => editor.run('leg.delete', { leg: last.leg })).ok : false;
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

  return {
    put,
    plan,
    told,
    endPoint,
    commit,
    layTo,
    closePending,
    start,
    endAt,
    endAtTail,
    tellClass,
    done,
    branch,
    takeBack,
    show,
    busy: () => busy,
    /** Steps taken from now on are somebody else's to undo. */
    forgetSteps: () => {
      mine = 0;
    },
  };
}

export type Telling = ReturnType<typeof createTelling>;
