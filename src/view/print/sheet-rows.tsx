import { useMemo } from 'react';
import type { SheetChoice, SheetJob } from '../../drawing/sheet/sheet.ts';
import { isOn, type PrintChoices, scaleNow, scalesOf } from './print-choices.ts';

interface Props {
  readonly job: SheetJob;
  readonly all: readonly SheetChoice[];
  readonly choices: PrintChoices;
  readonly onChoose: (change: Partial<PrintChoices>) => void;
}

/** Every sheet there may be: on or off, and at which scale. */
export function SheetRows({ job, all, choices, onChoose }: Props) {
  return (
    <fieldset className="plain-set">
      <legend className="field-label">Sheets</legend>
      <ul className="print-rows">
        {all.map((c) => (
          <li key={c.key}>
            <label className="print-row">
              <input
                type="checkbox"
                checked={isOn(choices, c)}
                onChange={(e) => onChoose({ on: { ...choices.on, [c.key]: e.target.checked } })}
              />
              <span>{c.label}</span>
            </label>
            {c.scales.length > 0 && isOn(choices, c) && (
              <ScaleBox
                job={job}
                choice={c}
                choices={choices}
                onScale={(scale) => onChoose({ scales: { ...choices.scales, [c.key]: scale } })}
              />
            )}
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

interface ScaleProps {
  readonly job: SheetJob;
  readonly choice: SheetChoice;
  readonly choices: PrintChoices;
  readonly onScale: (scale: number) => void;
}

/** A drawing is never fitted to the page: a scale at which it has no room is parted over more sheets, and says so. */
function ScaleBox({ job, choice, choices, onScale }: ScaleProps) {
  const scales = useMemo(() => scalesOf(job, choice, choices), [job, choice, choices]);
  const now = useMemo(() => scaleNow(job, choice, choices), [job, choice, choices]);
  const parts = scales.find((s) => s.scale === now)?.sheets ?? 1;
  const whole = scales.find((s) => s.sheets === 1);
  return (
    <>
      <span className="field-box print-scale">
        <select
          aria-label={`Scale of ${choice.label}`}
          value={now ?? ''}
          onChange={(e) => onScale(Number(e.target.value))}
        >
          {scales.map(({ scale, sheets }) => (
            <option key={scale} value={scale}>
              {sheets === 1 ? `1:${scale}` : `1:${scale}, ${sheets} sheets`}
            </option>
          ))}
        </select>
      </span>
      {parts > 1 && (
        <p className="field-help print-parted">
          Parted over {parts} sheets with match lines.
          {whole && ` At 1:${whole.scale} it stands on one.`}
        </p>
      )}
    </>
  );
}
