import { useEffect, useMemo, useState } from 'react';
import { workPlane } from '../../editor/input/work-plane.ts';
import { pipesAcross } from '../../editor/steps/obstacle.ts';
import { hasHeadroom, type Proposal, propose, type Told } from '../../editor/steps/proposal.ts';
import { anglesOf, KIND_LABELS, KIND_SAYS } from '../../editor/steps/step-ask.ts';
import { type Way, waysAcross } from '../../editor/steps/ways.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import { STEP_KINDS, type StepKind } from '../../network/steps/step-shape.ts';
import type { Plan } from '../../plan/plan.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import './steps.css';

const KINDS = STEP_KINDS.map((value) => ({ value, label: KIND_LABELS[value] }));
const MIDDLE = -1;

/** A step told by keys, for whoever does not drag: what it is, what it passes, which way, how far. */
export function StepPart({ leg }: { readonly leg: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="field-group" onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <span className="group-name">Step</span>
        <span className="group-told">set, passover, kick or swan neck</span>
        <KickTurn />
      </summary>
      {open && <StepForm leg={leg} />}
    </details>
  );
}

interface Stepped {
  readonly ways: readonly Way[];
  readonly lengthMm: number;
}

function legWays(plan: Plan, leg: string): Stepped | null {
  const record = plan.legs[leg];
  const [a, b] = [record && plan.nodes[record.a], record && plan.nodes[record.b]];
  const [pa, pb] = [a && nodePlace(plan, a)?.at, b && nodePlace(plan, b)?.at];
  const plane = workPlane(plan, { kind: 'plan', storey: '' });
  return pa && pb && plane ? { ways: waysAcross(pa, pb, plane), lengthMm: distance3(pa, pb) } : null;
}

function StepForm({ leg }: { readonly leg: string }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const inHand = useEditorState((s) => s.inHand.step);
  const { disabled, run } = useChange();
  const across = useMemo(() => pipesAcross(plan, leg), [plan, leg]);
  const lies = useMemo(() => legWays(plan, leg), [plan, leg]);
  const turns = plan.runs[plan.legs[leg]?.run ?? '']?.turns ?? 'elbow';
  const angles = anglesOf(turns);
  const [kind, setKind] = useState<StepKind>(inHand.kind);
  const [passes, setPasses] = useState(across.length > 0 ? 0 : MIDDLE);
  const [wayId, setWayId] = useState<string | null>(null);
  const [offsetMm, setOffset] = useState<number | null>(null);
  const [alongMm, setAlong] = useState<number | null>(null);
  const [angle, setAngle] = useState(
    angles.includes(inHand.angleDeg) ? inHand.angleDeg : (angles[0] ?? inHand.angleDeg),
  );
  const [flipped, setFlipped] = useState(false);
  useEffect(() => () => editor.showDraft(null), [editor]);
  if (!lies) return null;
  const obstacle = across[passes] ?? null;
  const clearing = (w: Way): boolean => {
    const found = obstacle?.clear(w.way, angle);
    return found != null && found.offsetMm > 0 && hasHeadroom(plan, leg, w, found.offsetMm);
  };
  const way = lies.ways.find((w) => w.id === wayId) ?? lies.ways.find(clearing) ?? lies.ways[0];
  if (!way) return null;
  const told: Told = {
    leg,
    alongMm: obstacle?.alongMm ?? alongMm ?? lies.lengthMm / 2,
    kind,
    way,
    offsetMm,
    overMm: null,
    angleDeg: angle,
    flipped,
    obstacle,
  };
  const proposal = propose(plan, told);
  const able = proposal?.laid.ok === true && !disabled;
  return (
    <div className="group-fields">
      <ChoiceKeys label="Kind" choices={KINDS} chosen={kind} help={KIND_SAYS[kind]} onChoose={setKind} />
      {across.length > 0 && (
        <ChoiceKeys
          label="Passes"
          choices={[
            ...across.map((o, value) => ({ value, label: o.name })),
            { value: MIDDLE, label: 'nothing that is drawn' },
          ]}
          chosen={passes}
          onChoose={setPasses}
        />
      )}
      {obstacle === null && (
        <NumberBox
          label="Middle of it, from where the leg starts"
          value={alongMm ?? Math.round(lies.lengthMm / 2)}
          unit="mm"
          min={1}
          max={lies.lengthMm}
          onSet={(mm) => taken(mm, setAlong)}
        />
      )}
      <ChoiceKeys
        label="Goes"
        choices={lies.ways.map((w) => ({ value: w.id, label: w.label }))}
        chosen={way.id}
        onChoose={setWayId}
      />
      <NumberBox
        label="Offset, centre to centre"
        value={offsetMm ?? Math.round(offsetOf(proposal))}
        unit="mm"
        min={1}
        max={10_000}
        help={proposal?.leastMm == null ? undefined : `At least ${proposal.leastMm} to clear ${obstacle?.name ?? 'it'}`}
        onSet={(mm) => taken(mm, setOffset)}
      />
      <ChoiceKeys
        label="Angle of a bend"
        choices={angles.map((value) => ({ value, label: `${value} degrees` }))}
        chosen={angle}
        onChoose={setAngle}
      />
      {(kind === 'set' || kind === 'kick') && (
        <ChoiceKeys
          label="What is shifted"
          choices={[
            { value: false, label: 'the side that is free' },
            { value: true, label: 'the other side' },
          ]}
          chosen={flipped}
          onChoose={setFlipped}
        />
      )}
      <p className={able || disabled ? 'step-says' : 'step-says wrong'} aria-live="polite">
        {proposal?.laid.ok === false ? proposal.laid.why : `${proposal?.figures ?? ''}.${passing(proposal)}`}
      </p>
      <button
        type="button"
        className="key primary"
        aria-disabled={!able}
        onPointerEnter={() => show(editor, proposal)}
        onPointerLeave={() => editor.showDraft(null)}
        onFocus={() => show(editor, proposal)}
        onBlur={() => editor.showDraft(null)}
        onClick={() => {
          editor.showDraft(null);
          if (able && proposal) run('leg.step', proposal.step);
        }}
      >
        Lay it
      </button>
    </div>
  );
}

function taken(mm: unknown, set: (mm: number) => void): boolean {
  if (typeof mm !== 'number') return false;
  set(mm);
  return true;
}

const passing = (proposal: Proposal | null): string => (proposal?.word ? ` Goes ${proposal.word}.` : '');

function offsetOf(proposal: Proposal | null): number {
  const by = proposal?.step.offset;
  return by ? Math.hypot(by.x, by.y, by.z) : 0;
}

/** On the drawing while the key is pointed at. */
function show(editor: ReturnType<typeof useEditor>, proposal: Proposal | null): void {
  if (!proposal?.laid.ok) return;
  const { plan, touched } = proposal.laid;
  const { panes } = editor.store.getState();
  editor.showDraft({ pane: panes.active, lines: [], marks: [], labels: [], moved: touched, plan });
}
