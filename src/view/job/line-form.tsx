import { type FormEvent, Fragment, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { readNumber } from '../panels/inspect/typed-value.ts';

/** One thing a line asks. */
export interface Ask {
  readonly key: string;
  readonly label: string;
  readonly kind: 'text' | 'long' | 'date' | 'number' | 'tick';
  readonly help?: string;
  /** The line cannot be kept without it. */
  readonly wanted?: boolean;
  /** Stands beside the next one. */
  readonly half?: boolean;
}

export type Told = Readonly<Record<string, string | number | boolean | null>>;

interface Props {
  readonly asks: readonly Ask[];
  /** What stands in the boxes. */
  readonly typed: Told;
  readonly onType: (typed: Told) => void;
  /** A line that is begun: the first box that is still empty is the one to type in. */
  readonly fresh: boolean;
  readonly keepWord: string;
  /** True where it was kept. */
  readonly onKeep: (told: Told) => boolean;
  readonly onLeave: () => void;
  readonly onDelete?: () => void;
  /** What stands under the box of a key. */
  readonly under?: { readonly key: string; readonly shows: ReactNode };
}

const shown = (value: Told[string] | undefined): string =>
  typeof value === 'number' ? String(value) : typeof value === 'string' ? value : '';

/** What was typed, or what is wrong with it and where. */
export function readTold(asks: readonly Ask[], typed: Told): { told: Told } | { wrong: string; key: string } {
  const told: Record<string, Told[string]> = {};
  for (const { key, label, kind, wanted } of asks) {
    const value = typed[key];
    const text = shown(value).trim();
    if (wanted && text === '') return { wrong: `${label}: this is still wanted.`, key };
    if (kind === 'tick') told[key] = value === true;
    else if (kind === 'date') told[key] = text === '' ? null : text;
    else if (kind === 'number') {
      const read = readNumber(text, { empty: true });
      if (!read.ok) return { wrong: `${label}: "${text}" is no number. Type it as 21 or 21.5.`, key };
      told[key] = typeof read.value === 'number' ? read.value : null;
    } else told[key] = text;
  }
  return { told };
}

/** A line of the job card as a small form: kept as one step, or left as it was. */
export function LineForm({ asks, typed, onType, fresh, keepWord, onKeep, onLeave, onDelete, under }: Props) {
  const id = useId();
  const [wrong, setWrong] = useState<{ readonly wrong: string; readonly key: string } | null>(null);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const boxes = [
      ...(form.current?.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea') ?? []),
    ];
    const empty = fresh ? boxes.find((b) => b.value === '') : undefined;
    (empty ?? boxes[0])?.focus();
    form.current?.scrollIntoView({ block: 'nearest' });
  }, [fresh]);
  const keep = (e: FormEvent): void => {
    e.preventDefault();
    const read = readTold(asks, typed);
    if ('wrong' in read) {
      setWrong(read);
      form.current?.querySelector<HTMLElement>(`[data-key="${read.key}"]`)?.focus();
    } else if (onKeep({ ...typed, ...read.told })) onLeave();
  };
  const set = (key: string, value: string | boolean): void => {
    setWrong(null);
    onType({ ...typed, [key]: value });
  };
  return (
    <form
      className="line-form"
      ref={form}
      onSubmit={keep}
      noValidate
      onKeyDown={(e) => {
        if (e.key !== 'Escape') return;
        e.stopPropagation();
        onLeave();
      }}
    >
      {inRows(asks).map((row) => (
        <Fragment key={row.map((a) => a.key).join(' ')}>
          <div className={row.length > 1 ? 'pair' : undefined}>
            {row.map((ask) => (
              <Box
                key={ask.key}
                id={`${id}${ask.key}`}
                ask={ask}
                value={typed[ask.key] ?? null}
                wrong={wrong?.key === ask.key ? wrong.wrong : null}
                onSet={(value) => set(ask.key, value)}
              />
            ))}
          </div>
          {under !== undefined && row.some((ask) => ask.key === under.key) && under.shows}
        </Fragment>
      ))}
      <div className="key-row">
        <button type="submit" className="key primary slight">
          {keepWord}
        </button>
        <button type="button" className="key slight" onClick={onLeave}>
          Leave it
        </button>
        {onDelete && (
          <button type="button" className="key slight" onClick={onDelete}>
            Delete
          </button>
        )}
      </div>
    </form>
  );
}

function inRows(asks: readonly Ask[]): readonly (readonly Ask[])[] {
  const rows: Ask[][] = [];
  for (const ask of asks) {
    const last = rows.at(-1);
    if (ask.half && last?.length === 1 && last[0]?.half) last.push(ask);
    else rows.push([ask]);
  }
  return rows;
}

interface BoxProps {
  readonly id: string;
  readonly ask: Ask;
  readonly value: Told[string];
  readonly wrong: string | null;
  readonly onSet: (value: string | boolean) => void;
}

function Box({ id, ask, value, wrong, onSet }: BoxProps) {
  if (ask.kind === 'tick') {
    return (
      <button type="button" className="key slight" aria-pressed={value === true} onClick={() => onSet(value !== true)}>
        {ask.label}
      </button>
    );
  }
  const common = {
    id,
    'data-key': ask.key,
    value: shown(value),
    autoComplete: 'off',
    'aria-invalid': wrong !== null,
    'aria-describedby': wrong !== null || ask.help !== undefined ? `${id}-more` : undefined,
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {ask.label}
      </label>
      <span className="field-box">
        {ask.kind === 'long' ? (
          <textarea {...common} rows={2} onChange={(e) => onSet(e.target.value)} />
        ) : (
          <input
            {...common}
            type={ask.kind === 'date' ? 'date' : 'text'}
            inputMode={ask.kind === 'number' ? 'decimal' : undefined}
            onChange={(e) => onSet(e.target.value)}
          />
        )}
      </span>
      {wrong !== null ? (
        <p className="field-wrong" id={`${id}-more`} role="alert">
          {wrong}
        </p>
      ) : (
        ask.help !== undefined && (
          <p className="field-help" id={`${id}-more`}>
            {ask.help}
          </p>
        )
      )}
    </div>
  );
}
