import { useId } from 'react';
import type { Bar as BarData } from '../../report/section.ts';
import { axisFigure, type BarShape, barShape } from './bar-shape.ts';

const pc = (n: number): string => `${(n * 100).toFixed(3)}%`;
const TICKS = [0, 1 / 6, 2 / 6, 3 / 6, 4 / 6, 5 / 6, 1] as const;

function Chevrons({ mid }: { readonly mid: number }) {
  return (
    <svg x="100%" y={mid} overflow="visible" aria-hidden="true">
      <path
        className="bar-chevrons"
        d="M-4-4.500l4.500 4.500-4.500 4.500M-11-4.500l4.500 4.500-4.500 4.500M-18-4.500l4.500 4.500-4.500 4.500"
      />
    </svg>
  );
}

function Body({
  shape,
  y,
  height,
  hatch,
}: {
  readonly shape: BarShape;
  readonly y: number;
  readonly height: number;
  readonly hatch: string;
}) {
  const { solid, hatched, tick, open } = shape;
  return (
    <>
      {solid && (
        <rect
          className="bar-solid"
          x={pc(solid[0])}
          width={pc(Math.max(solid[1] - solid[0], 0.004))}
          y={y}
          height={height}
        />
      )}
      {hatched && (
        <>
          <rect className="bar-ground" x={pc(hatched[0])} width={pc(hatched[1] - hatched[0])} y={y} height={height} />
          <rect
            fill={`url(#${hatch})`}
            className="bar-hatched"
            x={pc(hatched[0])}
            width={pc(hatched[1] - hatched[0])}
            y={y}
            height={height}
          />
        </>
      )}
      {tick !== null && <line className="bar-tick" x1={pc(tick)} x2={pc(tick)} y1={y - 3} y2={y + height + 3} />}
      {open !== null && (
        <>
          <line className="bar-open" x1={pc(open)} x2={pc(open)} y1={y - 2} y2={y + height + 2} />
          <line className="bar-open dots" x1={pc(open)} x2="100%" y1={y + height / 2} y2={y + height / 2} />
        </>
      )}
    </>
  );
}

/**
 * The interval on its line, with the limit as a post: clear of it, across it, or past it. Beside figures in words, so it
 * is hidden from a screen reader. `small` is the form of the other ways.
 */
export function Bar({
  bar,
  small = false,
  middle = false,
  labels = !small && !middle,
}: {
  readonly bar: BarData;
  readonly small?: boolean;
  /** The form of the three sizes: between the two, without figures. */
  readonly middle?: boolean;
  readonly labels?: boolean;
}) {
  const hatch = useId();
  const shape = barShape(bar);
  const height = small ? 7 : middle ? 9 : 14;
  const postHeight = small ? 16 : middle ? 20 : 30;
  const line = small ? 13.5 : middle ? 18.5 : 24.5;
  const y = line - height - 2;
  const mid = y + height / 2;
  return (
    <svg
      className={`bar bar-${bar.state}${small ? ' small' : ''}`}
      width="100%"
      height={labels ? 48 : line + 6}
      overflow="visible"
      aria-hidden="true"
    >
      <defs>
        <pattern id={hatch} width="4.2" height="4.2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect className="bar-hatch" width="1.6" height="4.2" />
        </pattern>
      </defs>
      <line className="bar-line" x1="0" x2="100%" y1={line} y2={line} />
      {TICKS.map((t, i) => (
        <line key={t} className="bar-line" x1={pc(t)} x2={pc(t)} y1={line} y2={line + (i % 2 === 0 ? 4 : 2)} />
      ))}
      <Body shape={shape} y={y} height={height} hatch={hatch} />
      {shape.past && <Chevrons mid={mid} />}
      {shape.post !== null && (
        <svg x={pc(shape.post)} overflow="visible" aria-hidden="true">
          <rect className="bar-post" x={-2.5} y={mid - postHeight / 2} width={5} height={postHeight} />
        </svg>
      )}
      {labels && <Labels shape={shape} bar={bar} y={line + 18} />}
    </svg>
  );
}

function Labels({ shape, bar, y }: { readonly shape: BarShape; readonly bar: BarData; readonly y: number }) {
  const { top, post } = shape;
  return (
    <>
      <text className="bar-label" x="0" y={y}>
        0
      </text>
      {post !== null && bar.limit !== null && (
        <>
          <text className="bar-label" x={pc(post / 2)} y={y} textAnchor="middle">
            {axisFigure(bar.limit / 2)}
          </text>
          <text className="bar-label limit" x={pc(post)} y={y} textAnchor="middle">
            limit {bar.limit.toFixed(bar.figure.digits)}
          </text>
        </>
      )}
      <text className="bar-label" x="100%" y={y} textAnchor="end">
        {axisFigure(top)}
      </text>
    </>
  );
}
