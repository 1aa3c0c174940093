import { useState } from 'react';
import { useChange } from '../panels/inspect/use-change.ts';
import { keyed } from '../panels/keyed.ts';
import { type Ask, LineForm, type Told } from './line-form.tsx';

/** A line as it is read: what, a figure beside it, and what else is known. */
export interface SaidLine {
  readonly what: string;
  readonly figure: string;
  readonly more: string;
  /** Still to be done. */
  readonly open: boolean;
}

interface Props<L> {
  readonly list: 'permissions' | 'readings' | 'holdPoints';
  readonly command: 'permission.set' | 'reading.set' | 'holdPoint.set';
  readonly lines: readonly L[];
  readonly asks: readonly Ask[];
  readonly say: (line: L) => SaidLine;
  readonly empty: string;
  /** Ways to begin a line: a word and what it starts with. */
  readonly starts: readonly { readonly word: string; readonly told: Told }[];
}

type Editing = { readonly at: number | null; readonly start: Told } | null;

/** A list of the job card: its lines, each opened as a form by a tap, and keys that begin a new one. */
export function JobLines<L extends object>({ list, command, lines, asks, say, empty, starts }: Props<L>) {
  const { disabled, run } = useChange();
  const [editing, setEditing] = useState<Editing>(null);
  const form = (at: number | null, start: Told) => (
    <LineForm
      asks={asks}
      start={start}
      keepWord="Keep"
      onKeep={(told) => {
        const line = { ...start, ...told };
        return run(command, at === null ? { line } : { at, line });
      }}
      onLeave={() => setEditing(null)}
      {...(at === null
        ? {}
        : {
            onDelete: () => {
              if (run('jobLine.delete', { list, at })) setEditing(null);
            },
          })}
    />
  );
  return (
    <>
      {lines.length === 0 && editing === null && <p className="fold-says">{empty}</p>}
      <ul className="job-lines">
        {keyed(lines, (line) => say(line).what).map(({ key, item: line }, at) => (
          <li key={key}>
            {editing?.at === at ? (
              form(at, editing.start)
            ) : (
              <button
                type="button"
                className="job-line"
                aria-disabled={disabled}
                onClick={() => {
                  if (!disabled) setEditing({ at, start: line as unknown as Told });
                }}
              >
                <Said said={say(line)} />
              </button>
            )}
          </li>
        ))}
      </ul>
      {editing?.at === null && form(null, editing.start)}
      {editing === null && (
        <div className="key-row">
          {starts.map(({ word, told }) => (
            <button
              key={word}
              type="button"
              className="key slight"
              aria-disabled={disabled}
              onClick={() => {
                if (!disabled) setEditing({ at: null, start: told });
              }}
            >
              {word}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

function Said({ said }: { readonly said: SaidLine }) {
  return (
    <>
      <span className="line-top">
        <span className="line-what">{said.what}</span>
        <span className={said.open ? 'line-figure line-open' : 'line-figure'}>{said.figure}</span>
      </span>
      {said.more !== '' && <span className="line-more">{said.more}</span>}
    </>
  );
}
