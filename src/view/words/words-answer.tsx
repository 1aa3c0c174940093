import { sayFigures } from '../../report/quantity.ts';
import type { RunFacts } from '../../report/report.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { Bar } from '../panels/bar.tsx';
import { choose } from '../panels/choose.ts';
import { keyed } from '../panels/keyed.ts';
import { STATE_WORD, sayUnit, sayWithUnit } from '../panels/rows/figures.ts';
import { StateMark } from '../panels/rows/state-mark.tsx';
import { SumRow } from '../panels/rows/sum-row.tsx';
import { RunWorkings } from '../panels/run-workings.tsx';
import { SumsState } from '../panels/sums-state.tsx';
import { type WordsAnswer as Answer, type AnswerColumn, wordsAnswer } from './answer-columns.ts';

interface Props {
  readonly run: string | null;
  /** There is room for every line of working; else one line of it. */
  readonly full: boolean;
}

/** The answer in large type: three sizes side by side, the working, what was assumed. */
export function WordsAnswer({ run, full }: Props) {
  const report = useReport((s) => s.report);
  const paler = useReport((s) => s.waiting);
  const answer = wordsAnswer(report);
  const facts = run === null ? undefined : report?.runs.find((r) => r.run === run);
  const columns = run !== null && answer !== null && facts?.service === 'gas' ? answer.columns : [];
  return (
    <section className={`words-answer${paler ? ' paler' : ''}`} aria-label="Answer">
      <SumsState />
      {columns.length > 0 && answer ? (
        <>
          <div className="columns">
            {columns.map((c) => (
              <Column key={c.size} column={c} unit={answer.unit} />
            ))}
          </div>
          <Working answer={answer} full={full} />
        </>
      ) : (
        <RunAnswer facts={facts} full={full} />
      )}
    </section>
  );
}

/** What can be said of a run that has no sizes to choose from: how long it is, how often it turns. */
function RunAnswer({ facts, full }: { readonly facts: RunFacts | undefined; readonly full: boolean }) {
  if (!facts) return <p className="words-none">Say where it starts, which way it goes and where it ends.</p>;
  return (
    <>
      <p className="words-length">{sayWithUnit(facts.lengthM)}</p>
      {facts.bends !== '' && <p className="words-bends">{facts.bends}</p>}
      {/* Of gas that feeds nothing yet there is nothing to work out. */}
      {full && facts.service !== 'gas' && <RunWorkings facts={facts} />}
    </>
  );
}

function Working({ answer, full }: { readonly answer: Answer; readonly full: boolean }) {
  const [first] = answer.working;
  const limit = answer.limit === null ? '' : `limit ${answer.limit.toFixed(2)}, gas drop in ${answer.unit}`;
  return (
    <>
      <p className="words-working">
        {!full && first && <span className="how">{`${first.label}: ${sayUnit(first.how)}; `}</span>}
        {limit}
      </p>
      {answer.assumed.map((say, i) => (
        <p key={say} className="row-assumed">
          {i === 0 ? `assumed: ${say}` : say}
        </p>
      ))}
      {full && answer.working.length > 0 && (
        <>
          <h3 className="words-title">Working</h3>
          {keyed(answer.working, (row) => row.label).map(({ key, item }) => (
            <SumRow key={key} row={item} />
          ))}
        </>
      )}
    </>
  );
}

function Column({ column, unit }: { readonly column: AnswerColumn; readonly unit: string }) {
  const editor = useEditor();
  const { row, size } = column;
  const figures = row.figure === null ? "can't tell" : sayFigures(row.figure);
  const spoken = `${size}: ${figures} ${unit}, ${STATE_WORD[row.state]}${row.room === null ? '' : `, ${row.room}`}`;
  return (
    <button
      type="button"
      className={`column${row.chosen ? ' chosen' : ''} is-${row.state}`}
      aria-pressed={row.chosen}
      aria-label={spoken}
      onClick={() => {
        if (!row.chosen) choose(editor, row);
      }}
    >
      <span className="column-head">
        <span className="column-size">{size}</span>
        <StateMark state={row.state} />
      </span>
      <span className={`column-figures state-${row.state}`}>{figures}</span>
      <span className="column-bar">{row.bar && <Bar bar={row.bar} middle />}</span>
      <span className={`column-room state-${row.state}`}>{row.room ?? ''}</span>
    </button>
  );
}
