import type { Camera, EditorState, InHand, Selected } from '../../editor/editor-api.ts';
import { storeyOf } from '../../editor/panes.ts';
import type { Case } from '../../plan/plan.ts';
import type { ScreenState } from '../app/screen.ts';

/** What of the page is open. */
export type KeptPage = Pick<
  ScreenState,
  'chapter' | 'folded' | 'sheetStop' | 'finding' | 'beside' | 'besideUp' | 'planShare'
>;

/** Where somebody was in a job: what was looked at and what was in hand. It belongs to the device, never to the file. */
export interface KeptPlace {
  readonly form: 1;
  /** When it was left, ms. */
  readonly at: number;
  readonly chosen: Case;
  readonly storey: string;
  readonly camera: Camera;
  readonly face: { readonly wall: string; readonly side: 'left' | 'right'; readonly camera: Camera } | null;
  /** While a wall is folded up: how the plan was looked at before. */
  readonly flat: Camera | null;
  readonly active: 'plan' | 'face';
  readonly tool: string;
  readonly inHand: InHand;
  readonly selection: readonly Selected[];
  readonly page: KeptPage;
}

const PREFIX = 'kickset.place.';
const FORM = 1;
/** Jobs whose place is remembered; the one left longest ago is forgotten first. */
const MOST_JOBS = 40;
/** More chosen things than this are chosen anew. */
const MOST_CHOSEN = 200;

export function placeOf(state: EditorState, page: ScreenState, at: number): KeptPlace {
  const { panes, chosen, tool, inHand, selection } = state;
  const view = panes.face?.view;
  const { chapter, folded, sheetStop, finding, beside, besideUp, planShare } = page;
  return {
    form: FORM,
    at,
    chosen,
    storey: storeyOf(panes),
    camera: panes.plan.camera,
    face: panes.face && view?.kind === 'face' ? { wall: view.wall, side: view.side, camera: panes.face.camera } : null,
    flat: panes.flat,
    active: panes.active,
    tool,
    inHand,
    selection: selection.length > MOST_CHOSEN ? [] : selection,
    page: { chapter, folded, sheetStop, finding, beside, besideUp, planShare },
  };
}

/** Null where nothing is remembered of the job, or in a form that is no longer read. */
export function readPlace(job: string): KeptPlace | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(PREFIX + job) ?? 'null');
    return typeof kept === 'object' && kept !== null && 'form' in kept && kept.form === FORM
      ? (kept as KeptPlace)
      : null;
  } catch {
    return null;
  }
}

/** When a job was left, of its remembered text; 0 where that cannot be read. */
function leftAt(text: string | null): number {
  const found = /"at":(\d+)/.exec(text ?? '');
  return Number(found?.[1] ?? 0);
}

function forgetOldest(): void {
  const keys = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX));
  if (keys.length <= MOST_JOBS) return;
  const byAge = keys.map((key) => ({ key, at: leftAt(localStorage.getItem(key)) })).sort((a, b) => b.at - a.at);
  for (const { key } of byAge.slice(MOST_JOBS)) localStorage.removeItem(key);
}

export function writePlace(job: string, place: KeptPlace): void {
  try {
    localStorage.setItem(PREFIX + job, JSON.stringify(place));
    forgetOldest();
  } catch {
    // The job itself is kept elsewhere; only the way back to the place is lost.
  }
}
