import { sayFigures } from '../../../report/quantity.ts';
import type { Row } from '../../../report/section.ts';
import { Bar } from '../bar.tsx';
import { STATE_WORD } from './figures.ts';
import { StateMark } from './state-mark.tsx';

type Choice = Extract<Row, { kind: 'choice' }>;

/** One of several ways, with its own small bar on the same scale. A tap makes it so. */
export function ChoiceRow({ row, onChoose }: { readonly row: Choice; readonly onChoose: (row: Choice) => void }) {
  const able = row.change.length > 0 && !row.chosen;
  const figures = row.figure === null ? "can't tell" : sayFigures(row.figure);
  const spoken = `${row.label}: ${figures}${row.state === 'none' ? '' : `, ${STATE_WORD[row.state]}`}${row.room === null ? '' : `, ${row.room}`}`;
  return (
    <button
      type="button"
      className={`choice state-edge-${row.state}${row.chosen ? ' chosen' : ''}`}
      aria-pressed={row.chosen}
      aria-disabled={!able}
      aria-label={spoken}
      onClick={() => {
        if (able) onChoose(row);
      }}
    >
      <span className="choice-label">{row.label}</span>
      <span className={`choice-figure state-${row.state}`}>{figures}</span>
      <span className="choice-bar">{row.bar !== null && <Bar bar={row.bar} small />}</span>
      <span className="choice-mark">
        <StateMark state={row.state} small />
      </span>
    </button>
  );
}
