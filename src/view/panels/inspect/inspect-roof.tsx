import { useState } from 'react';
import { resolveHeight } from '../../../geometry/heights.ts';
import type { Roof } from '../../../plan/records/building.ts';
import { useEditorState } from '../../app/use-session.ts';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { useChange } from './use-change.ts';

type Rafters = NonNullable<Roof['rafters']>;

/** A slope: how high its eaves, how steep, and the rafters in it. */
export function InspectRoof({ id }: { readonly id: string }) {
  const roof = useEditorState((s) => s.plan.roofs[id]);
  const over = useEditorState((s) => {
    const r = s.plan.roofs[id];
    const z = r && resolveHeight(s.plan, r.eaves.height)?.z;
    return r && z !== undefined ? z - (s.plan.storeys[r.storey]?.floorMm ?? 0) : null;
  });
  const { disabled, run } = useChange();
  if (!roof) return null;
  const set = (change: Partial<Roof>): boolean => {
    const { storey, outline, eaves, pitchDeg, rafters, sureness } = { ...roof, ...change };
    return run('roof.set', { roof: id, storey, outline, eaves, pitchDeg, rafters, sureness });
  };
  return (
    <>
      <div className="pair">
        <NumberBox
          label="Eaves, off the floor"
          value={over}
          unit="mm"
          min={-20_000}
          max={20_000}
          disabled={disabled}
          onSet={(mm) =>
            typeof mm === 'number' &&
            set({ eaves: { ...roof.eaves, height: { from: 'floor', of: roof.storey, mm } }, sureness: 'seen' })
          }
        />
        <NumberBox
          label="Pitch, degrees"
          value={roof.pitchDeg}
          min={0}
          max={85}
          disabled={disabled}
          onSet={(pitchDeg) => typeof pitchDeg === 'number' && set({ pitchDeg })}
        />
      </div>
      <RafterBoxes rafters={roof.rafters} disabled={disabled} onSet={(rafters) => set({ rafters })} />
      <SurenessKeys sureness={roof.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'roofs', id }} word="roof" />
      </div>
    </>
  );
}

const BOXES: readonly { readonly key: keyof Rafters; readonly label: string }[] = [
  { key: 'centresMm', label: 'Centres' },
  { key: 'depthMm', label: 'Depth' },
  { key: 'breadthMm', label: 'Breadth' },
];

/** Rafters are kept once all three of their figures are told; an emptied one forgets them. */
function RafterBoxes(props: {
  readonly rafters: Roof['rafters'];
  readonly disabled: boolean;
  readonly onSet: (rafters: Roof['rafters']) => boolean;
}) {
  const { rafters, disabled, onSet } = props;
  const [half, setHalf] = useState<Partial<Rafters>>({});
  const told: Partial<Rafters> = rafters ?? half;
  const set = (key: keyof Rafters, mm: number | null): boolean => {
    const { [key]: _, ...others } = told;
    const now: Partial<Rafters> = mm === null ? others : { ...told, [key]: mm };
    setHalf(now);
    const { centresMm, depthMm, breadthMm } = now;
    if (centresMm !== undefined && depthMm !== undefined && breadthMm !== undefined)
      return onSet({ centresMm, depthMm, breadthMm });
    return rafters === null || onSet(null);
  };
  return (
    <>
      <h3>Rafters</h3>
      <div className="pair">
        {BOXES.map(({ key, label }) => (
          <NumberBox
            key={key}
            label={label}
            value={told[key] ?? null}
            unit="mm"
            min={1}
            max={5000}
            empty
            disabled={disabled}
            onSet={(v) => set(key, typeof v === 'number' ? v : null)}
          />
        ))}
      </div>
    </>
  );
}
