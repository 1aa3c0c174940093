import { useEffect } from 'react';
import { useStore } from 'zustand';
import { genericThings } from '../../catalogue/generic-things.ts';
import { sheetChanges } from '../../catalogue/thing-parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Thing } from '../../plan/records/statements.ts';
import { setOver } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { SelectBox } from '../panels/inspect/select-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { THING_KINDS } from './say-thing-kept.ts';
import { editThing, loadShelf, shelf, shelve } from './shelf.ts';
import './things.css';

/** More changes than this are only counted. */
const MOST_SHOWN = 6;
const NONE: Readonly<Record<string, Thing>> = {};

/**
 * What one's own things have to do with a point: first which it is one of and what its sheet now says; last, where it is of
 * none, that it may be one.
 */
export function PointThing({ point, place }: { readonly point: Point; readonly place: 'first' | 'last' }) {
  const shelved = useStore(shelf, (s) => s.things);
  const inJob = useEditorState((s) => s.plan.things ?? NONE);
  useEffect(() => {
    void loadShelf();
  }, []);
  if (!THING_KINDS.includes(point.kind)) return null;
  const mine = shelved ?? [];
  const carried = point.thing === null ? undefined : inJob[point.thing];
  // The user's own copy goes first: the one in the job is how the sheet read when it was used.
  const thing = mine.find((t) => t.id === point.thing) ?? carried;
  if (thing && thing.kind === point.kind) {
    if (place === 'last') return null;
    return <OneOf point={point} thing={thing} mine={mine.some((t) => t.id === thing.id)} />;
  }
  if (place === 'first') return null;
  const others = Object.values(inJob).filter((t) => ![...mine, ...genericThings()].some((m) => m.id === t.id));
  return <KeepOrUse point={point} choices={[...mine, ...others, ...genericThings()]} />;
}

interface OneProps {
  readonly point: Point;
  readonly thing: Thing;
  readonly mine: boolean;
}

function OneOf({ point, thing, mine }: OneProps) {
  const { disabled, run } = useChange();
  const changes = sheetChanges(point, thing);
  return (
    <section className="sheet-offer" aria-label="Its sheet">
      <p className="inspect-says">
        {changes.length === 0 ? `As the sheet of ${thing.name} says.` : `The sheet of ${thing.name} says otherwise:`}
      </p>
      {changes.length > 0 && (
        <dl>
          {changes.slice(0, MOST_SHOWN).map((c) => (
            <div key={c.label} className="sheet-change">
              <dt>{c.label}</dt>
              <dd>
                {c.sheet} <span className="was">here {c.now}</span>
              </dd>
            </div>
          ))}
        </dl>
      )}
      {changes.length > MOST_SHOWN && <p className="inspect-says">and {changes.length - MOST_SHOWN} more</p>}
      <div className="key-row">
        {changes.length > 0 && (
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => run('point.sheet', { point: point.id, thing })}
          >
            Take what the sheet says
          </button>
        )}
        {mine && (
          <button
            type="button"
            className="key slight"
            onClick={() => {
              setOver('my-things');
              editThing(thing.id);
            }}
          >
            Open its sheet
          </button>
        )}
        {!mine && !thing.id.startsWith('generic-') && (
          <button type="button" className="key slight" onClick={() => void shelve(thing, `keep ${thing.name}`)}>
            Keep among my things
          </button>
        )}
        {thing.id.startsWith('generic-') && <KeepKey point={point} />}
      </div>
    </section>
  );
}

/** Keeps what the point knows as a thing: in the plan as a step of undo, and on the shelf for other jobs. */
function KeepKey({ point }: { readonly point: Point }) {
  const editor = useEditor();
  const { disabled } = useChange();
  const keep = (): void => {
    if (disabled) return;
    const name = point.name.replace(/, assumed$/, '');
    const outcome = editor.run('thing.keep', { point: point.id, name });
    const made = outcome.ok ? editor.store.getState().plan.things[outcome.made[0] ?? ''] : undefined;
    if (made) void shelve(made, `keep ${made.name}`);
  };
  return (
    <button type="button" className="key slight" aria-disabled={disabled} onClick={keep}>
      Keep as one of my things
    </button>
  );
}

function KeepOrUse({ point, choices }: { readonly point: Point; readonly choices: readonly Thing[] }) {
  const { disabled, run } = useChange();
  const fitting = choices.filter((t) => t.kind === point.kind);
  return (
    <section className="sheet-offer" aria-label="Its sheet">
      {fitting.length > 0 && (
        <SelectBox
          label="Is one of"
          choices={[
            { value: null, label: 'none of my things' },
            ...fitting.map((t) => ({ value: t.id, label: t.name })),
          ]}
          chosen={null}
          disabled={disabled}
          help="It then takes the figures, case and tails of that sheet."
          onChoose={(id) => {
            const thing = fitting.find((t) => t.id === id);
            if (thing) run('point.sheet', { point: point.id, thing });
          }}
        />
      )}
      <div className="key-row">
        <KeepKey point={point} />
      </div>
    </section>
  );
}
