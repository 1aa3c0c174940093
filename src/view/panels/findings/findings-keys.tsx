import { useStore } from 'zustand';
import type { Finding } from '../../../report/finding.ts';
import { FindingMark, OUTCOME_WORD } from '../../look/mark.tsx';
import { RadioKeys } from '../../look/radio-keys.tsx';
import { findingsLook, groupBy, toggleOutcome } from './findings-look.ts';
import { countOutcomes, type GroupBy } from './group-findings.ts';

const BY: readonly { readonly value: GroupBy; readonly label: string }[] = [
  { value: 'worst', label: 'Worst first' },
  { value: 'place', label: 'By place' },
  { value: 'topic', label: 'By topic' },
];

/** How the findings are put together, and which kinds of them are shown. */
export function FindingsKeys({ findings }: { readonly findings: readonly Finding[] }) {
  const { by, hidden } = useStore(findingsLook);
  return (
    <div className="findings-keys">
      <RadioKeys
        legend="Put together"
        legendHidden
        className="choices by-keys"
        choices={BY}
        chosen={by}
        onChoose={groupBy}
      />
      <fieldset className="plain-set">
        <legend className="out-of-sight">Shown</legend>
        <div className="kind-keys">
          {countOutcomes(findings).map(({ outcome, count }) => (
            <button
              key={outcome}
              type="button"
              className="kind-key"
              aria-pressed={!hidden.has(outcome)}
              aria-label={`${OUTCOME_WORD[outcome]}, ${count}`}
              onClick={() => toggleOutcome(outcome)}
            >
              <FindingMark outcome={outcome} size={22} hidden />
              <span>{count}</span>
            </button>
          ))}
        </div>
      </fieldset>
    </div>
  );
}
