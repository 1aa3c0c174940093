import type { Editor, KeyInput } from './editor-api.ts';
import { flipCase } from './flip-case.ts';
import { wayInHouse, workPlane } from './input/work-plane.ts';
import { toolsInOrder } from './tools/tools.ts';

/** What the page itself does with a key: it is bound with the others, so that no two acts share one. */
export type PageAct = 'find' | 'things' | 'height' | 'where' | 'part' | 'help' | 'print';

export type KeyGroup = 'change' | 'look' | 'page' | 'tool';

/** A key by itself or held with others. Of a sign that is no letter only the sign counts, however it is typed. */
export interface Chord {
  readonly key: string;
  readonly ctrl?: boolean;
  readonly shift?: boolean;
}

/** A key and what it does, as data: the bench prints it, the help lists it, and it can be changed by its id. */
export interface KeyBinding extends Chord {
  readonly id: string;
  readonly label: string;
  readonly group: KeyGroup;
  readonly does:
    | { readonly tool: string }
    | {
        readonly action:
          | 'undo'
          | 'redo'
          | 'cancel'
          | 'fit'
          | 'nearer'
          | 'further'
          | 'copy'
          | 'flip'
          | 'shorter step'
          | 'longer step';
      }
    | { readonly page: PageAct };
}

/** Held with ctrl (or the command key, which the view passes on as ctrl) or not a letter at all. */
const GENERAL: readonly KeyBinding[] = [
  { id: 'undo', key: 'z', ctrl: true, label: 'undo', group: 'change', does: { action: 'undo' } },
  { id: 'redo', key: 'z', ctrl: true, shift: true, label: 'redo', group: 'change', does: { action: 'redo' } },
  { id: 'redo.2', key: 'y', ctrl: true, label: 'redo', group: 'change', does: { action: 'redo' } },
  { id: 'copy', key: 'd', ctrl: true, label: 'copy', group: 'change', does: { action: 'copy' } },
  { id: 'cancel', key: 'Escape', label: 'give up', group: 'change', does: { action: 'cancel' } },
  { id: 'fit', key: 'Home', label: 'show all', group: 'look', does: { action: 'fit' } },
  { id: 'nearer', key: '+', label: 'nearer', group: 'look', does: { action: 'nearer' } },
  { id: 'nearer.2', key: '=', label: 'nearer', group: 'look', does: { action: 'nearer' } },
  { id: 'further', key: '-', label: 'further', group: 'look', does: { action: 'further' } },
  { id: 'flip', key: 'b', label: 'before and after', group: 'look', does: { action: 'flip' } },
  { id: 'shorter', key: '[', label: 'shorter step', group: 'look', does: { action: 'shorter step' } },
  { id: 'longer', key: ']', label: 'longer step', group: 'look', does: { action: 'longer step' } },
  { id: 'find', key: 'f', ctrl: true, label: 'find by name', group: 'page', does: { page: 'find' } },
  { id: 'find.2', key: '/', label: 'find by name', group: 'page', does: { page: 'find' } },
  { id: 'things', key: 'l', label: 'list of things', group: 'page', does: { page: 'things' } },
  { id: 'height', key: 'z', label: 'type the work height', group: 'page', does: { page: 'height' } },
  { id: 'where', key: '.', label: 'say where the cross is', group: 'page', does: { page: 'where' } },
  { id: 'part', key: 'F6', label: 'next part of the page', group: 'page', does: { page: 'part' } },
  { id: 'help', key: '?', label: 'help', group: 'page', does: { page: 'help' } },
  { id: 'print', key: 'p', ctrl: true, label: 'print', group: 'page', does: { page: 'print' } },
];

export const defaultKeys = (): readonly KeyBinding[] => [
  ...GENERAL,
  ...toolsInOrder().map(
    (tool): KeyBinding => ({
      id: `tool:${tool.id}`,
      key: tool.key,
      label: tool.label,
      group: 'tool',
      does: { tool: tool.id },
    }),
  ),
];

const NEARER = 1.25;
const isLetter = (key: string): boolean => /^[a-z]$/i.test(key);

export const sameChord = (a: Chord, b: Chord): boolean =>
  a.key === b.key &&
  (a.ctrl ?? false) === (b.ctrl ?? false) &&
  (!isLetter(a.key) || (a.shift ?? false) === (b.shift ?? false));

/** What was pressed, as it is bound: a letter in small, whatever the shift key made of it. */
export function chordOf({ key, ctrl, shift }: Pick<KeyInput, 'key' | 'ctrl' | 'shift'>): Chord {
  return isLetter(key) ? { key: key.toLowerCase(), ctrl, shift } : { key, ctrl };
}

/** One letter, figure or sign with nothing held: typed by a slip, or heard by a program one speaks to. */
export const isBareSign = ({ key, ctrl }: Chord): boolean => key.length === 1 && ctrl !== true;

/** The binding of a key. With the caret in a field only ctrl keys count, so that letters can be typed. */
export function bindingOf(keys: readonly KeyBinding[], input: KeyInput): KeyBinding | undefined {
  if (input.alt || (input.typing && !input.ctrl)) return undefined;
  const chord = chordOf(input);
  return keys.find((k) => sameChord(k, chord));
}

/** A copy is laid this far aside, so that it is seen to be one, and is chosen to be dragged on. */
const ASIDE_MM = 200;

function copyChosen(editor: Editor): void {
  const { selection, plan, panes } = editor.store.getState();
  const things = selection.filter((s) => ['walls', 'points', 'runs', 'voids'].includes(s.map));
  const plane = workPlane(plan, panes.plan.view);
  if (things.length === 0 || !plane) return;
  const { x, y } = wayInHouse(plane, [ASIDE_MM, -ASIDE_MM]);
  const outcome = editor.run('things.duplicate', { things, by: { x, y } });
  if (outcome.ok)
    editor.select(things.flatMap((t, i) => (outcome.made[i] ? [{ map: t.map, id: outcome.made[i] }] : [])));
}

/** What of a key is not the editor's own business. */
export interface KeyPorts {
  readonly zoom: (by: number) => void;
  /** The next step of the cross up or down its ladder. */
  readonly step: (by: 1 | -1) => void;
}

/** Does what the key is bound to; false where it is bound to nothing, or to an act of the page. */
export function pressKey(editor: Editor, keys: readonly KeyBinding[], input: KeyInput, ports: KeyPorts): boolean {
  const does = bindingOf(keys, input)?.does;
  if (!does || 'page' in does) return false;
  if ('tool' in does) editor.setTool(does.tool);
  else if (does.action === 'undo') editor.undo();
  else if (does.action === 'redo') editor.redo();
  else if (does.action === 'cancel') editor.cancel();
  else if (does.action === 'fit') editor.zoomToFit();
  else if (does.action === 'nearer') ports.zoom(NEARER);
  else if (does.action === 'further') ports.zoom(1 / NEARER);
  else if (does.action === 'flip') flipCase(editor);
  else if (does.action === 'shorter step') ports.step(-1);
  else if (does.action === 'longer step') ports.step(1);
  else copyChosen(editor);
  return true;
}
