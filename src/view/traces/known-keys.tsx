import { useState } from 'react';
import { type KnownLength, knownLengths } from '../../catalogue/known-lengths.ts';
import { NumberBox } from '../panels/inspect/number-box.tsx';

interface Props {
  readonly doing: 'scale' | 'square';
  readonly disabled: boolean;
  readonly onScale: (lengthMm: number) => boolean;
  readonly onSquare: (widthMm: number, heightMm: number) => boolean;
}

const isBrick = (known: KnownLength): boolean => known.id === 'brick';

/** Lengths everybody knows, where nothing was measured: a count of brick courses, a door leaf. Unverified, and said so. */
export function KnownKeys({ doing, disabled, onScale, onSquare }: Props) {
  const [courses, setCourses] = useState<number | null>(null);
  const known = knownLengths();
  const brick = known.find(isBrick);
  const doors = known.filter((k) => !isBrick(k));
  return (
    <fieldset className="plain-set trace-form">
      <legend className="field-label">Or by something known, unverified</legend>
      {doing === 'scale' && brick && (
        <NumberBox
          label={`Brick courses, ${brick.heightMm} each`}
          value={courses}
          min={1}
          max={200}
          empty
          disabled={disabled}
          onSet={(n) => {
            if (typeof n !== 'number') return false;
            setCourses(n);
            return onScale(n * brick.heightMm);
          }}
        />
      )}
      <div className="key-row">
        {doors.map((d) => (
          <button
            key={d.id}
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => !disabled && (doing === 'scale' ? onScale(d.widthMm) : onSquare(d.widthMm, d.heightMm))}
          >
            door {d.widthMm}
            {doing === 'square' && ` by ${d.heightMm}`}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
