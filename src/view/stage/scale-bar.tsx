import { turnOf } from '../../editor/panes.ts';
import { useEditorState } from '../app/use-session.ts';
import { inLetters } from '../look/in-letters.ts';

const STEPS_MM = [50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000] as const;
const MOST_PX = 90;
/** In a narrow drawing the bar is shorter and the floor is not named: the key beside it needs the room. */
export const NARROW_PX = 660;

interface Props {
  /** On the fold under a wall: one measure for the face and the plan, and north as the house lies turned under it. */
  readonly folded?: boolean;
}

/** North as a plumb bob, a measure of the drawing as it is shown, and the floor it shows. */
export function ScaleBar({ folded = false }: Props) {
  const mmPerPx = useEditorState((s) => s.panes.plan.camera.mmPerPx);
  const name = useEditorState((s) => {
    const { view } = s.panes.plan;
    return view.kind === 'plan' ? (s.plan.storeys[view.storey]?.name ?? '') : '';
  });
  const turn = useEditorState((s) => turnOf(s.panes));
  const narrow = useEditorState((s) => folded || s.panes.plan.width < NARROW_PX);
  const most = narrow ? MOST_PX * 0.6 : MOST_PX;
  const step = [...STEPS_MM].reverse().find((mm) => mm / mmPerPx <= most) ?? STEPS_MM[0];
  const px = step / mmPerPx;
  const say = (n: number): string => (step >= 1000 ? String((n * step) / 1000) : String(n * step));
  const unit = step >= 1000 ? ' m' : ' mm';
  return (
    <div className="scale-bar" aria-hidden="true">
      <svg width={turn === 0 ? 14 : 32} height="32" viewBox={turn === 0 ? '9 0 14 32' : '0 0 32 32'} aria-hidden="true">
        <g transform={`rotate(${-turn} 16 16)`}>
          <path className="bob" d="M16 1l5 12H11z" />
          <path className="north" strokeWidth="1.4" d="M16 13v14M10 30h12M16 27v3" />
        </g>
      </svg>
      <svg width={3 * px + (folded ? 28 : 60)} height={inLetters(32)} overflow="visible" aria-hidden="true">
        <rect className="full" x={0} y={6} width={px} height={5} />
        <rect className="full" x={2 * px} y={6} width={px} height={5} />
        <rect className="ruler" x={px + 0.5} y={6.5} width={px} height={4} strokeWidth={1} />
        {(narrow ? [0, 3] : [0, 1, 2, 3]).map((n) => (
          <text key={n} x={n * px} y={inLetters(26)} textAnchor={n === 0 ? 'start' : 'middle'}>
            {say(n)}
            {n === 3 ? unit : ''}
          </text>
        ))}
        {!narrow && (
          <text x={3 * px + 34} y={inLetters(26)}>
            {name.toLowerCase()}
          </text>
        )}
      </svg>
    </div>
  );
}
