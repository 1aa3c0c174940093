import type { Size } from '../../catalogue/define-point.ts';
import { services } from '../../catalogue/services.ts';
import type { Connection } from '../../plan/records/pipework.ts';
import { serviceColour } from '../panels/service-tag.tsx';
import { inOrder, isUnderside } from './tail-order.ts';

/** Room about the case for what is written, as a part of its width. */
const MARGIN = 0.12;
const TEXT = 0.056;
const RING = 0.03;
/** Neighbours nearer than this part of the width are written on two heights. */
const NEAR = 0.1;

interface Props {
  readonly size: Size;
  readonly tails: readonly Connection[];
}

/** Where the tails leave, to scale: looking down through the case with the wall at the top, or the case from the front. */
export function Underside({ size, tails }: Props) {
  const below = isUnderside(tails);
  const w = size.widthMm;
  const h = below ? size.depthMm : size.heightMm;
  const unit = below ? w : Math.max(w, h * 0.55);
  const margin = unit * MARGIN;
  const at = (t: Connection) => ({ x: t.at.x + w / 2, y: below ? t.at.y : h - t.at.z });
  let before = Number.NEGATIVE_INFINITY;
  let low = false;
  const row = inOrder(tails).map((t) => {
    const p = at(t);
    low = p.x - before < unit * NEAR ? !low : false;
    before = p.x;
    return { t, p, low };
  });
  const words = row
    .map(({ t }) => `${t.label} ${t.size ?? 'size not told'} at ${Math.round(t.at.x + w / 2)}`)
    .join(', ');
  return (
    <figure className="underside">
      <svg
        viewBox={`${-margin} ${-margin} ${w + 2 * margin} ${h + 2 * margin}`}
        role="img"
        aria-label={`${below ? 'Underside' : 'Front'}, tails from the left: ${words}.`}
        style={{ maxHeight: below ? 260 : 320 }}
      >
        {below && <path className="underside-wall" d={`M${-margin} 0H${w + margin}`} strokeWidth={unit * 0.012} />}
        <rect className="underside-case" x={0} y={0} width={w} height={h} strokeWidth={unit * 0.006} />
        {row.map(({ t, p, low: second }) => (
          <g key={t.id}>
            <circle
              cx={p.x}
              cy={p.y}
              r={unit * RING}
              className="underside-tail"
              style={{ stroke: serviceColour(t.service) }}
              strokeWidth={unit * 0.014}
            />
            <text
              className="underside-text"
              x={p.x}
              y={p.y + unit * (second ? -0.05 : 0.09)}
              fontSize={unit * TEXT}
              textAnchor="middle"
            >
              {services.get(t.service)?.tag ?? '?'} {t.size ?? '?'}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        {below ? 'Seen from above through the case; the wall is at the top.' : 'Seen from the front.'}
      </figcaption>
    </figure>
  );
}
