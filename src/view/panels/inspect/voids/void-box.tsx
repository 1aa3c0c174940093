import { boxOnWall, outlineOnWall } from '../../../../drawing/building/box-on-wall.ts';
import { voidHeights } from '../../../../geometry/void-stretches.ts';
import { sayFace } from '../../../a11y/say-face.ts';
import { useEditor, useEditorState } from '../../../app/use-session.ts';
import { Icon } from '../../../look/icon.tsx';
import { foldUp } from '../../../stage/fold-up.ts';
import { NumberBox } from '../number-box.tsx';
import { BoxPipes } from './box-pipes.tsx';
import type { VoidPart } from './void-part.ts';

/** A boxing against its wall, or a chase in it: its place and size on the face, and the pipes in it. */
export function VoidBox({ record, disabled, set }: VoidPart) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const on = boxOnWall(plan, record);
  const wall = on && plan.walls[on.wall];
  const heights = voidHeights(plan, record);
  if (!on || !wall)
    return (
      <>
        <p className="inspect-says">It stands against no wall: drag its corners in the plan.</p>
        <BoxPipes record={record} disabled={disabled} set={set} />
      </>
    );
  const resize = (change: Partial<typeof on>): boolean => set({ outline: outlineOnWall(wall, { ...on, ...change }) });
  const width = on.toS - on.fromS;
  const depth = (v: number): boolean => (on.into && v >= wall.thicknessMm ? false : resize({ depthMm: v }));
  return (
    <>
      <p className="inspect-says">
        {on.into ? 'Let into' : 'Against'} the {on.side} face of a wall of {Math.round(wall.thicknessMm)} (
        {sayFace(plan, wall, on.side)}){heights ? `, ${Math.round(heights.top - heights.bottom)} high` : ''}.
      </p>
      <button type="button" className="key slight" onClick={() => foldUp(editor, { wall: on.wall, side: on.side })}>
        <Icon name="wall-face" size={22} />
        Fold up its face
      </button>
      <div className="triple">
        <NumberBox
          label="Off left end"
          value={on.fromS}
          unit="mm"
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && resize({ fromS: v, toS: v + width })}
        />
        <NumberBox
          label="Width"
          value={width}
          unit="mm"
          min={1}
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && resize({ toS: on.fromS + v })}
        />
        <NumberBox
          label="Depth"
          value={on.depthMm}
          unit="mm"
          min={1}
          {...(on.into ? { max: wall.thicknessMm - 1 } : {})}
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && depth(v)}
        />
      </div>
      <BoxPipes record={record} disabled={disabled} set={set} />
    </>
  );
}
