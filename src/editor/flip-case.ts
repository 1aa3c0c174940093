import type { Editor } from './editor-api.ts';

/** From before the work to after it and back, staying with the option that was looked at last; the first where there was none. */
export function flipCase(editor: Editor): void {
  const { chosen, plan } = editor.store.getState();
  if (chosen.when === 'after') {
    editor.setCase({ option: chosen.option, when: 'before' });
    return;
  }
  const last = chosen.option !== null && plan.options[chosen.option] ? chosen.option : null;
  const option = last ?? Object.keys(plan.options)[0] ?? null;
  if (option !== null) editor.setCase({ option, when: 'after' });
}
