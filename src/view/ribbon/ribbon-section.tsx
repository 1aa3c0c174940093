import { useId } from 'react';
import { services } from '../../catalogue/services.ts';
import { isServiceLook, look } from '../look/tokens.ts';
import { serviceColour } from '../panels/service-tag.tsx';
import type { Level, StoreyHeights } from './levels.ts';
import type { RibbonScale } from './ribbon-scale.ts';
import type { LevelBar, Section, Unrolled } from './unroll.ts';

const PX = look.screen.pxPerMm;

/** Beat of a service in px; undefined: unbroken. */
function dashOf(service: string, k = 0.65): string | undefined {
  const style = services.get(service)?.style ?? '';
  const mm = isServiceLook(style) ? look.service[style].dashMm : [];
  return mm.length === 0 ? undefined : mm.map((d) => (d * PX * k).toFixed(2)).join(' ');
}

interface Props {
  readonly heights: StoreyHeights;
  readonly section: Section;
  readonly scale: RibbonScale;
  readonly width: number;
  readonly height: number;
  /** The work height: labels under its tab are left out. */
  readonly workZ: number | null;
}

/** Slabs, voids, ceiling, the chosen run unrolled and the others as bars, all to scale. */
export function RibbonSection({ heights, section, scale, width, height, workZ }: Props) {
  const hatch = useId();
  const narrow = width < 80;
  const left = narrow ? 30 : 52;
  const right = width - (narrow ? 0 : 6);
  const { y } = scale;
  const inner = right - left;
  const tabY = workZ === null ? Number.NEGATIVE_INFINITY : y(workZ);
  const labelled = heights.levels.filter((l) => narrow === false || l.heavy);
  return (
    <svg className="ribbon-section" width={width} height={height} aria-hidden="true">
      <defs>
        <pattern id={hatch} width="8.485" height="8.485" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect className="ribbon-hatch" width="0.9" height="8.485" />
          <rect className="ribbon-hatch" x="2.4" width="0.9" height="8.485" />
        </pattern>
      </defs>
      <rect className="ribbon-air" x={left} width={inner} y={0} height={height} />
      <Slab x={left} w={inner} top={y(heights.ceiling + heights.buildUpMm)} bottom={y(heights.ceiling)} hatch={hatch} />
      <Slab x={left} w={inner} top={y(heights.floor)} bottom={y(heights.floor - heights.buildUpMm)} hatch={hatch} />
      {heights.bands
        .filter((b) => b.kind !== 'slab' && b.top > b.bottom)
        .map((b) => (
          <g key={b.id}>
            <rect className="ribbon-void" x={left} width={inner} y={y(b.top)} height={y(b.bottom) - y(b.top)} />
            <line className="ribbon-edge" x1={left} x2={right} y1={y(b.bottom)} y2={y(b.bottom)} strokeWidth={2} />
            {b.joistBottom !== null && b.joistDepthMm !== null && (
              <Joists
                x={left}
                w={inner}
                top={y(b.joistBottom + b.joistDepthMm)}
                bottom={y(b.joistBottom)}
                count={narrow ? 2 : 4}
              />
            )}
          </g>
        ))}
      <Labels levels={labelled} scale={scale} floor={heights.floor} x={left} tabY={tabY} narrow={narrow} />
      <Bars
        bars={section.others}
        scale={scale}
        floor={heights.floor}
        left={left}
        right={right}
        tabY={tabY}
        narrow={narrow}
      />
      {section.chosen && <UnrolledRun run={section.chosen} scale={scale} left={left + 6} right={right - 8} />}
    </svg>
  );
}

function Slab({
  x,
  w,
  top,
  bottom,
  hatch,
}: {
  readonly x: number;
  readonly w: number;
  readonly top: number;
  readonly bottom: number;
  readonly hatch: string;
}) {
  const h = Math.max(0, bottom - top);
  return (
    <g>
      <rect className="ribbon-slab" x={x} width={w} y={top} height={h} />
      <rect fill={`url(#${hatch})`} x={x} width={w} y={top} height={h} />
      <line className="ribbon-edge" x1={x} x2={x + w} y1={top} y2={top} strokeWidth={1.6} />
      <line className="ribbon-edge" x1={x} x2={x + w} y1={bottom} y2={bottom} strokeWidth={1.6} />
    </g>
  );
}

