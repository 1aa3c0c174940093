import { endEdges, spanRange } from '../../../../drawing/building/span-items.ts';
import { grid } from '../../../../geometry/joist-lines.ts';
import { NumberBox } from '../number-box.tsx';
import { useChange } from '../use-change.ts';
import { useVoidTask, type VoidPart } from './void-part.ts';

/** What the joists lie on, and so how far they span: the middle third and the ends hang on it. */
export function VoidBearings({ record, disabled, set }: VoidPart) {
  const { run } = useChange();
  const start = useVoidTask();
  const { joists, bearings } = record;
  if (!joists) return null;
  const range = spanRange(record);
  const say = (): string => {
    if (!range) return 'No joist lies in this outline.';
    const mm = range.lo === range.hi ? `${range.lo}` : `${range.lo} to ${range.hi}`;
    return range.ends === 'bearings' ? `They span ${mm} between bearings.` : `They span ${mm}, from edge to edge.`;
  };
  const press = (does: () => void) => () => {
    if (!disabled) does();
  };
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">Bearings</legend>
      <p className="inspect-says">{say()}</p>
      <div className="key-row">
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={press(() => set({ bearings: endEdges(record, grid(joists).way) }))}
        >
          Walls at both ends
        </button>
        <button type="button" className="key slight" aria-disabled={disabled} onClick={press(() => start('bearing'))}>
          Tap two lines
        </button>
        {bearings.length > 0 && (
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={press(() => set({ bearings: [] }))}
          >
            Forget {bearings.length}
          </button>
        )}
      </div>
      {bearings.length === 0 && (
        <NumberBox
          label="Clear span, measured"
          value={joists.spanMm}
          unit="mm"
          min={1}
          empty
          disabled={disabled}
          onSet={(v) => run('void.joists', { void: record.id, change: { spanMm: typeof v === 'number' ? v : null } })}
        />
      )}
    </fieldset>
  );
}
