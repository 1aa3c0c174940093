import type { Editor } from '../../editor/editor-api.ts';
import type { Thing } from '../../plan/records/statements.ts';
import { deviceIds } from '../app/ids.ts';
import { lowerSheet, setOver } from '../app/screen.ts';
import { editThing, shelve } from './shelf.ts';

/** Takes a thing in hand: the next tap places one. */
export function takeThing(editor: Editor, thing: Thing): void {
  editor.setInHand({ pointKind: thing.kind, thing });
  editor.setTool('point');
  setOver(null);
  lowerSheet();
}

/** The same figures under an id and a name of its own. */
export async function copyThing(thing: Thing, name: string): Promise<void> {
  const copy = { ...structuredClone(thing), id: deviceIds.next('thing'), name };
  await shelve(copy, `copy ${thing.name}`);
  editThing(copy.id);
}
