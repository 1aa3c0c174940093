import { type PointerEvent, useMemo, useRef, useState } from 'react';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { useEditorState } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { serviceColour } from '../panels/service-tag.tsx';
import { sketchOf } from './sketch-shape.ts';

const START_DEG = -35;
const DEG_PER_PX = 0.6;

/** The run as it hangs in the air, before it has a house about it. It is turned by dragging across it. */
export function WordsSketch({ run }: { readonly run: string | null }) {
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const plan = useEditorState((s) => s.draft?.plan ?? s.plan);
  const [turn, setTurn] = useState(START_DEG);
  const from = useRef<{ readonly x: number; readonly turn: number } | null>(null);
  const shape = useMemo(
    () => (run === null || width === 0 ? null : sketchOf(plan, run, turn, width, height, 26)),
    [plan, run, turn, width, height],
  );
  const service = run === null ? '' : (plan.runs[run]?.service ?? '');
  const move = (e: PointerEvent): void => {
    if (from.current) setTurn(from.current.turn + (e.clientX - from.current.x) * DEG_PER_PX);
  };
  return (
    <div
      ref={box}
      className="sketch"
      onPointerDown={(e) => {
        e.currentTarget.setPointerCapture(e.pointerId);
        from.current = { x: e.clientX, turn };
      }}
      onPointerMove={move}
      onPointerUp={() => {
        from.current = null;
      }}
      onPointerCancel={() => {
        from.current = null;
      }}
    >
      {shape && (
        <svg width={width} height={height} aria-hidden="true">
          <g strokeLinejoin="round" strokeLinecap="round" fill="none">
            {shape.lines.map((l) => (
              <line key={`band${l.leg}`} className="sketch-band" x1={l.a[0]} y1={l.a[1]} x2={l.b[0]} y2={l.b[1]} />
            ))}
            {shape.lines.map((l) => (
              <line
                key={l.leg}
                x1={l.a[0]}
                y1={l.a[1]}
                x2={l.b[0]}
                y2={l.b[1]}
                style={{ stroke: serviceColour(service) }}
                strokeWidth={2.9}
              />
            ))}
          </g>
          {shape.lines.map((l) =>
            l.say === '' ? null : (
              <text key={`say${l.leg}`} className="sketch-say" x={(l.a[0] + l.b[0]) / 2} y={(l.a[1] + l.b[1]) / 2 - 9}>
                {l.say}
              </text>
            ),
          )}
          {shape.ends.map((e) => (
            <g key={`${e.point}${e.at[0]}`} transform={`translate(${e.at[0]} ${e.at[1] + (e.above ? -9 : 9)})`}>
              <rect className="sketch-box" x={-12} y={-9} width={24} height={18} rx={1} />
              <text className="sketch-letter" y={4.4}>
                {pointKinds.get(plan.points[e.point]?.kind ?? '')?.letter ?? '?'}
              </text>
            </g>
          ))}
        </svg>
      )}
      <p className="sketch-note">{shape ? 'unplaced: drag to turn it' : 'nothing told yet'}</p>
    </div>
  );
}
