import type { Box, Vec } from '../../drawing/display-list.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { EditorState, KeyInput, PlacedFigure, Selected } from '../editor-api.ts';
import type { Asked } from '../figures/ask-figure.ts';
import type { Hit } from '../hit/hit-test.ts';
import type { Pick } from '../input/pick.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';
import type { Route, RouteFrame } from './route-path.ts';

/** What the hand that chooses does besides choosing and dragging one thing. */
export interface LateHand {
  figureAt(ctx: ToolContext<unknown>, event: ToolEvent, hits: readonly Hit[]): PlacedFigure | undefined;
  askFigure(ctx: ToolContext<unknown>, figure: PlacedFigure): Asked | null;
  figureKey(ctx: ToolContext<unknown>, asked: Asked, key: KeyInput): Asked | null | undefined;
  boxBetween(p: Vec, q: Vec): Box;
  boxed(state: EditorState, box: Box): Selected[];
  /** The way to a pick along what is followed; null where nothing is, or it is not seen from above. `loose`: it begins anywhere. */
  routeAlong(
    ctx: ToolContext<unknown>,
    frame: RouteFrame,
    run: string | null,
    loose: boolean,
    from: Xyz,
    pick: Pick,
  ): Route | null;
}

/** Null until the rest of the editor has been fetched: the first line is drawn without it. */
export const lateHand: { is: LateHand | null } = { is: null };
