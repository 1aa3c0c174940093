import type { Row } from '../../../report/section.ts';
import { STATE_WORD } from './figures.ts';
import { StateMark } from './state-mark.tsx';
import './verdict.css';

type Verdict = Extract<Row, { kind: 'verdict' }>;

interface Props {
  readonly row: Verdict;
  /** Left out where there is nothing to bring forward. */
  readonly pressed?: boolean;
  readonly onShow: (ids: readonly string[]) => void;
}

/** How one thing stands: its mark, its name, one sentence. A tap shows it on the drawing. */
export function VerdictRow({ row, pressed, onShow }: Props) {
  return (
    <button type="button" className="verdict" aria-pressed={pressed} onClick={() => onShow(row.ids)}>
      <span className="verdict-mark">
        <StateMark state={row.state} small />
      </span>
      <span className="verdict-label">{row.label}</span>
      <span className="out-of-sight">{STATE_WORD[row.state] === '' ? '. ' : `: ${STATE_WORD[row.state]}. `}</span>
      <span className="verdict-say">{row.say}</span>
    </button>
  );
}
