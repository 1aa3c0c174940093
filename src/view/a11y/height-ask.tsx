import { useCallback, useEffect } from 'react';
import { resolveHeight } from '../../geometry/heights.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import HeightBox from '../ribbon/height-box.tsx';
import { sayWorkHeight, storeyHeights } from '../ribbon/levels.ts';
import { useRibbon } from '../ribbon/use-ribbon.ts';
import { asked } from './asked.ts';

/** Only the levels of the ribbon are wanted here, which do not hang on its scale. */
const MM_OF_SECTION = 1000;
const MM_PER_PAPER_MM = 50;
/** Beside the heights, under the strip. */
const PLACE = { left: 124, top: 72 };
const NARROW = { left: 54, top: 56 };
const NARROW_PX = 700;

/** The work height typed by key, from wherever the focus is; it goes back to the drawing. */
export default function HeightAsk() {
  const editor = useEditor();
  const { levels } = useRibbon(MM_OF_SECTION, MM_PER_PAPER_MM);
  const plan = useEditorState((s) => s.plan);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const now = useEditorState((s) => s.inHand.height);
  const pane = useEditorState((s) => s.panes.active);
  const heights = storeyHeights(plan, storey);
  const close = useCallback(() => {
    asked.setState({ height: false });
    document.querySelector<HTMLElement>(`[data-pane="${pane}"]`)?.focus({ preventScroll: true });
  }, [pane]);
  useEffect(() => {
    const { typed } = asked.getState();
    asked.setState({ typed: '' });
    const field = document.querySelector<HTMLInputElement>('.height-box input');
    if (typed === '' || !field) return;
    // As if it had been typed here: over what is selected, with everything that follows from it.
    field.focus();
    field.select();
    document.execCommand('insertText', false, typed);
  }, []);
  if (!heights) return null;
  const z = resolveHeight(plan, now)?.z ?? heights.floor;
  return (
    <HeightBox
      at={innerWidth < NARROW_PX ? NARROW : PLACE}
      says={sayWorkHeight(plan, levels, now)}
      offFloorMm={z - heights.floor}
      floor={heights.floor}
      levels={levels}
      now={now}
      onType={(mm) => editor.setInHand({ height: { from: 'floor', of: storey, mm } })}
      onTake={(height) => {
        editor.setInHand({ height });
        close();
      }}
      onClose={close}
    />
  );
}
