import { stepChoices } from '../../catalogue/step-choices.ts';
import type { FollowInHand } from '../../editor/editor-api.ts';
import { Pick, Row, useInHand } from '../bench/tray-row.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';

const SAYS: Readonly<Record<FollowInHand['what'], string>> = {
  wall: 'The next tap takes the pipe along the walls of that room to abreast of it, off their faces by so much.',
  bay: 'The next tap takes the pipe along the middle between two joists, to abreast of it.',
  run: 'The next tap takes the pipe along the chosen run, or the nearest, with the same corners.',
};

/** What the next piece of a run goes along, and how far off it. */
export function FollowRow() {
  const [inHand, set] = useInHand();
  const { follow } = inHand;
  const { offWallMm, offRunMm } = stepChoices();
  const offered = follow?.what === 'wall' ? offWallMm : follow?.what === 'run' ? offRunMm : [];
  const take = (what: FollowInHand['what'], mm: number): void => set({ follow: { what, mm } });
  return (
    <>
      <Row label="Follow">
        <Pick on={follow === null} onPick={() => set({ follow: null })}>
          nothing
        </Pick>
        <Pick on={follow?.what === 'wall'} onPick={() => take('wall', offWallMm[0] ?? 0)}>
          the wall
        </Pick>
        <Pick on={follow?.what === 'bay'} onPick={() => take('bay', 0)}>
          a joist bay
        </Pick>
        <Pick on={follow?.what === 'run'} onPick={() => take('run', offRunMm[0] ?? 0)}>
          a run
        </Pick>
      </Row>
      {follow && offered.length > 0 && (
        <Row label="Off it">
          {offered.map((mm) => (
            <Pick key={mm} on={mm === follow.mm} onPick={() => take(follow.what, mm)}>
              {mm}
            </Pick>
          ))}
          <NumberBox
            label={follow.what === 'wall' ? 'Off its face' : 'Middle to middle'}
            value={follow.mm}
            unit="mm"
            min={1}
            max={5000}
            onSet={(mm) => {
              if (typeof mm !== 'number') return false;
              take(follow.what, mm);
              return true;
            }}
          />
        </Row>
      )}
      {follow && <p className="tray-says">{SAYS[follow.what]}</p>}
    </>
  );
}
