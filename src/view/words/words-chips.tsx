import type { Chip } from '../../editor/words/words-api.ts';

interface Props {
  readonly chips: readonly Chip[];
  readonly changing: number | null;
  readonly onChange: (chip: Chip) => void;
}

/** Everything told so far, in order. A tap on a word tells it again; a dotted line under it: something is assumed. */
export function WordsChips({ chips, changing, onChange }: Props) {
  if (chips.length === 0) return <p className="chips-none">Which pipe?</p>;
  return (
    <ol className="chips" aria-label="Told so far">
      {chips.map((c) => {
        const able = c.stepIndex !== null || c.kind === 'class';
        return (
          <li key={c.id}>
            {c.label !== '' && <span className="chip-word">{c.label}</span>}
            <button
              type="button"
              className="chip-hit"
              aria-pressed={c.pending || (changing !== null && c.stepIndex === changing)}
              aria-disabled={!able}
              aria-label={`${c.label} ${c.value}${c.assumed ? ', assumed' : ''}${able ? ', change' : ''}`.trim()}
              onClick={() => {
                if (able) onChange(c);
              }}
            >
              <span className={`chip${c.pending ? ' pending' : ''}`}>
                <span className={c.assumed ? 'assumed' : ''}>
                  {c.kind === 'from' ? `from ${c.value}` : c.value === '' ? '…' : c.value}
                </span>
              </span>
            </button>
          </li>
        );
      })}
    </ol>
  );
}
