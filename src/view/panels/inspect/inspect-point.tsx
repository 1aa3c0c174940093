import { hazardOf } from '../../../catalogue/hazards.ts';
import { pointKinds } from '../../../catalogue/point-kinds.ts';
import { services } from '../../../catalogue/services.ts';
import { resolveHeight } from '../../../geometry/heights.ts';
import type { Field } from '../../../plan/records/pipework.ts';
import { useEditorState } from '../../app/use-session.ts';
import { FlueFaceKey } from '../../flue-face/flue-face-key.tsx';
import { KickTurn } from '../../look/kick.tsx';
import { PhotoKeys, PhotoList, photosOf } from '../../photos/photo-list.tsx';
import { PointThing } from '../../things/point-thing.tsx';
import { THING_KINDS } from '../../things/say-thing-kept.ts';
import { inOrder } from '../../things/tail-order.ts';
import { TailsEditor } from '../../things/tails-editor.tsx';
import '../../job/job.css';
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

const tagOf = (service: string): string => services.get(service)?.tag ?? '?';

/** A boiler, meter, tap…: what its kind asks, its size and height, the tails it has. */
export function InspectPoint({ id }: { readonly id: string }) {
  const point = useEditorState((s) => s.plan.points[id]);
  const z = useEditorState((s) => {
    const p = s.plan.points[id];
    return p ? resolveHeight(s.plan, p.place.height)?.z : undefined;
  });
  const floor = useEditorState((s) => s.plan.storeys[point?.storey ?? '']?.floorMm ?? 0);
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  if (!point) return null;
  const kind = pointKinds.get(point.kind);
  const photos = photosOf(plan, id);
  const hasTails = THING_KINDS.includes(point.kind);
  const set = (change: object): boolean => run('point.set', { point: id, change });
  const setField = (key: string, value: Field): boolean =>
    run('point.set', { point: id, change: {}, fields: { [key]: value } });
  return (
    <>
      {kind && kind.label !== point.name && <p className="inspect-says">{kind.label}</p>}
      {point.kind === 'hazard' && point.fields.tested !== 'clear' && (
        <p className="hazard-caution">{hazardOf(point.fields.what).caution}</p>
      )}
      {point.kind === 'flue-terminal' && <FlueFaceKey />}
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
      <PointThing point={point} place="first" />
      <FieldForm specs={kind?.fields ?? []} values={point.fields} disabled={disabled} onSet={setField} />
      <PointThing point={point} place="last" />
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
      {(point.connections.length > 0 || hasTails) && (
        <details className="field-group">
          <summary>
            <span className="group-name">Tails</span>
            <span className="group-told">
              {inOrder(point.connections)
                .map((c) => tagOf(c.service))
                .join(' ')}
            </span>
            <KickTurn />
          </summary>
          <div className="group-fields">
            <TailsEditor
              size={point.size}
              tails={point.connections}
              disabled={disabled}
              onSet={(connections) => run('point.tails', { point: id, connections })}
            />
          </div>
        </details>
      )}
      <details className="field-group">
        <summary>
          <span className="group-name">Photos</span>
          <span className="group-told">{photos.length === 0 ? 'none' : photos.length}</span>
          <KickTurn />
        </summary>
        <div className="group-fields">
          {photos.length > 0 && <PhotoList photos={photos} />}
          <PhotoKeys on={id} />
        </div>
      </details>
      <SurenessKeys sureness={point.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <FateKeys id={id} surveyed={point.option === null} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'points', id }} word="it" />
      </div>
    </>
  );
}
