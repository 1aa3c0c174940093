import type { PointerInput } from '../editor-api.ts';

/** A fingertip or a thumb laid flat is narrower than this on the glass; the ball of a hand is not. px, the longer side. */
const WIDEST_PX = { bare: 110, gloves: 150 } as const;
/** A hand that holds the tablet reaches over its rim by so much, px; no finger aims there. */
const RIM_PX = 6;
/** A hand comes down with the pen it holds: a touch this soon after the pen was felt is that hand, ms. */
const WITH_PEN_MS = 300;

/** Too wide to be a finger. A touch may start as a fingertip and be laid down later, so every event of it is asked. */
export const isPalm = (e: PointerInput, gloves: boolean): boolean =>
  e.pointerType === 'touch' && (e.contactPx ?? 0) > (gloves ? WIDEST_PX.gloves : WIDEST_PX.bare);

/** Is a touch that goes down only a hand that rests on the glass or holds it? */
export const restsOnGlass = (e: PointerInput, gloves: boolean, penAt: number): boolean =>
  e.pointerType === 'touch' &&
  (isPalm(e, gloves) || (e.rimPx ?? Number.POSITIVE_INFINITY) < RIM_PX || e.time - penAt < WITH_PEN_MS);
