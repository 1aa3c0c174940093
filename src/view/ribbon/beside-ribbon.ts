const GAP_PX = 8;

/** Beside the ribbon, on the side of the drawing, at a height of the page. */
export function besideRibbon(part: HTMLElement | null, top: number): { left?: number; right?: number; top: number } {
  const ribbon = part?.closest('.ribbon')?.getBoundingClientRect();
  const right = ribbon !== undefined && ribbon.left > innerWidth / 2;
  const width = ribbon?.width ?? 0;
  // On a phone a ribbon that is pulled out leaves no room beside it: what is said stands over it.
  if (width > innerWidth - 120) return { left: GAP_PX, top };
  const side = right ? { right: innerWidth - (ribbon?.left ?? 0) + GAP_PX } : { left: (ribbon?.right ?? 0) + GAP_PX };
  return { ...side, top };
}
