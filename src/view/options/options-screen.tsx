import { useMemo, useState } from 'react';
import { type Tally, tallyRows } from '../../report/tally.ts';
import { Dialog } from '../app/dialog.tsx';
import { openChapter, setOver } from '../app/screen.ts';
import { useEditorState } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { casesOf } from '../strip/cases.ts';
import { CompareTable, isSame } from './compare-table.tsx';
import { type Column, caseId, useTallies } from './use-compare.ts';
import './compare.css';

const nothing = (c: Column): Tally => ({ case: c.chosen, figures: [] });

/** Before the work and all options side by side, worked out while it is open. */
export default function OptionsScreen() {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const keys = useMemo(() => casesOf(plan), [plan]);
  const cases = useMemo(() => keys.map((k) => k.chosen), [keys]);
  const { columns, failed } = useTallies(cases);
  const [only, setOnly] = useState(false);
  const rows = tallyRows(columns.map((c) => c.tally ?? nothing(c)));
  const several = cases.length > 2;
  const shown = only && several ? rows.filter((r) => !isSame(r, columns)) : rows;
  const differ = (): void => {
    setOver(null);
    openChapter('options');
  };
  return (
    <Dialog title="Options side by side">
      <div className="compare">
        <div className="compare-keys">
          {several && (
            <RadioKeys
              legend="Which figures"
              legendHidden
              choices={[
                { value: false, label: 'All figures' },
                { value: true, label: 'Only those that differ' },
              ]}
              chosen={only}
              onChoose={setOnly}
            />
          )}
          <button type="button" className="key" onClick={differ}>
            What differs, in words
          </button>
          <button type="button" className="key" onClick={() => window.print()}>
            Print
          </button>
        </div>
        <p className="compare-name">{plan.name}</p>
        {failed !== null && <p className="field-wrong">It could not be worked out: {failed}</p>}
        {rows.length === 0 && failed === null && <p>Working it out.</p>}
        {rows.length > 0 && (
          <section className="compare-scroll" aria-label="Figures of each option">
            <CompareTable rows={shown} columns={columns} cases={keys} looked={caseId(chosen)} />
          </section>
        )}
        <p className="compare-caution">
          Less is called better in each row by itself, and only where it surely is. Limits compared, not approved: the
          registered engineer decides.
        </p>
      </div>
    </Dialog>
  );
}
