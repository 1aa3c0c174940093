import type { Plan } from '../../plan/plan.ts';
import { setOver } from '../app/screen.ts';
import { useEditorState } from '../app/use-session.ts';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { photosOf } from '../photos/photo-list.tsx';
import { answerTests, answerUnsafe } from '../records/say-records.ts';
import { TestsPart } from '../records/tests-part.tsx';
import { UnsafePart } from '../records/unsafe-part.tsx';
import { BasisPart } from './basis-part.tsx';
import { FloorsPart } from './floors-part.tsx';
import { Fold } from './fold.tsx';
import { answerHazards, Hazards, hazardsOf } from './hazards.tsx';
import { JobPhotos } from './job-photos.tsx';
import { HoldPoints, Permissions, Readings } from './lists.tsx';
import { OptionsPart } from './options-part.tsx';
import { answerHoldPoints, answerPermissions, answerReadings, sayDate } from './say-job.ts';
import '../panels/inspect/inspect.css';
import './job.css';

type Line = 'address' | 'customer' | 'owner' | 'note';
const WHO: readonly { readonly key: Line; readonly label: string; readonly rows: number }[] = [
  { key: 'address', label: 'Address', rows: 2 },
  { key: 'customer', label: 'Customer', rows: 1 },
  { key: 'owner', label: 'Legal owner', rows: 1 },
  { key: 'note', label: 'Notes', rows: 3 },
];

const oneLine = (text: string): string => text.split('\n')[0] ?? '';
const sayBasis = ({ gas, surveyDate }: Plan['basis']): string =>
  [gas === 'propane' ? 'propane' : 'natural gas', surveyDate === null ? '' : sayDate(surveyDate)]
    .filter((t) => t !== '')
    .join(', ');
const countOf = (n: number, one: string): string => `${n === 0 ? 'no' : n} ${n === 1 ? one : `${one}s`}`;

/** The job card: what is to be done, and everything that is settled or found out around it. */
export function JobChapter() {
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  const { basis, job } = plan;
  const setJob = (key: 'reason' | Line) => (value: string) => run('plan.rename', { job: { [key]: value } });
  return (
    <div className="inspect job-card">
      <TextBox
        label="Name of the job"
        value={plan.name}
        disabled={disabled}
        onSet={(name) => run('plan.rename', { name })}
      />
      <TextBox
        label="What is to be done, and why"
        rows={2}
        value={job.reason}
        disabled={disabled}
        onSet={setJob('reason')}
      />
      <div className="folds">
        <Fold id="who" title="Who and where" answer={oneLine(job.customer || job.address) || 'not told'}>
          {WHO.map(({ key, label, rows }) => (
            <TextBox key={key} label={label} rows={rows} value={job[key]} disabled={disabled} onSet={setJob(key)} />
          ))}
        </Fold>
        <Fold id="permissions" title="Permissions" answer={answerPermissions(job.permissions ?? [])}>
          <Permissions />
        </Fold>
        <Fold id="holds" title="Hold points" answer={answerHoldPoints(job.holdPoints ?? [])}>
          <HoldPoints />
        </Fold>
        <Fold id="hazards" title="Hazards" answer={answerHazards(hazardsOf(plan))}>
          <Hazards />
        </Fold>
        <Fold id="readings" title="As found" answer={answerReadings(job.readings ?? [])}>
          <Readings />
        </Fold>
        <Fold id="tests" title="Tests and records" answer={answerTests(job.tests ?? [])}>
          <TestsPart />
        </Fold>
        <Fold id="unsafe" title="Unsafe situations" answer={answerUnsafe(job.unsafe ?? [])}>
          <UnsafePart />
        </Fold>
        <Fold id="photos" title="Photos" answer={countOf(photosOf(plan).length, 'photo')}>
          <JobPhotos />
        </Fold>
        <Fold id="things" title="My things" answer={`${Object.keys(plan.things).length} in this job`}>
          <p className="fold-says">Boilers, cylinders and hobs typed once from their sheets, kept across jobs.</p>
          <div className="key-row">
            <button type="button" className="key slight" onClick={() => setOver('my-things')}>
              Open my things
            </button>
          </div>
        </Fold>
        <Fold id="basis" title="Basis of the sums" answer={sayBasis(basis)}>
          <BasisPart />
        </Fold>
        <Fold id="floors" title="Floors" answer={countOf(Object.keys(plan.storeys).length, 'floor')}>
          <FloorsPart />
        </Fold>
        <Fold
          id="options"
          title="Options"
          answer={Object.values(plan.options)
            .map((o) => o.name)
            .join(', ')}
        >
          <OptionsPart />
        </Fold>
      </div>
    </div>
  );
}
