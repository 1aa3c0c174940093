import { anglesOf, KIND_LABELS, KIND_SAYS } from '../../editor/steps/step-ask.ts';
import { STEP_KINDS } from '../../network/steps/step-shape.ts';
import { Pick, Row, useInHand } from '../bench/tray-row.tsx';

const GOES = [
  { value: 'aside', label: 'as it is dragged' },
  { value: 'over', label: 'over' },
  { value: 'under', label: 'under' },
] as const;

/** The next step: what it is, which way a drag takes it, how steep its bends are. */
export function StepRows() {
  const [inHand, set] = useInHand();
  const { step } = inHand;
  return (
    <>
      <Row label="Step">
        {STEP_KINDS.map((kind) => (
          <Pick key={kind} on={kind === step.kind} onPick={() => set({ step: { ...step, kind } })}>
            {KIND_LABELS[kind].toLowerCase()}
          </Pick>
        ))}
      </Row>
      <Row label="Goes">
        {GOES.map(({ value, label }) => (
          <Pick key={value} on={value === step.goes} onPick={() => set({ step: { ...step, goes: value } })}>
            {label}
          </Pick>
        ))}
      </Row>
      <Row label="Angle">
        {anglesOf('bend').map((angleDeg) => (
          <Pick key={angleDeg} on={angleDeg === step.angleDeg} onPick={() => set({ step: { ...step, angleDeg } })}>
            {angleDeg} degrees
          </Pick>
        ))}
      </Row>
      <p className="tray-says">
        {KIND_SAYS[step.kind]} Press on the pipe where something lies across it and drag away; or tap it, and tell it by
        keys. {step.angleDeg < 45 ? 'A run made with fittings takes 45.' : ''}
      </p>
    </>
  );
}
