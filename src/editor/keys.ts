import type { Editor, KeyInput } from './editor-api.ts';
import { wayInHouse, workPlane } from './input/work-plane.ts';
import { toolsInOrder } from './tools/tools.ts';

/** A key and what it does, as data: the bench prints it and a settings page can change it. */
export interface KeyBinding {
  readonly key: string;
  readonly ctrl?: boolean;
  readonly shift?: boolean;
  readonly label: string;
  readonly does:
    | { readonly tool: string }
    | { readonly action: 'undo' | 'redo' | 'cancel' | 'fit' | 'nearer' | 'further' | 'copy' };
}

/** Held with ctrl (or the command key, which the view passes on as ctrl) or not a letter at all. */
const GENERAL: readonly KeyBinding[] = [
  { key: 'z', ctrl: true, label: 'undo', does: { action: 'undo' } },
  { key: 'z', ctrl: true, shift: true, label: 'redo', does: { action: 'redo' } },
  { key: 'y', ctrl: true, label: 'redo', does: { action: 'redo' } },
  { key: 'd', ctrl: true, label: 'copy', does: { action: 'copy' } },
  { key: 'Escape', label: 'give up', does: { action: 'cancel' } },
  { key: 'Home', label: 'show all', does: { action: 'fit' } },
  { key: '+', label: 'nearer', does: { action: 'nearer' } },
  { key: '=', label: 'nearer', does: { action: 'nearer' } },
  { key: '-', label: 'further', does: { action: 'further' } },
];

export const defaultKeys = (): readonly KeyBinding[] => [
  ...GENERAL,
  ...toolsInOrder().map((tool) => ({ key: tool.key, label: tool.label, does: { tool: tool.id } })),
];

const NEARER = 1.25;

/** The binding of a key. With the caret in a field only ctrl keys count, so that letters can be typed. */
export function bindingOf(keys: readonly KeyBinding[], input: KeyInput): KeyBinding | undefined {
  if (input.alt || (input.typing && !input.ctrl)) return undefined;
  const letter = /^[a-z]$/i.test(input.key);
  return keys.find(
    (k) =>
      k.key === (letter ? input.key.toLowerCase() : input.key) &&
      (k.ctrl ?? false) === input.ctrl &&
      (!letter || (k.shift ?? false) === input.shift),
  );
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

/** Does what the key is bound to; `zoom` is the view's own business and is passed in. */
export function pressKey(
  editor: Editor,
  keys: readonly KeyBinding[],
  input: KeyInput,
  zoom: (by: number) => void,
): boolean {
  const does = bindingOf(keys, input)?.does;
  if (!does) return false;
  if ('tool' in does) editor.setTool(does.tool);
  else if (does.action === 'undo') editor.undo();
  else if (does.action === 'redo') editor.redo();
  else if (does.action === 'cancel') editor.cancel();
  else if (does.action === 'fit') editor.zoomToFit();
  else if (does.action === 'nearer') zoom(NEARER);
  else if (does.action === 'further') zoom(1 / NEARER);
  else copyChosen(editor);
  return true;
}
