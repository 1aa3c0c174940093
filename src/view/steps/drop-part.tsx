import { useState } from 'react';
import { floorZ, resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { useEditorState } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { sameHeight, sayHeight } from '../ribbon/levels.ts';
import { useRibbon } from '../ribbon/use-ribbon.ts';
import './steps.css';

/** Only the levels of the ribbon are wanted, which do not hang on its scale. */
const MM_OF_SECTION = 1000;
const MM_PER_PAPER_MM = 50;

/** A place along a leg from which the pipe goes on at another height. */
export function DropPart({ leg }: { readonly leg: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="field-group" onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <span className="group-name">Drop or rise here</span>
        <span className="group-told">to a height</span>
        <KickTurn />
      </summary>
      {open && <DropForm leg={leg} />}
    </details>
  );
}

function DropForm({ leg }: { readonly leg: string }) {
  const plan = useEditorState((s) => s.plan);
  const first = useEditorState((s) => s.inHand.height);
  const { levels } = useRibbon(MM_OF_SECTION, MM_PER_PAPER_MM);
  const { disabled, run } = useChange();
  const [height, setHeight] = useState<HeightRef>(first);
  const [alongMm, setAlong] = useState<number | null>(null);
  const [toward, setToward] = useState<'a' | 'b'>('b');
  const record = plan.legs[leg];
  const [a, b] = [record && plan.nodes[record.a], record && plan.nodes[record.b]];
  const [pa, pb] = [a && nodePlace(plan, a), b && nodePlace(plan, b)];
  if (!pa || !pb) return null;
  const { storey } = pa;
  const lengthMm = distance3(pa.at, pb.at);
  const along = alongMm ?? Math.round(lengthMm / 2);
  const z = resolveHeight(plan, height)?.z;
  const floor = floorZ(plan, storey) ?? 0;
  const here = pa.at.z + ((pb.at.z - pa.at.z) * along) / lengthMm;
  const by = z === undefined ? 0 : Math.round(z - here);
  const chosen = levels.findIndex((l) => sameHeight(l.height, height));
  return (
    <div className="group-fields">
      <NumberBox
        label="Where, from where the leg starts"
        value={along}
        unit="mm"
        min={0}
        max={lengthMm}
        onSet={(mm) => {
          if (typeof mm !== 'number') return false;
          setAlong(mm);
          return true;
        }}
      />
      <div className="choices">
        <button type="button" className="key slight" onClick={() => setAlong(0)}>
          at its start
        </button>
        <button type="button" className="key slight" onClick={() => setAlong(Math.round(lengthMm / 2))}>
          half way
        </button>
      </div>
      <ChoiceKeys
        label="To"
        choices={levels.map((l, value) => ({ value, label: `${l.label} ${Math.round(l.z - floor)}` }))}
        chosen={chosen}
        onChoose={(i) => {
          const level = levels[i];
          if (level) setHeight(level.height);
        }}
      />
      <NumberBox
        label="Off floor"
        value={z === undefined ? null : Math.round(z - floor)}
        unit="mm"
        onSet={(mm) => {
          if (typeof mm !== 'number') return false;
          setHeight({ from: 'floor', of: storey, mm });
          return true;
        }}
      />
      <ChoiceKeys
        label="What goes to it"
        choices={[
          { value: 'b', label: 'the pipe from here on' },
          { value: 'a', label: 'the pipe up to here' },
        ]}
        chosen={toward}
        onChoose={setToward}
      />
      <p className="step-says" aria-live="polite">
        {by === 0
          ? 'It is at that height there.'
          : `${by > 0 ? 'Up' : 'Down'} ${Math.abs(by)}, ${sayHeight(plan, height)}.`}
      </p>
      <button
        type="button"
        className="key primary"
        aria-disabled={disabled || by === 0}
        onClick={() => {
          if (!disabled && by !== 0) run('leg.drop', { leg, alongMm: along, toward, height });
        }}
      >
        {by > 0 ? 'Rise here' : 'Drop here'}
      </button>
    </div>
  );
}
