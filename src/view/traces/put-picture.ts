import type { View } from '../../drawing/display-list.ts';
import type { Editor, Pane } from '../../editor/editor-api.ts';
import { keepBlob } from '../../files/store/blobs.ts';
import { coveredPx } from '../app/covered.ts';
import { lowerSheet } from '../app/screen.ts';
import { storage } from '../app/storage.ts';
import { askForPicture, takePicture } from './take-picture.ts';
import { traceKey } from './trace-shapes.tsx';

/** How much of the pane a fresh picture takes, and how pale it is. */
const SHARE = 0.8;
const OPACITY = 0.5;

/** Where a fresh picture lies: in the middle of what is seen of the drawing, until it is scaled. */
function placeFor(pane: Pane, pixels: { readonly width: number; readonly height: number }) {
  const { camera, width, height, view } = pane;
  const covered = coveredPx();
  const high = (height - covered) * camera.mmPerPx;
  const perPixel = SHARE * Math.min((width * camera.mmPerPx) / pixels.width, high / pixels.height);
  const turn = view.kind === 'plan' ? ((view.turnDeg ?? 0) * Math.PI) / 180 : 0;
  const [cx, middleY] = camera.centre;
  const cy = middleY + (covered / 2) * camera.mmPerPx;
  const middle = {
    x: cx * Math.cos(turn) + cy * Math.sin(turn),
    y: cy * Math.cos(turn) - cx * Math.sin(turn),
  };
  return {
    x: middle.x - (pixels.width * perPixel) / 2,
    y: middle.y - (pixels.height * perPixel) / 2,
    mmPerPixel: perPixel,
    angleDeg: 0,
    opacity: OPACITY,
    locked: false,
  };
}

const paneOf = (editor: Editor, view: View): Pane => {
  const { panes } = editor.store.getState();
  return view.kind === 'face' && panes.face ? panes.face : panes.plan;
};

/** Lays a picture under a view; where none is given one is asked for. Gives a sentence where that was not possible; null when it lies there. */
export async function putPicture(editor: Editor, view: View, given?: File): Promise<string | null> {
  const file = given ?? (await askForPicture());
  if (!file) return null;
  try {
    const taken = await takePicture(file);
    const hash = await keepBlob(await storage(), taken.bytes, taken.mediaType);
    lowerSheet();
    const place = placeFor(paneOf(editor, view), taken.pixels);
    const { name, mediaType, pixels } = taken;
    const outcome = editor.run('blob.set', { hash, kind: 'trace', name, mediaType, on: traceKey(view), place, pixels });
    if (!outcome.ok) return outcome.why;
    const blobRef = outcome.made[0];
    if (blobRef !== undefined) editor.setInHand({ trace: { blobRef, doing: 'scale', taps: [] } });
    editor.setTool('trace');
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
