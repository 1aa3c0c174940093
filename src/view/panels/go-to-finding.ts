import type { Editor } from '../../editor/editor-api.ts';
import type { Finding } from '../../report/finding.ts';
import { showIds } from './show-ids.ts';

/** The drawing goes to the place of a finding and lights up what it is about. */
export function goToFinding(editor: Editor, finding: Finding): void {
  showIds(editor, finding.legs.length > 0 ? finding.legs : finding.ids);
  const at = finding.at;
  if (at !== null) editor.showPlace({ x: at.x, y: at.y, z: at.z }, at.storey);
}
