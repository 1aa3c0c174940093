import type { Row } from '../../../report/section.ts';
import { sayWithUnit } from './figures.ts';

type Fact = Extract<Row, { kind: 'fact' }>;

interface Props {
  readonly row: Fact;
  readonly onShow: (ids: readonly string[]) => void;
}

/** Longer than a figure with its unit, it is a sentence: it reads under its label, not beside it. */
const FIGURE_LETTERS = 14;
/** A count before its sentence: "7; as few as may be". */
const COUNTED = /^(\d+); (.+)$/;

/** What stands at the right of a row, and what under its label. */
function parts({ figure, say }: Fact): { readonly beside: string; readonly under: string; readonly counts: boolean } {
  if (figure !== null) return { beside: sayWithUnit(figure), under: say, counts: true };
  const [, count, rest] = COUNTED.exec(say) ?? [];
  if (count !== undefined && rest !== undefined) return { beside: count, under: rest, counts: true };
  const long = say.length > FIGURE_LETTERS;
  return { beside: long ? '' : say, under: long ? say : '', counts: /\d/.test(say) };
}

/** A place on an axis is not parted from its figure at the end of a line. */
const kept = (say: string): string => say.replace(/\bx (?=\d)/g, 'x\u00a0');

/** A label with its figure at the right, and words on lines of their own. The whole row shows what it is about. */
export function FactRow({ row, onShow }: Props) {
  const { beside, under, counts } = parts(row);
  const inside = (
    <>
      <span className="fact-label">{row.label}</span>
      {beside !== '' && (
        <>
          <span className="out-of-sight">: </span>
          <span className={counts ? 'fact-figure' : 'fact-figure fact-words'}>{beside}</span>
        </>
      )}
      {under !== '' && (
        <>
          <span className="out-of-sight">, </span>
          <span className="fact-say">{kept(under)}</span>
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
