import type { Row } from '../../../report/section.ts';
import { AnswerRow } from './answer-row.tsx';
import { ChoiceRow } from './choice-row.tsx';
import { FactRow } from './fact-row.tsx';
import { NoteRow } from './note-row.tsx';
import { SumRow } from './sum-row.tsx';
import { VerdictRow } from './verdict-row.tsx';

export interface RowDoing {
  readonly title: string;
  /** The drawing is newer than these figures. */
  readonly paler: boolean;
  /** Another answer stands above it. */
  readonly second: boolean;
  readonly onChoose: (row: Extract<Row, { kind: 'choice' }>) => void;
  readonly onShow: (ids: readonly string[]) => void;
}

/** Draws any row of any section: a new section needs no change here. */
export function RowView({ row, doing }: { readonly row: Row; readonly doing: RowDoing }) {
  switch (row.kind) {
    case 'answer':
      return <AnswerRow row={row} title={doing.title} paler={doing.paler} second={doing.second} />;
    case 'choice':
      return <ChoiceRow row={row} onChoose={doing.onChoose} />;
    case 'sum':
      return <SumRow row={row} />;
    case 'heading':
      return (
        <div className="row-heading">
          <h3>{row.label}</h3>
          {row.say !== '' && <p>{row.say}</p>}
        </div>
      );
    case 'fact':
      return <FactRow row={row} onShow={doing.onShow} />;
    case 'verdict':
      return <VerdictRow row={row} onShow={doing.onShow} />;
    case 'note':
      return <NoteRow row={row} />;
    case 'assumed':
      return (
        <p className="row-assumed">
          <span className="out-of-sight">assumed: </span>
          {row.say}
        </p>
      );
  }
}
