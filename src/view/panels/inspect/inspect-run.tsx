import { JOINING_WORDS } from '../../../catalogue/joining-words.ts';
import { services } from '../../../catalogue/services.ts';
import { tubeKinds } from '../../../catalogue/tubes.ts';
import type { Joining } from '../../../plan/records/pipework.ts';
import { useEditorState, useReport } from '../../app/use-session.ts';
import { SeeIsometric } from '../../stage/see-isometric.tsx';
import { sayWithUnit } from '../rows/figures.ts';
import { RunWorkings } from '../run-workings.tsx';
import { ServiceTag } from '../service-tag.tsx';
import { ChoiceKeys } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { LegTable } from './leg-table.tsx';
import { SelectBox } from './select-box.tsx';
import { TextBox } from './text-box.tsx';
import { TubeKeys } from './tube-keys.tsx';
import { useChange } from './use-change.ts';

const TURNS = [
  { value: 'elbow', label: 'elbows' },
  { value: 'bend', label: 'bends' },
] as const;

/** A whole run: its size at once, how it is joined and how it turns, and its legs one by one. */
export function InspectRun({ id }: { readonly id: string }) {
  const run = useEditorState((s) => s.plan.runs[id]);
  const first = useEditorState((s) => Object.values(s.plan.legs).find((l) => l.run === id));
  const facts = useReport((s) => s.report?.runs.find((r) => r.run === id));
  const { disabled, run: does } = useChange();
  if (!run) return null;
  const set = (change: object): boolean => does('run.set', { run: id, change });
  const joinings = first ? (tubeKinds.get(first.tube.kind)?.joinings ?? []) : [];
  const joiningChoices = [
    ...joinings.map((j) => ({ value: j as string | null, label: JOINING_WORDS[j] })),
    { value: null as string | null, label: 'not told' },
  ];
  return (
    <>
      <div className="run-sum">
        <ServiceTag service={run.service} />
        <strong>{facts ? sayWithUnit(facts.lengthM) : (services.get(run.service)?.label ?? run.service)}</strong>
        {facts && <span>{facts.bends}</span>}
      </div>
      <LegTable run={id} />
      {facts && <RunWorkings facts={facts} />}
      {first && (
        <TubeKeys
          service={run.service}
          tube={first.tube}
          disabled={disabled}
          surveyed={run.option === null}
          legend="Size of the whole run"
          onChoose={(tube) => does('leg.size', { leg: first.id, tube, reach: 'run' })}
        />
      )}
      <ChoiceKeys<'elbow' | 'bend'>
        label="Turns"
        choices={TURNS}
        chosen={run.turns}
        disabled={disabled}
        onChoose={(turns) => set({ turns })}
      />
      <SelectBox
        label="Joined by"
        choices={joiningChoices}
        chosen={run.joining}
        disabled={disabled}
        onChoose={(joining) => set({ joining: joining as Joining | null })}
      />
      <TextBox label="Name" value={run.name} disabled={disabled} onSet={(name) => set({ name })} />
      <FateKeys id={id} surveyed={run.option === null} />
      <div className="key-row end-keys">
        <SeeIsometric run={id} />
        <DeleteKey of={{ map: 'runs', id }} word="run" />
      </div>
    </>
  );
}
