import { useMemo, useRef } from 'react';
import { resolveHeight } from '../../geometry/heights.ts';
import { useEditorState } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { HeightTab } from './height-tab.tsx';
import { storeyHeights } from './levels.ts';
import { fitScale, type RibbonScale, scaleFrom } from './ribbon-scale.ts';
import { RibbonSection } from './ribbon-section.tsx';
import { sectionOf } from './unroll.ts';
import './ribbon.css';

const HEAD_PX = 34;

function useStorey(): string {
  return useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
}

/** The run that is unrolled: the chosen one, or the one a chosen leg or stretch belongs to. */
function useChosenRun(): string | null {
  return useEditorState((s) => {
    for (const { map, id } of s.selection) {
      if (map === 'runs') return id;
      if (map === 'legs') return s.plan.legs[id]?.run ?? null;
      if (map === 'stretches') return s.plan.stretches[id]?.run ?? null;
    }
    return null;
  });
}

/** A true upright section of the floor in hand, with the work height on it. */
export function Ribbon() {
  const place = useRef<HTMLDivElement>(null);
  const size = useSize(place);
  const plan = useEditorState((s) => s.plan);
  const chosenCase = useEditorState((s) => s.chosen);
  const storey = useStorey();
  const run = useChosenRun();
  const height = useEditorState((s) => s.inHand.height);
  const face = useEditorState((s) => s.panes.face);
  const heights = useMemo(() => storeyHeights(plan, storey), [plan, storey]);
  const section = useMemo(() => sectionOf(plan, chosenCase, storey, run), [plan, chosenCase, storey, run]);
  const work = useMemo(() => resolveHeight(plan, height)?.z, [plan, height]);
  const scale = useMemo((): RibbonScale | null => {
    if (!heights || size.height === 0) return null;
    if (face)
      return scaleFrom(face.camera.centre[1] + (face.height / 2) * face.camera.mmPerPx, 1 / face.camera.mmPerPx);
    const zs = [heights.floor - heights.buildUpMm, heights.ceiling + heights.buildUpMm];
    for (const c of section.chosen?.corners ?? []) zs.push(c.z);
    for (const b of heights.bands) zs.push(b.bottom, b.top);
    return fitScale(Math.min(...zs), Math.max(...zs), size.height - HEAD_PX, 22);
  }, [heights, size.height, face, section]);
  const shifted = scale && !face ? scaleFrom(scale.topZ + HEAD_PX / scale.perMm, scale.perMm) : scale;
  return (
    <div className="ribbon" ref={place}>
      <h2 className="ribbon-head">Heights</h2>
      {heights && shifted && size.width > 0 && (
        <>
          <RibbonSection
            heights={heights}
            section={section}
            scale={shifted}
            width={size.width}
            height={size.height}
            workZ={work ?? null}
          />
          {work !== undefined && (
            <HeightTab heights={heights} scale={shifted} z={work} storey={storey} height={size.height} />
          )}
        </>
      )}
    </div>
  );
}
