import { useEffect } from 'react';
import { useStore } from 'zustand';
import { genericThings } from '../../catalogue/generic-things.ts';
import { Dialog } from '../app/dialog.tsx';
import { useEditorState } from '../app/use-session.ts';
import { NewThing } from './new-thing.tsx';
import { editThing, loadShelf, shelf, undoShelf } from './shelf.ts';
import { ThingForm } from './thing-form.tsx';
import { ClassRow, JobRow, MineRow } from './thing-rows.tsx';
import './things.css';

/** Things of the user's own: the list, or one of them as its sheet. */
export default function ThingsScreen() {
  const things = useStore(shelf, (s) => s.things);
  const editing = useStore(shelf, (s) => s.editing);
  const inJob = useEditorState((s) => s.plan.things);
  useEffect(() => {
    void loadShelf();
    return () => editThing(null);
  }, []);
  const open = things?.find((t) => t.id === editing);
  if (open) {
    return (
      <Dialog title={open.name}>
        <div className="key-row thing-bar">
          <button type="button" className="key slight" onClick={() => editThing(null)}>
            All my things
          </button>
          <UndoKey />
        </div>
        <ThingForm key={open.id} thing={open} />
      </Dialog>
    );
  }
  const mine = things ?? [];
  const others = Object.values(inJob).filter((t) => !mine.some((m) => m.id === t.id) && !t.id.startsWith('generic-'));
  return (
    <Dialog title="My things">
      <h3>Mine, on this device</h3>
      {things !== null && mine.length === 0 && (
        <p>
          Nothing is kept yet. Type a boiler once from its sheet, or copy one of the classes below, and use it in every
          job.
        </p>
      )}
      <ul className="thing-list">
        {mine.map((t) => (
          <MineRow key={t.id} thing={t} />
        ))}
      </ul>
      <NewThing />
      <div className="key-row thing-undo">
        <UndoKey />
      </div>
      {others.length > 0 && (
        <>
          <h3>In this job only</h3>
          <ul className="thing-list">
            {others.map((t) => (
              <JobRow key={t.id} thing={t} />
            ))}
          </ul>
        </>
      )}
      <h3>Of a class, assumed</h3>
      <ul className="thing-list">
        {genericThings().map((t) => (
          <ClassRow key={t.id} thing={t} />
        ))}
      </ul>
      <p className="thing-note">
        A job carries the things it uses in its own file. A sheet that is changed later is offered to the job, never put
        in by itself.
      </p>
    </Dialog>
  );
}

/** Steps on the shelf are no steps of the job, so they are taken back here. */
function UndoKey() {
  const last = useStore(shelf, (s) => s.undo.at(-1));
  if (last === undefined) return null;
  return (
    <button type="button" className="key slight" onClick={() => void undoShelf()}>
      Undo: {last.label}
    </button>
  );
}
