import { useEffect, useRef } from 'react';
import { isUnverified, type KeyedDistance } from '../../drawing/flue-face/worst-first.ts';
import type { Plan } from '../../plan/plan.ts';
import { nameOf } from '../panels/name-of.ts';
import { Cites } from '../panels/rows/cites.tsx';
import { STATE_WORD, sayWithUnit } from '../panels/rows/figures.ts';
import { StateMark } from '../panels/rows/state-mark.tsx';
import { selectedOf } from '../panels/show-ids.ts';

interface Props {
  readonly plan: Plan;
  readonly distances: readonly KeyedDistance[];
  readonly chosen: string | null;
  /** The drawing is newer than these figures. */
  readonly paler: boolean;
  readonly onChoose: (key: string | null) => void;
}

/** Every distance, the worst first. A tap lights it up on the drawing and tells where its figure is from. */
export function DistanceList({ plan, distances, chosen, paler, onChoose }: Props) {
  return (
    <ul className="flue-list" data-paler={paler} aria-label="Distances">
      {distances.map((d) => (
        <DistanceRow plan={plan} key={d.key} row={d} pressed={d.key === chosen} onChoose={onChoose} />
      ))}
    </ul>
  );
}

interface RowProps {
  readonly plan: Plan;
  readonly row: KeyedDistance;
  readonly pressed: boolean;
  readonly onChoose: (key: string | null) => void;
}

function DistanceRow({ plan, row, pressed, onChoose }: RowProps) {
  const item = useRef<HTMLLIElement>(null);
  const { distance } = row;
  const { label, found, wanted, state } = distance;
  const to = selectedOf(plan, distance.ids)
    .filter((s) => s.map !== 'walls')
    .map((s) => nameOf(plan, s))
    .join(', ');
  useEffect(() => {
    // Chosen on the drawing, its row may lie out of sight.
    if (pressed) item.current?.scrollIntoView({ block: 'nearest' });
  }, [pressed]);
  return (
    <li ref={item} className="flue-item" data-state={state} data-chosen={pressed}>
      <button
        type="button"
        className="flue-row"
        aria-pressed={pressed}
        onClick={() => onChoose(pressed ? null : row.key)}
      >
        <span className="flue-mark">
          <StateMark state={state} small />
        </span>
        <span className="flue-label">{label}</span>
        <span className="out-of-sight">{STATE_WORD[state] === '' ? ': ' : `: ${STATE_WORD[state]}. `}</span>
        <span className="flue-found">{sayWithUnit(found)}</span>
        <span className="out-of-sight"> found. </span>
        <span className="flue-wanted">
          {to !== '' && <span className="flue-to">{to}</span>}
          {wanted === null ? 'nothing wanted' : `wanted ${sayWithUnit(wanted)}`}
          {isUnverified(distance) && <em className="unverified">unverified</em>}
        </span>
      </button>
      {pressed && (
        <div className="flue-told">
          {distance.say !== '' && <p>{distance.say}</p>}
          <Cites cites={distance.cites} />
        </div>
      )}
    </li>
  );
}
