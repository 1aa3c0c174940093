import { createEditor } from '../../src/editor/create-editor.ts';
import type { Editor } from '../../src/editor/editor-api.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { assumptions, idsFor } from './hand.ts';

/** Invented figures, so that no test leans on a table. */
const usual = {
  ...assumptions,
  joists: {
    centresMm: 410,
    breadthMm: 50,
    offWallMm: 60,
    underside: { mm: 14, lo: 9, hi: 29 },
    deck: { mm: 21, lo: 17, hi: 26 },
  },
  voidChoices: {
    centresMm: [400, 450, 600],
    depthMm: [150, 175, 200, 225],
    boxDepthMm: [100, 150, 200],
    chaseDepthMm: [25, 35, 50],
  },
};

/** An editor that asks of joists and depths. */
export function asking(plan: Plan): Editor {
  return createEditor({ plan, ids: idsFor(plan), assumptions: usual });
}
