import { useStore } from 'zustand';
import { useEditorState } from '../app/use-session.ts';
import { useChange } from '../panels/inspect/use-change.ts';
import { keyed } from '../panels/keyed.ts';
import { type HalfTold, halfTold, tellHalf } from './half-told.ts';
import { type Ask, LineForm, type Told } from './line-form.tsx';
import { SaidRow } from './said-row.tsx';

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

/** A list of the job card: its lines, each opened as a form by a tap, and keys that begin a new one. */
export function JobLines<L extends object>({ list, command, lines, asks, say, empty, starts }: Props<L>) {
  const { disabled, run } = useChange();
  const half = useEditorState((s) => `${s.plan.id} ${list}`);
  const known = useStore(halfTold, (s) => s.lines.get(half) ?? null);
  // A line that has become another one since is not written over.
  const stale = known !== null && known.at !== null && (lines[known.at] as unknown) !== known.start;
  const editing = stale ? null : known;
  const begin = (at: number | null, start: Told): void => tellHalf(half, { at, start, typed: start });
  const leave = (): void => tellHalf(half, null);
  const form = ({ at, start, typed }: HalfTold) => (
    <LineForm
      asks={asks}
      typed={typed}
      onType={(next) => tellHalf(half, { at, start, typed: next })}
      fresh={at === null}
      keepWord="Keep"
      onKeep={(told) => {
        const line = { ...start, ...told };
        return run(command, at === null ? { line } : { at, line });
      }}
      onLeave={leave}
      {...(at === null
        ? {}
        : {
            onDelete: () => {
              if (run('jobLine.delete', { list, at })) leave();
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
              form(editing)
            ) : (
              <SaidRow said={say(line)} disabled={disabled} onOpen={() => begin(at, line as unknown as Told)} />
            )}
          </li>
        ))}
      </ul>
      {editing?.at === null && form(editing)}
      {editing === null && (
        <div className="key-row">
          {starts.map(({ word, told }) => (
            <button
              key={word}
              type="button"
              className="key slight"
              aria-disabled={disabled}
              onClick={() => {
                if (!disabled) begin(null, told);
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
