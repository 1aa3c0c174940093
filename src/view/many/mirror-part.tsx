import { useState } from 'react';
import type { Vec } from '../../drawing/display-list.ts';
import type { Editor, Selected } from '../../editor/editor-api.ts';
import { wayInHouse, workPlane } from '../../editor/input/work-plane.ts';
import { extentOfAll } from '../../editor/many/extents.ts';
import { sub } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import { RECORD_MAPS } from '../../plan/plan.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';

/** What a mirror takes; doors go with their wall, corners and valves with their pipe. */
const MIRRORED: ReadonlySet<string> = new Set([
  'walls',
  'points',
  'voids',
  'rooms',
  'runs',
  'legs',
  'stretches',
  'openings',
  'nodes',
  'items',
]);

interface Line {
  readonly at: Xy;
  readonly along: Xy;
}

/** Through the middle of what is chosen, up the sheet or across it as the plan lies. */
function middleLine(editor: Editor, things: readonly Selected[], way: 'up' | 'across'): Line | undefined {
  const { plan, panes } = editor.store.getState();
  const plane = workPlane(plan, panes.plan.view);
  if (!plane) return undefined;
  const [right, up] = (
    [
      [1, 0],
      [0, 1],
    ] as const
  ).map((v: Vec) => wayInHouse(plane, v));
  if (!right || !up) return undefined;
  const [x, y] = [extentOfAll(plan, things, right), extentOfAll(plan, things, up)];
  if (!x || !y) return undefined;
  const middle = plane.place([(x.lo + x.hi) / 2, (y.lo + y.hi) / 2], 0);
  return { at: { x: middle.x, y: middle.y }, along: way === 'up' ? { x: up.x, y: up.y } : { x: right.x, y: right.y } };
}

/** Everything of the made ids that can be chosen: what was copied, not what hangs on it. */
function madeOf(plan: Plan, made: readonly string[]): Selected[] {
  const chosen = new Set(['walls', 'points', 'voids', 'runs']);
  return made.flatMap((id) => {
    const map = RECORD_MAPS.find((m) => chosen.has(m) && plan[m][id]);
    return map === undefined ? [] : [{ map: map as Selected['map'], id }];
  });
}

/** Mirrored about the middle of the choice, or about the wall that was chosen last. */
export function MirrorPart({ things }: { readonly things: readonly Selected[] }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const last = things.at(-1);
  const wall = useEditorState((s) => (last?.map === 'walls' && things.length > 1 ? s.plan.walls[last.id] : undefined));
  const [copy, setCopy] = useState(false);
  const some = things.filter((t) => MIRRORED.has(t.map));
  if (some.length === 0) return null;
  const mirror = (what: readonly Selected[], line: Line | undefined): void => {
    if (disabled || !line) return;
    const outcome = editor.run('things.mirror', { things: what, ...line, copy });
    if (outcome.ok && copy) editor.select(madeOf(editor.store.getState().plan, outcome.made));
  };
  return (
    <details className="field-group">
      <summary>
        <span className="group-name">Mirror</span>
        <span className="group-told">itself or a copy</span>
        <KickTurn />
      </summary>
      <div className="group-fields">
        <RadioKeys
          legend="What is mirrored"
          legendHidden
          className="two-keys"
          choices={[
            { value: false, label: 'itself' },
            { value: true, label: 'a copy' },
          ]}
          chosen={copy}
          disabled={disabled}
          onChoose={setCopy}
        />
        <div className="mirror-keys">
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => mirror(some, middleLine(editor, some, 'up'))}
          >
            Left to right
          </button>
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => mirror(some, middleLine(editor, some, 'across'))}
          >
            Top to bottom
          </button>
          {wall && (
            <button
              type="button"
              className="key slight wide"
              aria-disabled={disabled}
              onClick={() => mirror(some.slice(0, -1), { at: wall.a, along: sub(wall.b, wall.a) })}
            >
              About the wall chosen last
            </button>
          )}
        </div>
        <p className="inspect-says">
          Appliances keep the hand they are made with: their pipes are joined to the tails where those stand. Ends at
          what is not chosen are left open.
        </p>
        {!wall && <p className="inspect-says">Choose a wall last to mirror the others about it.</p>}
      </div>
    </details>
  );
}
