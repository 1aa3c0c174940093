import { inset, type Layout, type Rect } from './paper.ts';

const LADDER_MM = 22;
const COLUMN_MM = 56;
/** The column lies under the drawing on upright sheets. */
const STRIP_MM = 60;
const PAD_MM = 3;

/** The parts of a sheet with a drawing: heights at the filing edge, the drawing, what is said beside it. */
export interface Spaces {
  readonly ladder: Rect | null;
  readonly drawing: Rect;
  readonly column: Rect;
  /** The column is told side by side, not one under the other. */
  readonly across: boolean;
}

export function spacesOf({ body, beside }: Layout, withLadder: boolean): Spaces {
  const left = withLadder ? LADDER_MM : 0;
  const w = body.w - left - (beside ? COLUMN_MM : 0);
  const h = body.h - (beside ? 0 : STRIP_MM);
  const ladder = withLadder ? { x: body.x, y: body.y, w: LADDER_MM, h } : null;
  const drawing = { x: body.x + left, y: body.y, w, h };
  const column = beside
    ? { x: body.x + body.w - COLUMN_MM, y: body.y, w: COLUMN_MM, h: body.h }
    : { x: body.x, y: body.y + h, w: body.w, h: STRIP_MM };
  return { ladder, drawing, column: inset(column, PAD_MM), across: !beside };
}
