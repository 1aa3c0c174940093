import { useMemo, useRef } from 'react';
import { useEditorState } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { Painted } from '../look/painted.tsx';
import { look } from '../look/tokens.ts';
import { storeyHeights } from '../ribbon/levels.ts';
import { fitScale } from '../ribbon/ribbon-scale.ts';
import { useRibbon } from '../ribbon/use-ribbon.ts';

const LEFT_PX = 34;
const MARGIN_PX = 6;

/** The heights of the told run beside its sketch. */
export function WordsHeights({ run }: { readonly run: string | null }) {
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const plan = useEditorState((s) => s.plan);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const heights = useMemo(() => storeyHeights(plan, storey), [plan, storey]);
  const scale = useMemo(
    () => fitScale((heights?.floor ?? 0) - 150, (heights?.ceiling ?? 1) + 150, Math.max(height, 1), MARGIN_PX),
    [heights, height],
  );
  const { list } = useRibbon((width - LEFT_PX) / scale.perMm, look.screen.pxPerMm / scale.perMm, run);
  const frame = useMemo(
    () => ({
      perMm: scale.perMm,
      perPaperMm: look.screen.pxPerMm,
      origin: [LEFT_PX, scale.topZ * scale.perMm] as const,
      turnDeg: 0,
      leastPen: look.screen.leastPenPx,
      medium: 'screen' as const,
    }),
    [scale],
  );
  return (
    <div className="words-heights" ref={box}>
      {width > 0 && <Painted parts={list.items} frame={frame} width={width} height={height} />}
    </div>
  );
}