function Joists({
  x,
  w,
  top,
  bottom,
  count,
}: {
  readonly x: number;
  readonly w: number;
  readonly top: number;
  readonly bottom: number;
  readonly count: number;
}) {
  const size = 7;
  const step = (w - 6 - size) / Math.max(1, count - 1);
  return (
    <g className="ribbon-joists">
      {Array.from({ length: count }, (_, i) => {
        const l = x + 3 + i * step;
        return (
          <path
            key={l}
            d={`M${l} ${top}h${size}V${bottom}h${-size}zM${l} ${top}L${l + size} ${bottom}M${l} ${bottom}L${l + size} ${top}`}
          />
        );
      })}
    </g>
  );
}

function Labels({
  levels,
  scale,
  floor,
  x,
  tabY,
  narrow,
}: {
  readonly levels: readonly Level[];
  readonly scale: RibbonScale;
  readonly floor: number;
  readonly x: number;
  readonly tabY: number;
  readonly narrow: boolean;
}) {
  let last = Number.NEGATIVE_INFINITY;
  return (
    <>
      {levels.map((l) => {
        const at = scale.y(l.z);
        const free = at - last >= 15 && Math.abs(at - tabY) > 22;
        if (free) last = at;
        return (
          <g key={l.key}>
            <line className="ribbon-tick" x1={x - (narrow ? 3 : 6)} x2={x} y1={at} y2={at} />
            {free && (
              <text
                className={`ribbon-label${l.heavy ? ' heavy' : ''}`}
                x={x - (narrow ? 5 : 9)}
                y={at + 4}
                textAnchor="end"
              >
                {Math.round(l.z - floor)}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}

/** Bars nearer than a line of text share one label. */
function labelGroups(bars: readonly LevelBar[], scale: RibbonScale): LevelBar[][] {
  const groups: LevelBar[][] = [];
  for (const bar of bars) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    if (group && before && scale.y(bar.z) - scale.y(before.z) < 14) group.push(bar);
    else groups.push([bar]);
  }
  return groups;
}

function Bars({
  bars,
  scale,
  floor,
  left,
  right,
  tabY,
  narrow,
}: {
  readonly bars: readonly LevelBar[];
  readonly scale: RibbonScale;
  readonly floor: number;
  readonly left: number;
  readonly right: number;
  readonly tabY: number;
  readonly narrow: boolean;
}) {
  const tag = (b: LevelBar): string => services.get(b.service)?.tag ?? '?';
  return (
    <>
      {bars.map((b) => (
        <line
          key={`${b.service}${b.z}`}
          x1={left + 4}
          x2={right - 4}
          y1={scale.y(b.z)}
          y2={scale.y(b.z)}
          style={{ stroke: serviceColour(b.service) }}
          strokeWidth={2}
          strokeDasharray={dashOf(b.service)}
        />
      ))}
      {!narrow &&
        labelGroups(bars, scale).map((group) => {
          const at = group.reduce((sum, b) => sum + scale.y(b.z), 0) / group.length;
          const [first] = group;
          if (!first || Math.abs(at - tabY) < 22) return null;
          const tags = [...new Set(group.map(tag))];
          const text =
            group.length === 1 ? `${tag(first)} ${Math.round(first.z - floor)}` : tags.slice(0, 2).join(', ');
          return (
            <text
              key={`${first.service}${first.z}`}
              className="ribbon-label run"
              x={left - 11}
              y={at + 4}
              textAnchor="end"
            >
              {text}
            </text>
          );
        })}
    </>
  );
}

function UnrolledRun({
  run,
  scale,
  left,
  right,
}: {
  readonly run: Unrolled;
  readonly scale: RibbonScale;
  readonly left: number;
  readonly right: number;
}) {
  const perMm = (right - left) / Math.max(1, run.lengthMm);
  const d = run.corners
    .map((c, i) => `${i === 0 ? 'M' : 'L'}${(left + c.alongMm * perMm).toFixed(1)} ${scale.y(c.z).toFixed(1)}`)
    .join('');
  return (
    <g fill="none" strokeLinejoin="round">
      <path d={d} className="ribbon-chosen" strokeLinecap="round" />
      <path
        d={d}
        style={{ stroke: serviceColour(run.service) }}
        strokeWidth={3}
        strokeDasharray={dashOf(run.service)}
      />
    </g>
  );
}
