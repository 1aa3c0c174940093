import { NumberBox } from '../number-box.tsx';
import { SelectBox } from '../select-box.tsx';
import { useChange } from '../use-change.ts';
import { useVoidTask, type VoidPart } from './void-part.ts';

const WHATS = [
  { value: null, label: 'a joist' },
  { value: 'missing', label: 'missing' },
  { value: 'doubled', label: 'doubled' },
  { value: 'trimmer', label: 'trimmer' },
] as const;

/** Joists that are not like the others, one to a line. */
export function VoidExceptions({ record, disabled }: VoidPart) {
  const { run } = useChange();
  const start = useVoidTask();
  const exceptions = [...(record.joists?.exceptions ?? [])].sort((a, b) => a.index - b.index);
  const change = (index: number, to: { offsetMm: number; what: string } | null): boolean =>
    run('void.joist', { void: record.id, index, change: to });
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">Single joists</legend>
      {exceptions.map(({ index, offsetMm, what }) => {
        const own = WHATS.some((w) => w.value === what) || what === '' ? [] : [{ value: what, label: what }];
        return (
          <div className="void-layer" key={index}>
            <SelectBox
              label={`Joist ${index + 1}`}
              choices={[...WHATS, ...own]}
              chosen={what === '' ? null : what}
              disabled={disabled}
              onChoose={(now) => change(index, { offsetMm, what: now ?? '' })}
            />
            <NumberBox
              label="Moved by"
              value={offsetMm}
              unit="mm"
              disabled={disabled}
              onSet={(v) => typeof v === 'number' && change(index, { offsetMm: v, what })}
            />
            <button
              type="button"
              className="key slight"
              aria-label={`Joist ${index + 1} like the others`}
              aria-disabled={disabled}
              onClick={() => !disabled && change(index, null)}
            >
              reset
            </button>
          </div>
        );
      })}
      <button type="button" className="key slight" aria-disabled={disabled} onClick={() => !disabled && start('joist')}>
        Tap a joist
      </button>
    </fieldset>
  );
}
