import { type ComponentType, lazy, Suspense } from 'react';
import type { Selected } from '../../../editor/editor-api.ts';
import { useEditor, useEditorState } from '../../app/use-session.ts';
import { ManyForm } from '../../many/many-form.tsx';
import { MovePart } from '../../many/move-part.tsx';
import { InspectPhoto } from '../../photos/inspect-photo.tsx';
import { nameOf } from '../name-of.ts';
import { InspectGround } from './inspect-ground.tsx';
import { InspectItem } from './inspect-item.tsx';
import { InspectLeg } from './inspect-leg.tsx';
import { InspectNode } from './inspect-node.tsx';
import { InspectOpening } from './inspect-opening.tsx';
import { InspectPoint } from './inspect-point.tsx';
import { InspectRoof } from './inspect-roof.tsx';
import { InspectRoom } from './inspect-room.tsx';
import { InspectRun } from './inspect-run.tsx';
import { InspectStretch } from './inspect-stretch.tsx';
import { InspectVoid } from './inspect-void.tsx';
import { InspectWall } from './inspect-wall.tsx';
import './inspect.css';

const BankPart = lazy(() => import('../../bank/bank-part.tsx'));

const FORMS: Readonly<Record<Selected['map'], ComponentType<{ readonly id: string }>>> = {
  points: InspectPoint,
  runs: InspectRun,
  legs: InspectLeg,
  nodes: InspectNode,
  items: InspectItem,
  walls: InspectWall,
  openings: InspectOpening,
  rooms: InspectRoom,
  roofs: InspectRoof,
  grounds: InspectGround,
  voids: InspectVoid,
  stretches: InspectStretch,
  blobRefs: InspectPhoto,
};

/** What is chosen, as a form. Where several things lay under the tap, the others are one key away. */
export function Inspect() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const selection = useEditorState((s) => s.selection);
  const candidates = useEditorState((s) => s.candidates);
  const [first, ...others] = selection;
  if (!first) return <p className="empty-chapter">Nothing is chosen.</p>;
  const Form = FORMS[first.map];
  return (
    <div className="inspect">
      {candidates.length > 1 && (
        <fieldset className="plain-set candidates">
          <legend className="out-of-sight">Also here</legend>
          {candidates.map((c) => (
            <button
              key={`${c.map}${c.id}`}
              type="button"
              className="key slight"
              aria-pressed={c.map === first.map && c.id === first.id}
              onClick={() => editor.select([c])}
            >
              {nameOf(plan, c)}
            </button>
          ))}
        </fieldset>
      )}
      {others.length > 0 ? (
        <ManyForm things={selection} />
      ) : (
        <>
          <Form key={first.id} id={first.id} />
          <Suspense>
            <BankPart of={first} />
          </Suspense>
          <MovePart things={selection} />
        </>
      )}
    </div>
  );
}
