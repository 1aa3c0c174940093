import { useEditor, useEditorState } from '../../app/use-session.ts';

export interface Change {
  /** Nothing may be changed: newer file, or open in another tab. */
  readonly disabled: boolean;
  /** Runs a command; false where it was refused (the reason is said by the page). */
  readonly run: (command: string, args: unknown) => boolean;
}

export function useChange(): Change {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const run = (command: string, args: unknown): boolean => editor.run(command, args).ok;
  return { disabled, run };
}
