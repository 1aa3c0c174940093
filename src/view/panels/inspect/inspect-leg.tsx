import { useState } from 'react';
import { lengthBetween } from '../../../geometry/places.ts';
import { useEditor, useEditorState, useReport } from '../../app/use-session.ts';
import { RadioKeys } from '../../look/radio-keys.tsx';
import { SeeIsometric } from '../../stage/see-isometric.tsx';
import { DropPart } from '../../steps/drop-part.tsx';
import { StepPart } from '../../steps/step-part.tsx';
import { sayLength } from '../runs-chapter.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { LegFactRows } from './leg-facts.tsx';
import { NumberBox } from './number-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TubeKeys } from './tube-keys.tsx';
import { useChange } from './use-change.ts';

const REACHES = [
  { value: 'leg', label: 'this leg' },
  { value: 'onward', label: 'from here on' },
  { value: 'run', label: 'whole run' },
] as const;
type Reach = (typeof REACHES)[number]['value'];

/** One straight piece: its length, its size and how far a change of size reaches, its lagging. */
export function InspectLeg({ id }: { readonly id: string }) {
  const editor = useEditor();
  const leg = useEditorState((s) => s.plan.legs[id]);
  const run = useEditorState((s) => s.plan.runs[leg?.run ?? '']);
  const plan = useEditorState((s) => s.plan);
  const facts = useReport((s) => s.report?.legs.find((l) => l.leg === id));
  const [reach, setReach] = useState<Reach>('leg');
  const change = useChange();
  if (!leg || !run) return null;
  const a = plan.nodes[leg.a];
  const b = plan.nodes[leg.b];
  const length = a && b ? lengthBetween(plan, a, b) : undefined;
  const unsure = length !== undefined && length.hi - length.lo > 1;
  return (
    <>
      <NumberBox
        label="Length"
        value={length?.mm ?? null}
        unit="mm"
        min={1}
        max={100_000}
        help={unsure ? `Assumed: ${sayLength(length)}` : undefined}
        disabled={change.disabled}
        onSet={(mm) => typeof mm === 'number' && change.run('leg.length', { leg: id, lengthMm: mm })}
      />
      {facts && <LegFactRows facts={facts} />}
      <RadioKeys<Reach>
        legend="Size and lagging changed on"
        className="three-keys"
        choices={REACHES}
        chosen={reach}
        onChoose={setReach}
      />
      <TubeKeys
        service={run.service}
        tube={leg.tube}
        disabled={change.disabled}
        surveyed={leg.option === null}
        onChoose={(tube) => change.run('leg.size', { leg: id, tube, reach })}
      />
      <NumberBox
        label="Lagging"
        value={leg.insulation?.thicknessMm ?? null}
        unit="mm"
        min={0}
        max={100}
        empty
        disabled={change.disabled}
        onSet={(mm) => {
          const insulation =
            typeof mm === 'number' && mm > 0 ? { kind: leg.insulation?.kind ?? 'foam', thicknessMm: mm } : null;
          return change.run('leg.insulate', { leg: id, insulation, reach });
        }}
      />
      <div className="many-folds">
        <StepPart key={`step ${id}`} leg={id} />
        <DropPart key={`drop ${id}`} leg={id} />
      </div>
      <SurenessKeys
        sureness={leg.sureness}
        disabled={change.disabled}
        onChoose={(sureness) => change.run('leg.set', { leg: id, change: { sureness } })}
      />
      <FateKeys id={id} surveyed={leg.option === null} />
      <div className="key-row end-keys">
        <button type="button" className="key slight" onClick={() => editor.select([{ map: 'runs', id: run.id }])}>
          Choose the whole run
        </button>
        <SeeIsometric run={run.id} />
        <DeleteKey of={{ map: 'legs', id }} word="leg" />
      </div>
    </>
  );
}
