import type { Context } from 'konva/lib/Context';
import { useCallback } from 'react';
import { Shape } from 'react-konva/lib/ReactKonvaCore';
import type { Item } from '../../drawing/display-list.ts';
import { styleOf } from '../../drawing/look/style-of.ts';
import type { Frame } from '../../drawing/paint/frame.ts';
import { paintItems } from '../../drawing/paint/paint-canvas.ts';
import type { Shown } from '../look/theme.ts';

/** Anything that is painted: a fragment, or a part of a display list. */
export interface Part {
  readonly items: readonly Item[];
}

interface Props {
  readonly parts: readonly Part[];
  readonly frame: Frame;
  readonly theme: Shown;
}

/** One painter's group as one Konva shape: it is drawn again only when one of its props is another object. */
export function PaintedGroup({ parts, frame, theme }: Props) {
  const draw = useCallback(
    (context: Context) => {
      const look = styleOf(theme);
      for (const part of parts) paintItems(context._context, part.items, frame, look);
    },
    [parts, frame, theme],
  );
  return <Shape sceneFunc={draw} listening={false} perfectDrawEnabled={false} />;
}
