import { READING_KINDS } from '../../catalogue/reading-kinds.ts';
import { useEditorState } from '../app/use-session.ts';
import { JobLines } from './job-lines.tsx';
import type { Ask, Told } from './line-form.tsx';
import { sayHoldPoint, sayPermission, sayReading } from './say-job.ts';

const PERMISSION: readonly Ask[] = [
  { key: 'what', label: 'Leave for what', kind: 'text', wanted: true },
  { key: 'from', label: 'From whom', kind: 'text' },
  { key: 'asked', label: 'Asked on', kind: 'date' },
  { key: 'given', label: 'Given on', kind: 'date' },
  { key: 'note', label: 'Note', kind: 'long' },
];
const permission = (what: string): Told => ({ what, from: '', asked: null, given: null, note: '' });

/** Leave that the work needs from somebody else. */
export function Permissions() {
  const lines = useEditorState((s) => s.plan.job.permissions);
  return (
    <JobLines
      list="permissions"
      command="permission.set"
      lines={lines ?? []}
      asks={PERMISSION}
      say={sayPermission}
      empty="Nobody is to be asked yet. A flat, a shared wall or passage, a listed house: somebody else has a say in it."
      starts={[{ word: 'Add a permission', told: permission('') }]}
    />
  );
}

const HOLD: readonly Ask[] = [
  { key: 'what', label: 'What must be decided or done', kind: 'text', wanted: true },
  { key: 'before', label: 'Before', kind: 'text' },
  { key: 'on', label: 'On', kind: 'date' },
  { key: 'owner', label: 'Whose it is', kind: 'text' },
  { key: 'done', label: 'Done', kind: 'tick' },
];
const hold = (before: string): Told => ({ what: '', before, on: null, owner: '', done: false });

/** What cannot be done any more once the floor is poured or the wall is plastered. */
export function HoldPoints() {
  const lines = useEditorState((s) => s.plan.job.holdPoints);
  return (
    <JobLines
      list="holdPoints"
      command="holdPoint.set"
      lines={lines ?? []}
      asks={HOLD}
      say={sayHoldPoint}
      empty="Nothing waits for a day. Pipe under a slab must be settled before the pour, pipe in a wall before the plaster."
      starts={[
        { word: 'Before the pour', told: hold('the pour') },
        { word: 'Before the plaster', told: hold('the plaster') },
        { word: 'Before another day', told: hold('') },
      ]}
    />
  );
}

const READING: readonly Ask[] = [
  { key: 'what', label: 'What was read', kind: 'text', wanted: true },
  { key: 'value', label: 'Value', kind: 'number', half: true, help: 'Empty: still to be read.' },
  { key: 'unit', label: 'Unit', kind: 'text', half: true },
  { key: 'place', label: 'Where', kind: 'text' },
  { key: 'on', label: 'Read on', kind: 'date' },
  { key: 'note', label: 'Note', kind: 'long' },
];

/** What was found on the day: compared with after the work. */
export function Readings() {
  const lines = useEditorState((s) => s.plan.job.readings);
  const surveyed = useEditorState((s) => s.plan.basis.surveyDate);
  const told = (kind: string, what: string, unit: string, place: string): Told => ({
    what,
    value: null,
    unit,
    on: surveyed,
    place,
    note: '',
    ...(kind === '' ? {} : { kind }),
  });
  return (
    <JobLines
      list="readings"
      command="reading.set"
      lines={lines ?? []}
      asks={READING}
      say={sayReading}
      empty="Nothing was read yet. What was found before the work is what the work is held against."
      starts={[
        ...READING_KINDS.map((k) => ({ word: k.word, told: told(k.id, k.what, k.unit, k.place) })),
        { word: 'Own reading', told: told('', '', '', '') },
      ]}
    />
  );
}
