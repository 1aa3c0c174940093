import type { VoidTask } from '../../../../editor/editor-api.ts';
import type { Void } from '../../../../plan/records/building.ts';
import { screen } from '../../../app/screen.ts';
import { useEditor } from '../../../app/use-session.ts';

/** What every part of the form of a void is given. */
export interface VoidPart {
  readonly record: Void;
  readonly disabled: boolean;
  /** Changes fields of the void as one step; false where it was refused. */
  readonly set: (change: Partial<Void>) => boolean;
}

/** Takes the void tool in hand to do something to the chosen void on the drawing; on a phone the sheet goes down for it. */
export function useVoidTask(): (task: VoidTask) => void {
  const editor = useEditor();
  return (voidTask) => {
    screen.setState({ sheetStop: 'low', tray: false });
    editor.setTool('void');
    editor.setInHand({ voidTask, joist: null });
  };
}
