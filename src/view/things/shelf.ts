import { createStore } from 'zustand/vanilla';
import { dropThing, keepThing, myThings } from '../../files/store/my-things.ts';
import { sayStoreTrouble } from '../../files/store/store-trouble.ts';
import type { Thing } from '../../plan/records/statements.ts';
import { say } from '../app/desk.ts';
import { storage } from '../app/storage.ts';

interface ShelfState {
  /** The user's own things by name; null until they were looked up. */
  readonly things: readonly Thing[] | null;
  /** Steps that can be taken back, the last one last. They hold until the page is closed. */
  readonly undo: readonly { readonly label: string; readonly before: readonly Thing[] }[];
  /** The thing whose sheet stands open. */
  readonly editing: string | null;
}

/** Things kept beside the jobs: never part of a plan's history, so they have steps of their own. */
export const shelf = createStore<ShelfState>(() => ({ things: null, undo: [], editing: null }));

const MOST_STEPS = 50;
let last: Promise<unknown> = Promise.resolve();

/** One after the other: two writes at once would lose one of them. What stands in the way is said. */
function inTurn(work: () => Promise<unknown>): Promise<void> {
  const done = last.then(work).then(look, (error: unknown) => say(sayStoreTrouble(error)));
  last = done;
  return done;
}

async function look(): Promise<void> {
  shelf.setState({ things: await myThings(await storage()) });
}

export const loadShelf = (): Promise<void> => inTurn(async () => undefined);

function step(label: string): void {
  const { things, undo } = shelf.getState();
  shelf.setState({ undo: [...undo, { label, before: things ?? [] }].slice(-MOST_STEPS) });
}

const written = (next: (things: readonly Thing[]) => readonly Thing[]): void =>
  shelf.setState(({ things }) => ({ things: next(things ?? []) }));

/** Keeps a thing, over one of the same id. */
export function shelve(thing: Thing, label: string): Promise<void> {
  step(label);
  written((all) =>
    all.some((t) => t.id === thing.id) ? all.map((t) => (t.id === thing.id ? thing : t)) : [...all, thing],
  );
  return inTurn(async () => keepThing(await storage(), thing));
}

/** Takes a thing off the shelf. Jobs that carry it keep theirs. */
export function unshelve(thing: Thing): Promise<void> {
  step(`delete ${thing.name}`);
  written((all) => all.filter((t) => t.id !== thing.id));
  return inTurn(async () => dropThing(await storage(), thing.id));
}

/** Takes the last step on the shelf back. */
export function undoShelf(): Promise<void> {
  const { undo, things } = shelf.getState();
  const back = undo.at(-1);
  if (!back) return Promise.resolve();
  const now = things ?? [];
  const { before } = back;
  shelf.setState({ undo: undo.slice(0, -1), things: before });
  return inTurn(async () => {
    const port = await storage();
    for (const t of now) if (!before.some((b) => b.id === t.id)) await dropThing(port, t.id);
    for (const t of before) if (!now.includes(t)) await keepThing(port, t);
  });
}

export const editThing = (editing: string | null): void => shelf.setState({ editing });
