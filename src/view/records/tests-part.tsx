import { useMemo } from 'react';
import { useStore } from 'zustand';
import { TEST_KINDS, type TestKind } from '../../catalogue/test-kinds.ts';
import type { TestRecord } from '../../plan/records/basis.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { halfTold, tellHalf } from '../job/half-told.ts';
import type { Told } from '../job/line-form.tsx';
import { SaidRow } from '../job/said-row.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { keyed } from '../panels/keyed.ts';
import { proposedEdition, readExpected } from './expected.ts';
import { sayTest, today } from './say-records.ts';
import { TestForm } from './test-form.tsx';
import { blankRecord, toldOf } from './test-told.ts';
import './records.css';

const NONE: readonly TestRecord[] = [];
const KIND = 'kind';
const isFor = (test: TestRecord, kind: TestKind, part: string): boolean => test.kind === kind.id && test.part === part;

/** Tests that were written down, those the drawing asks for, and keys for any other. */
export function TestsPart() {
  const tests = useEditorState((s) => s.plan.job.tests) ?? NONE;
  const section = useReport((s) => s.report?.sections.find((one) => one.id === 'tests'));
  const expected = useMemo(() => readExpected(section), [section]);
  const { disabled, run } = useChange();
  const half = useEditorState((s) => `${s.plan.id} tests`);
  const known = useStore(halfTold, (s) => s.lines.get(half) ?? null);
  const wasOf = (at: number | null): TestRecord | null => (at === null ? null : (tests[at] ?? null));
  const start = (kind: string, told: Told): Told => ({ ...told, [KIND]: kind });
  // A record that has become another one since is not written over.
  const was = known === null ? null : wasOf(known.at);
  const stale =
    known !== null &&
    known.at !== null &&
    (!was || JSON.stringify(start(was.kind, toldOf(was))) !== JSON.stringify(known.start));
  const editing = stale ? null : known;
  const leave = (): void => tellHalf(half, null);
  const begin = (at: number | null, test: TestRecord): void => {
    if (disabled) return;
    const told = start(test.kind, toldOf(test));
    tellHalf(half, { at, start: told, typed: told });
  };
  const fresh = (kind: TestKind, part: string): void =>
    begin(null, blankRecord(kind, part, proposedEdition(expected.editions, today()), today()));
  const form = () => {
    if (editing === null) return null;
    const { at } = editing;
    const kind = TEST_KINDS.find((k) => k.id === editing.start[KIND]);
    const record = was ?? (kind ? blankRecord(kind, '', '', today()) : null);
    if (!record) return null;
    return (
      <>
        <h3 className="record-title">{sayTest(record).what}</h3>
        <TestForm
          was={record}
          half={editing}
          expected={expected}
          onType={(typed) => tellHalf(half, { ...editing, typed })}
          onKeep={(line) => run('test.set', at === null ? { line } : { at, line })}
          onLeave={leave}
          {...(at === null
            ? {}
            : {
                onDelete: () => {
                  if (run('jobLine.delete', { list: 'tests', at })) leave();
                },
              })}
        />
      </>
    );
  };
  const due = expected.due.filter((d) => !tests.some((t) => isFor(t, d.kind, d.part)));
  return (
    <>
      {tests.length === 0 && editing === null && (
        <p className="fold-says">
          Nothing is written down yet. Each blank shows what the drawing expects; what is found is yours to judge.
        </p>
      )}
      <ul className="job-lines">
        {keyed(tests, (t) => `${t.kind} ${t.part}`).map(({ key, item }, at) => (
          <li key={key}>
            {editing?.at === at ? (
              form()
            ) : (
              <SaidRow said={sayTest(item)} disabled={disabled} onOpen={() => begin(at, item)} />
            )}
          </li>
        ))}
      </ul>
      {editing?.at === null && form()}
      {editing === null && (
        <>
          {due.length > 0 && (
            <>
              <h3 className="record-title">Asked for by the drawing</h3>
              <ul className="job-lines">
                {due.map((d) => (
                  <li key={`${d.kind.id} ${d.part}`}>
                    <SaidRow
                      said={{ what: d.kind.title, figure: 'not written', more: d.part, open: true }}
                      disabled={disabled}
                      onOpen={() => fresh(d.kind, d.part)}
                    />
                  </li>
                ))}
              </ul>
            </>
          )}
          <h3 className="record-title">Another record</h3>
          <div className="key-row">
            {TEST_KINDS.map((k) => (
              <button
                key={k.id}
                type="button"
                className="key slight"
                aria-disabled={disabled}
                onClick={() => fresh(k, '')}
              >
                {k.title}
              </button>
            ))}
          </div>
        </>
      )}
    </>
  );
}
