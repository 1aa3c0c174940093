import { testKind } from '../../catalogue/test-kinds.ts';
import type { TestRecord } from '../../plan/records/basis.ts';
import { useEditorState } from '../app/use-session.ts';
import type { HalfTold } from '../job/half-told.ts';
import { LineForm, type Told } from '../job/line-form.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { readNumber } from '../panels/inspect/typed-value.ts';
import { type EditionReach, type Expected, editionsOn, proposedEdition } from './expected.ts';
import { Stopwatch } from './stopwatch.tsx';
import { asksOf, figureKey, recordOf } from './test-told.ts';
import { timedM3PerH } from './timed-rate.ts';

interface Props {
  readonly was: TestRecord;
  readonly half: HalfTold;
  readonly expected: Expected;
  readonly onType: (typed: Told) => void;
  readonly onKeep: (test: TestRecord) => boolean;
  readonly onLeave: () => void;
  readonly onDelete?: () => void;
}

const dayOf = (told: Told): string | null => (typeof told.on === 'string' && told.on !== '' ? told.on : null);

/** A day that is typed proposes its edition, unless the engineer has chosen another. */
function withEdition(before: Told, next: Told, editions: readonly EditionReach[]): Told {
  if (before.on === next.on) return next;
  const chosen = before.edition !== '' && before.edition !== proposedEdition(editions, dayOf(before));
  return chosen ? next : { ...next, edition: proposedEdition(editions, dayOf(next)) };
}

/** One record: its blanks with what is expected beside them. */
export function TestForm({ was, half, expected, onType, onKeep, onLeave, onDelete }: Props) {
  const readings = useEditorState((s) => s.plan.job.readings) ?? [];
  const { typed } = half;
  const kind = testKind(was.kind);
  const byEdition = kind?.byEdition === true;
  const { editions } = expected;
  const radio = byEdition && editions.length > 0;
  const seconds = figureKey('seconds');
  const timing = (
    <>
      <Stopwatch onStop={(s) => onType({ ...typed, [seconds]: s })} />
      <Rate typed={typed} />
    </>
  );
  const editionKeys = (
    <EditionKeys typed={typed} editions={editions} onChoose={(edition) => onType({ ...typed, edition })} />
  );
  const under =
    was.kind === 'gas-rate' ? { key: seconds, shows: timing } : radio ? { key: 'on', shows: editionKeys } : null;
  const set = (next: Told): void => onType(radio ? withEdition(typed, next, editions) : next);
  return (
    <LineForm
      asks={asksOf(was.kind, typed, expected, readings, byEdition && !radio)}
      typed={typed}
      onType={set}
      fresh={half.at === null}
      keepWord="Keep"
      onKeep={(told) => onKeep(recordOf(was, told))}
      onLeave={onLeave}
      {...(onDelete === undefined ? {} : { onDelete })}
      {...(under === null ? {} : { under })}
    />
  );
}

interface EditionProps {
  readonly typed: Told;
  readonly editions: readonly EditionReach[];
  readonly onChoose: (edition: string) => void;
}

function EditionKeys({ typed, editions, onChoose }: EditionProps) {
  const day = dayOf(typed);
  const open = editionsOn(editions, day);
  const may =
    open.length > 1 ? 'Either may be worked to on that day.' : `On that day: edition ${open[0]?.id ?? 'not known'}.`;
  return (
    <div>
      <RadioKeys
        legend="Edition worked to"
        choices={editions.map((e) => ({ value: e.id, label: `Edition ${e.id}` }))}
        chosen={typeof typed.edition === 'string' ? typed.edition : ''}
        onChoose={onChoose}
      />
      <p className="field-help">
        {day === null ? 'The day of the test decides it.' : may}{' '}
        {editions.map((e) => `Edition ${e.id} ${e.say}.`).join(' ')}
      </p>
    </div>
  );
}

function Rate({ typed }: { readonly typed: Told }) {
  const number = (key: string): number | null => {
    const value = typed[figureKey(key)];
    if (typeof value === 'number') return value;
    const read = typeof value === 'string' ? readNumber(value, { empty: true }) : null;
    return read?.ok && typeof read.value === 'number' ? read.value : null;
  };
  const rate = timedM3PerH(number('volumeM3'), number('volumeFt3'), number('seconds'));
  return (
    <p className="record-rate" role="status">
      {rate === null
        ? 'Type what the meter passed and the seconds it took, with this appliance alone burning at its highest rate.'
        : `That is ${rate.toFixed(2)} m3/h.`}
    </p>
  );
}
