import type { Row } from '../../../report/section.ts';
import { sayWithUnit } from './figures.ts';

type Fact = Extract<Row, { kind: 'fact' }>;

interface Props {
  readonly row: Fact;
  readonly onShow: (ids: readonly string[]) => void;
}

/** Longer than a figure with its unit, it is a sentence: it reads under its label, not beside it. */
const FIGURE_LETTERS = 14;

/** A label with its figure at the right, and words on lines of their own. The whole row shows what it is about. */
export function FactRow({ row, onShow }: Props) {
  const worded = row.figure === null && row.say.length > FIGURE_LETTERS;
  const figure = row.figure === null ? (worded ? '' : row.say) : sayWithUnit(row.figure);
  const say = row.figure !== null || worded ? row.say : '';
  const inside = (
    <>
      <span className="fact-label">{row.label}</span>
      {figure !== '' && (
        <>
          <span className="out-of-sight">: </span>
          <span className="fact-figure">{figure}</span>
        </>
      )}
      {say !== '' && (
        <>
          <span className="out-of-sight">, </span>
          <span className="fact-say">{say}</span>
        </>
      )}
    </>
  );
  if (row.ids.length === 0) return <div className="fact">{inside}</div>;
  return (
    <button type="button" className="fact" onClick={() => onShow(row.ids)}>
      {inside}
      <span className="fact-spot" aria-hidden="true" />
      <span className="out-of-sight">. Show it on the drawing</span>
    </button>
  );
}
