import { useState } from 'react';
import { useStore } from 'zustand';
import type { UnsafeSituation } from '../../plan/records/basis.ts';
import { useEditorState } from '../app/use-session.ts';
import { type HalfTold, halfTold, tellHalf } from '../job/half-told.ts';
import { type Ask, LineForm, type Told } from '../job/line-form.tsx';
import { SaidRow } from '../job/said-row.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { keyed } from '../panels/keyed.ts';
import { sayUnsafe, today } from './say-records.ts';
import { UnsafeCard } from './unsafe-card.tsx';
import './records.css';

const NONE: readonly UnsafeSituation[] = [];
const ASKS: readonly Ask[] = [
  { key: 'what', label: 'What was found', kind: 'long', wanted: true },
  { key: 'place', label: 'Where', kind: 'text' },
  {
    key: 'classification',
    label: 'Classification, in your own words',
    kind: 'text',
    help: 'Yours alone: nothing here classifies a situation.',
  },
  { key: 'notice', label: 'Notice that was left, and with whom', kind: 'long' },
  { key: 'on', label: 'On', kind: 'date' },
];

const toldOf = ({ what, place, classification, notice, on }: UnsafeSituation): Told => ({
  what,
  place,
  classification,
  notice,
  on,
});
const blank = (): UnsafeSituation => ({
  what: '',
  place: '',
  classification: '',
  notice: '',
  photo: null,
  on: today(),
  signed: [],
});

/** Situations that somebody judged unsafe: told in their own words, photographed, signed. */
export function UnsafePart() {
  const lines = useEditorState((s) => s.plan.job.unsafe) ?? NONE;
  const { disabled, run } = useChange();
  const half = useEditorState((s) => `${s.plan.id} unsafe`);
  const known = useStore(halfTold, (s) => s.lines.get(half) ?? null);
  const [open, setOpen] = useState<number | null>(null);
  const was = known?.at == null ? undefined : lines[known.at];
  const stale = known?.at != null && (!was || JSON.stringify(toldOf(was)) !== JSON.stringify(known.start));
  const editing = stale ? null : known;
  const set = (at: number | null, line: UnsafeSituation): boolean =>
    run('unsafe.set', at === null ? { line } : { at, line });
  const begin = (at: number | null, line: UnsafeSituation): void => {
    if (disabled) return;
    const told = toldOf(line);
    tellHalf(half, { at, start: told, typed: told });
  };
  const leave = (): void => tellHalf(half, null);
  const form = (now: HalfTold) => (
    <LineForm
      asks={ASKS}
      typed={now.typed}
      onType={(typed) => tellHalf(half, { ...now, typed })}
      fresh={now.at === null}
      keepWord="Keep"
      onKeep={(told) => {
        const kept = set(now.at, { ...(was ?? blank()), ...(told as Partial<UnsafeSituation>) });
        if (kept) setOpen(now.at ?? lines.length);
        return kept;
      }}
      onLeave={leave}
    />
  );
  return (
    <>
      {lines.length === 0 && editing === null && (
        <p className="fold-says">
          None is told. What is found, how you class it and the notice you leave are in your own words.
        </p>
      )}
      <ul className="job-lines">
        {keyed(lines, (l) => l.what).map(({ key, item }, at) => (
          <li key={key}>
            {editing?.at === at ? (
              form(editing)
            ) : open === at ? (
              <UnsafeCard
                line={item}
                disabled={disabled}
                onSet={(line) => set(at, line)}
                onWords={() => begin(at, item)}
                onDelete={() => {
                  if (run('jobLine.delete', { list: 'unsafe', at })) setOpen(null);
                }}
                onClose={() => setOpen(null)}
              />
            ) : (
              <SaidRow said={sayUnsafe(item)} disabled={false} onOpen={() => setOpen(at)} />
            )}
          </li>
        ))}
      </ul>
      {editing?.at === null && form(editing)}
      {editing === null && (
        <div className="key-row">
          <button type="button" className="key slight" aria-disabled={disabled} onClick={() => begin(null, blank())}>
            Add a situation
          </button>
        </div>
      )}
    </>
  );
}
