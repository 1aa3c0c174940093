import { assumedLayers } from '../../../../catalogue/void-choices.ts';
import { useEditorState } from '../../../app/use-session.ts';
import { NumberBox } from '../number-box.tsx';
import { TextBox } from '../text-box.tsx';
import { useChange } from '../use-change.ts';
import type { VoidPart } from './void-part.ts';

const usual = assumedLayers();

/** A solid floor from the top down, and the day it is poured: before that day what lies in it must be in. */
export function VoidLayers({ record, disabled, set }: VoidPart) {
  const layers = record.layers ?? [];
  const numbered = layers.map((layer, at) => ({ layer, at }));
  const total = layers.reduce((sum, l) => sum + l.thicknessMm, 0);
  const change = (at: number, by: Partial<(typeof layers)[number]>): boolean =>
    set({ layers: layers.map((l, i) => (i === at ? { ...l, ...by } : l)) });
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">Layers, from the top down</legend>
      {layers.length === 0 && <p className="inspect-says">No layer is told yet.</p>}
      {numbered.map(({ layer, at }) => (
        <div className="void-layer" key={at}>
          <TextBox
            label={`Layer ${at + 1}`}
            value={layer.what}
            disabled={disabled}
            onSet={(what) => change(at, { what })}
          />
          <NumberBox
            label="Thickness"
            value={layer.thicknessMm}
            unit="mm"
            min={1}
            disabled={disabled}
            onSet={(v) => typeof v === 'number' && change(at, { thicknessMm: v })}
          />
          <button
            type="button"
            className="key slight"
            aria-label={`Remove layer ${at + 1}`}
            aria-disabled={disabled}
            onClick={() => !disabled && set({ layers: layers.filter((_, i) => i !== at) })}
          >
            remove
          </button>
        </div>
      ))}
      {total > 0 && <p className="inspect-says">{Math.round(total)} together</p>}
      <div className="key-row">
        {usual.map((layer) => (
          <button
            key={layer.what}
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => !disabled && set({ layers: [...layers, layer] })}
          >
            add {layer.what}
          </button>
        ))}
      </div>
      <TextBox
        label="Poured on, as 2026-05-01"
        value={record.pourDate ?? ''}
        disabled={disabled}
        onSet={(day) => set({ pourDate: day.trim() === '' ? null : day.trim() })}
      />
      <PourHold day={record.pourDate ?? null} disabled={disabled} />
    </fieldset>
  );
}

const BEFORE = 'the pour';

/** What cannot be taken back after the pour, as a hold point of the job. */
function PourHold({ day, disabled }: { readonly day: string | null; readonly disabled: boolean }) {
  const { run } = useChange();
  const holds = useEditorState((s) => s.plan.job.holdPoints);
  const there = (holds ?? []).filter((h) => h.before === BEFORE);
  const what = 'Pipes in the slab laid, sleeved, tested and photographed';
  return (
    <>
      <p className="inspect-says">
        {there.length > 0
          ? `Hold point before the pour: ${there.map((h) => (h.done ? `${h.what}, done` : h.what)).join('; ')}.`
          : 'After the pour nothing in it can be moved. Agree what must be in before.'}
      </p>
      {there.length === 0 && (
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() =>
            !disabled && run('holdPoint.set', { line: { what, before: BEFORE, on: day, owner: '', done: false } })
          }
        >
          Hold the pour for the pipes
        </button>
      )}
    </>
  );
}
