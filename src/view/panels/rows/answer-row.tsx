import { sayFigures } from '../../../report/quantity.ts';
import type { Row } from '../../../report/section.ts';
import { Bar } from '../bar.tsx';
import { STATE_WORD, sayUnit } from './figures.ts';
import { StateMark } from './state-mark.tsx';

type Answer = Extract<Row, { kind: 'answer' }>;

interface Props {
  readonly row: Answer;
  readonly title: string;
  readonly paler: boolean;
  /** Not the first of its chapter: told in smaller figures. */
  readonly second: boolean;
}

/** The large answer of a chapter: lowest to highest, how it stands, its bar. */
export function AnswerRow({ row, title, paler, second }: Props) {
  const { state } = row.bar;
  const figures = sayFigures(row.figure);
  const sub = [row.label === title ? '' : row.label, row.of].filter((t) => t !== '').join(', ');
  return (
    <div className={`answer${paler ? ' paler' : ''}${second ? ' second' : ''}`}>
      {sub !== '' && <p className="answer-of">{sub}</p>}
      <p className={`answer-figure${figures.length > 13 ? ' long' : ''} state-${state}`}>
        <span>{figures}</span> <span className="answer-unit">{sayUnit(row.figure.unit)}</span>
      </p>
      <p className="answer-say">
        <StateMark state={state} />
        <strong className={`state-${state}`}>{row.say === '' ? STATE_WORD[state] : row.say}</strong>
        {row.room !== null && <span className="answer-room">{row.room}</span>}
      </p>
      <Bar bar={row.bar} small={second} />
    </div>
  );
}
