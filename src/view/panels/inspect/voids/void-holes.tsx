import { useChange } from '../use-change.ts';
import { useVoidTask, type VoidPart } from './void-part.ts';

const sizeOf = (hole: readonly { readonly x: number; readonly y: number }[]): string => {
  const [x, y] = [hole.map((p) => p.x), hole.map((p) => p.y)];
  return `${Math.round(Math.max(...x) - Math.min(...x))} by ${Math.round(Math.max(...y) - Math.min(...y))}`;
};

/** Holes in a floor or ceiling, as for a stair. */
export function VoidHoles({ record, disabled }: VoidPart) {
  const { run } = useChange();
  const start = useVoidTask();
  const numbered = record.holes.map((hole, index) => ({ size: sizeOf(hole), index }));
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">Holes</legend>
      {numbered.map(({ size, index }) => (
        <div className="void-line" key={index}>
          <span>{size}</span>
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => run('void.closeHole', { void: record.id, index })}
          >
            close it
          </button>
        </div>
      ))}
      <button type="button" className="key slight" aria-disabled={disabled} onClick={() => !disabled && start('hole')}>
        Cut a hole
      </button>
    </fieldset>
  );
}
