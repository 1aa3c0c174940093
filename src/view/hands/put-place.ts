import { itemKinds } from '../../catalogue/items.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';
import { tubeKinds } from '../../catalogue/tubes.ts';
import type { Camera, Editor, InHand, Selected } from '../../editor/editor-api.ts';
import { toolsInOrder } from '../../editor/tools/tools.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import { screen } from '../app/screen.ts';
import type { PaneName } from '../stage/draw-counts.ts';
import { keepLook } from './kept-look.ts';
import { type KeptPlace, readPlace } from './kept-place.ts';

const isCamera = (c: Camera | null | undefined): c is Camera =>
  Number.isFinite(c?.centre?.[0]) &&
  Number.isFinite(c?.centre?.[1]) &&
  Number.isFinite(c?.mmPerPx) &&
  (c?.mmPerPx ?? 0) > 0;

const sameKind = (a: unknown, b: unknown): boolean => a === null || b === null || typeof a === typeof b;

/** What was in hand, as far as it is still there. Whatever is not stays as it is now. */
export function livingInHand(plan: Plan, now: InHand, was: Partial<InHand>): InHand {
  const taken = Object.fromEntries(
    Object.entries(now).map(([key, value]) => {
      const old: unknown = was[key as keyof InHand];
      return [key, old !== undefined && sameKind(value, old) ? old : value];
    }),
  ) as unknown as InHand;
  const tubeStands = tubeKinds.has(taken.tube?.kind ?? '') && services.has(taken.service);
  return {
    ...taken,
    ...(tubeStands ? {} : { service: now.service, tube: now.tube, joining: now.joining }),
    height: taken.height && resolveHeight(plan, taken.height) ? taken.height : now.height,
    goesOn: taken.goesOn !== null && plan.nodes[taken.goesOn] ? taken.goesOn : null,
    pointKind: pointKinds.has(taken.pointKind) ? taken.pointKind : now.pointKind,
    itemKind: itemKinds.has(taken.itemKind) ? taken.itemKind : now.itemKind,
    photo: taken.photo !== null && plan.blobRefs[taken.photo] ? taken.photo : null,
    joist: taken.joist && plan.voids[taken.joist.void] ? taken.joist : null,
    trace: taken.trace && plan.blobRefs[taken.trace.blobRef] ? taken.trace : null,
  };
}

/** Of what was chosen: what is still there. */
export const livingChoice = (plan: Plan, was: readonly Selected[]): readonly Selected[] =>
  was.filter(({ map, id }) => plan[map] !== undefined && id in plan[map]);

function putPanes(editor: Editor, place: KeptPlace): void {
  const { plan } = editor.store.getState();
  if (!plan.storeys[place.storey] || !isCamera(place.camera)) return;
  editor.setStorey(place.storey);
  const looks = new Set<PaneName>(['plan']);
  const { face, flat } = place;
  if (face && plan.walls[face.wall] && isCamera(face.camera)) {
    if (isCamera(flat)) editor.setCamera('plan', flat);
    editor.foldUp({ wall: face.wall, side: face.side });
    editor.setCamera('plan', place.camera);
    editor.setCamera('face', face.camera);
    looks.add('face');
  } else editor.setCamera('plan', isCamera(flat) ? flat : place.camera);
  editor.setActivePane(place.active);
  keepLook(editor, looks);
}

/**
 * Puts a job that has just been opened back to where it was left. What is gone since is left out; a place that makes no
 * sense at all leaves the job as it opens.
 */
export function putPlace(editor: Editor, place: KeptPlace): void {
  try {
    put(editor, place);
  } catch {
    // Written by another edition of this page: it opens as if it had not been left.
  }
}

/** Puts a stored job back to where it was left on this device, where that is known. */
export function putBack(editor: Editor, job: string): void {
  const place = readPlace(job);
  if (place) putPlace(editor, place);
}

function put(editor: Editor, place: KeptPlace): void {
  const { plan } = editor.store.getState();
  const { chosen, tool, page } = place;
  if (chosen.when === 'before' || (chosen.option !== null && plan.options[chosen.option])) editor.setCase(chosen);
  putPanes(editor, place);
  if (toolsInOrder().some((t) => t.id === tool)) editor.setTool(tool);
  editor.setInHand(livingInHand(plan, editor.store.getState().inHand, place.inHand));
  editor.select(livingChoice(plan, place.selection));
  const { beside } = page;
  const gone = beside?.run !== undefined && beside.run !== null && !plan.runs[beside.run];
  screen.setState(gone ? { ...page, beside: null, besideUp: false } : page);
}
