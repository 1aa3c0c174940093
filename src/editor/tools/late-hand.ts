import type { Box, Vec } from '../../drawing/display-list.ts';
import type { EditorState, KeyInput, PlacedFigure, Selected } from '../editor-api.ts';
import type { Asked } from '../figures/ask-figure.ts';
import type { Hit } from '../hit/hit-test.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';

/** What the hand that chooses does besides choosing and dragging one thing. */
export interface LateHand {
  figureAt(ctx: ToolContext<unknown>, event: ToolEvent, hits: readonly Hit[]): PlacedFigure | undefined;
  askFigure(ctx: ToolContext<unknown>, figure: PlacedFigure): Asked | null;
  figureKey(ctx: ToolContext<unknown>, asked: Asked, key: KeyInput): Asked | null | undefined;
  boxBetween(p: Vec, q: Vec): Box;
  boxed(state: EditorState, box: Box): Selected[];
}

/** Null until the rest of the editor has been fetched: the first line is drawn without it. */
export const lateHand: { is: LateHand | null } = { is: null };
