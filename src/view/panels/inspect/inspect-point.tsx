import { pointKinds } from '../../../catalogue/point-kinds.ts';
import { resolveHeight } from '../../../geometry/heights.ts';
import type { Field } from '../../../plan/records/pipework.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ServiceTag } from '../service-tag.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { FieldForm } from './field-form.tsx';
import { NumberBox } from './number-box.tsx';
import { SheetLimit } from './sheet-limit.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

const SIZES = [
  { key: 'widthMm', label: 'Width' },
  { key: 'depthMm', label: 'Depth' },
  { key: 'heightMm', label: 'Height' },
] as const;

/** A boiler, meter, tap…: what its kind asks, its size and height, the tails it has. */
export function InspectPoint({ id }: { readonly id: string }) {
  const point = useEditorState((s) => s.plan.points[id]);
  const z = useEditorState((s) => {
    const p = s.plan.points[id];
    return p ? resolveHeight(s.plan, p.place.height)?.z : undefined;
  });
  const floor = useEditorState((s) => s.plan.storeys[point?.storey ?? '']?.floorMm ?? 0);
  const { disabled, run } = useChange();
  if (!point) return null;
  const kind = pointKinds.get(point.kind);
  const set = (change: object): boolean => run('point.set', { point: id, change });
  const setField = (key: string, value: Field): boolean =>
    run('point.set', { point: id, change: {}, fields: { [key]: value } });
  return (
    <>
      {kind && kind.label !== point.name && <p className="inspect-says">{kind.label}</p>}
      <TextBox label="Name" value={point.name} disabled={disabled} onSet={(name) => set({ name })} />
      <NumberBox
        label="Underside off floor"
        value={z === undefined ? null : z - floor}
        unit="mm"
        help={point.place.height.assumed ? 'Assumed: type it when it is measured.' : undefined}
        disabled={disabled}
        onSet={(mm) =>
          typeof mm === 'number' &&
          run('point.move', { point: id, place: { ...point.place, height: { from: 'floor', of: point.storey, mm } } })
        }
      />
      <FieldForm specs={kind?.fields ?? []} values={point.fields} disabled={disabled} onSet={setField} />
      {kind?.gasInputs !== undefined && kind.gasInputs.length > 0 && <SheetLimit point={id} />}
      <h3>Size</h3>
      <div className="triple">
        {SIZES.map(({ key, label }) => (
          <NumberBox
            key={key}
            label={label}
            value={point.size[key]}
            min={1}
            max={10_000}
            disabled={disabled}
            onSet={(v) => typeof v === 'number' && set({ size: { ...point.size, [key]: v } })}
          />
        ))}
      </div>
      {point.connections.length > 0 && (
        <>
          <h3>Tails</h3>
          <ul className="tails">
            {point.connections.map((c) => (
              <li key={c.id}>
                <ServiceTag service={c.service} />
                {c.label}
                <span className="tail-size">{c.size ?? '?'}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <SurenessKeys sureness={point.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <FateKeys id={id} surveyed={point.option === null} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'points', id }} word="it" />
      </div>
    </>
  );
}
