/** How near counts as touching, px: the finest a hand can aim with each kind of pointer. */
export const TOLERANCE_PX = { mouse: 8, pen: 12, touch: 22, glove: 30 } as const;

/** A press that moves less than this is a tap. */
export const SLOP_PX = { mouse: 4, pen: 6, touch: 10, glove: 14 } as const;

export type PointerKind = keyof typeof TOLERANCE_PX;

/** Gloves are a setting of the view: they make every touch coarser. */
export const pointerKind = (type: 'mouse' | 'pen' | 'touch', gloves: boolean): PointerKind =>
  type === 'touch' && gloves ? 'glove' : type;
