import type { DisplayList } from '../../drawing/display-list.ts';
import type { PlacedFigure } from '../../editor/editor-api.ts';
import { look } from '../look/tokens.ts';

/** The figures of a drawing that can be told anew, with their text in px as the screen shows it. */
export function figuresOf(list: DisplayList): PlacedFigure[] {
  const px = look.screen.pxPerMm;
  return list.items.flatMap(({ figure }) => {
    if (!figure) return [];
    const { measures, mm, a, b, at, offsetMm, halfMm } = figure;
    return [
      {
        measures,
        mm,
        a,
        b,
        at,
        offsetPx: [offsetMm[0] * px, -offsetMm[1] * px] as const,
        halfPx: [halfMm[0] * px, halfMm[1] * px] as const,
      },
    ];
  });
}
