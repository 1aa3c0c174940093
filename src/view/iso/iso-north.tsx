import { useMemo } from 'react';
import type { Vec } from '../../drawing/display-list.ts';
import { isoNorth } from '../../drawing/iso/iso-north.ts';
import type { IsoPlane } from '../../drawing/iso/iso-plane.ts';

/** px of a mm of paper here, and half the picture. */
const PX = 3.4;
const HALF = 22;

const path = (pts: readonly Vec[]): string =>
  pts.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${(x * PX).toFixed(1)} ${(-y * PX).toFixed(1)}`).join('');

/** North as on the plan: a plumb bob that lies on the floor and points north. */
export function IsoNorth({ plane }: { readonly plane: IsoPlane }) {
  const north = useMemo(() => isoNorth(plane), [plane]);
  return (
    <svg
      className="iso-north"
      width={2 * HALF}
      height={2 * HALF}
      viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
      aria-hidden="true"
    >
      {north.lines.map((pts) => (
        <path key={path(pts)} className="north" d={path(pts)} strokeWidth="1.4" />
      ))}
      <path className="bob" d={`${path(north.bob)}Z`} />
    </svg>
  );
}
