import type { Editor } from '../../editor/editor-api.ts';
import type { Finding } from '../../report/finding.ts';
import { coveredPx } from '../app/covered.ts';
import { showIds } from './show-ids.ts';

/** A clash is looked at from no further than this: two pipes and what is beside them. */
const NEAR_MM_PER_PX = 4;

/** The drawing goes to the place of a finding and lights up what it is about. What a sheet covers does not count. */
export function goToFinding(editor: Editor, finding: Finding): void {
  showIds(editor, finding.legs.length > 0 ? finding.legs : finding.ids);
  const at = finding.at;
  if (at === null) return;
  editor.showPlace({ x: at.x, y: at.y, z: at.z }, at.storey);
  const { camera } = editor.store.getState().panes.plan;
  const mmPerPx = at.ring ? Math.min(camera.mmPerPx, NEAR_MM_PER_PX) : camera.mmPerPx;
  const [x, y] = camera.centre;
  editor.setCamera('plan', { centre: [x, y - (coveredPx() / 2) * mmPerPx], mmPerPx });
}
