import { ChoiceKeys, YES_NO } from '../choice-keys.tsx';
import { NumberBox } from '../number-box.tsx';
import type { VoidPart } from './void-part.ts';

/** Whether air gets through: what gas in it hangs on. */
export function VoidAir({ record, disabled, set }: VoidPart) {
  const { ventilated, sealed, ventAreaCm2 } = record;
  return (
    <>
      <ChoiceKeys
        label="Ventilated?"
        choices={YES_NO}
        chosen={ventilated}
        disabled={disabled}
        onChoose={(now) => set({ ventilated: now })}
      />
      {ventilated === true && (
        <NumberBox
          label="Free area of its vents"
          value={ventAreaCm2 ?? null}
          unit="cm²"
          min={0}
          empty
          help="All openings together, as measured."
          disabled={disabled}
          onSet={(v) => set({ ventAreaCm2: typeof v === 'number' ? v : null })}
        />
      )}
      <ChoiceKeys
        label="Sealed?"
        choices={YES_NO}
        chosen={sealed ?? null}
        help="An acoustic or taped ceiling, or a box with no gaps: what leaks in it stays in it."
        disabled={disabled}
        onChoose={(now) => set({ sealed: now })}
      />
    </>
  );
}
