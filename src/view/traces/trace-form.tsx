import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { TraceInHand } from '../../editor/editor-api.ts';
import { distance } from '../../geometry/vec.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { lowerSheet } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { KnownKeys } from './known-keys.tsx';
import { laidPictures, nameOfLaid } from './laid-pictures.ts';
import { lookOnAt } from './look-on-at.ts';

const DOINGS = [
  { value: 'move', label: 'move' },
  { value: 'scale', label: 'scale' },
  { value: 'level', label: 'level' },
  { value: 'square', label: 'square' },
] as const;

const SAYS: Readonly<Record<TraceInHand['doing'], string>> = {
  move: 'Drag it on the drawing.',
  scale: 'Tap both ends of something you know the length of, then type it.',
  level: 'Tap along something that is level or upright.',
  square:
    'For a photo taken at a slant: tap lower left, lower right, upper right and upper left of a door or window, then type its size.',
};

const FADES = [
  { value: 0.25, label: 'pale' },
  { value: 0.5, label: 'half' },
  { value: 0.8, label: 'strong' },
];

/** One picture: what the hand does with it, how pale it is, whether it is held fast. */
export function TraceForm({
  record,
  disabled,
  here,
}: {
  readonly record: BlobRef;
  readonly disabled: boolean;
  readonly here: boolean;
}) {
  const editor = useEditor();
  const { run } = useChange();
  const trace = useEditorState((s) => s.inHand.trace);
  const missing = useStore(laidPictures, (s) => s.laid.get(nameOfLaid(record)) === null);
  const { place } = record;
  if (!place) return null;
  const set = (change: object): boolean => run('trace.place', { blobRef: record.id, change });
  const locked = place.locked;
  const doing = trace?.doing ?? 'move';
  return (
    <div className="trace-form">
      {missing && (
        <p className="field-wrong">
          The picture itself is not on this device: open the job's file from where it was put in, or put it in again.
        </p>
      )}
      {!here && <p className="field-help">It lies under another view: go there to move it.</p>}
      <RadioKeys
        legend="What the hand does"
        choices={DOINGS}
        chosen={doing}
        disabled={disabled || locked}
        onChoose={(next) => {
          editor.setInHand({ trace: { blobRef: record.id, doing: next, taps: [] } });
          editor.setTool('trace');
          lowerSheet();
        }}
      />
      <p className="field-help">{locked ? 'It is locked: unlock it to move it.' : SAYS[doing]}</p>
      {!locked && trace && <Known trace={trace} />}
      <ChoiceKeys
        label="How strong"
        choices={FADES}
        chosen={place.opacity}
        disabled={disabled}
        onChoose={(opacity) => set({ opacity })}
      />
      <ChoiceKeys
        label="Held fast"
        choices={[
          { value: true, label: 'locked' },
          { value: false, label: 'loose' },
        ]}
        chosen={locked}
        disabled={disabled}
        onChoose={(next) => set({ locked: next })}
      />
      <NumberBox
        label="Turned"
        value={Number(place.angleDeg.toFixed(2))}
        unit="°"
        min={-360}
        max={360}
        disabled={disabled || locked}
        onSet={(v) => typeof v === 'number' && set({ angleDeg: v })}
      />
      <TextBox
        label="Name"
        value={record.name}
        disabled={disabled}
        onSet={(name) => {
          const { id, hash, kind, mediaType, on, pixels } = record;
          const told = { blobRef: id, hash, kind, name, mediaType, on, place };
          return run('blob.set', pixels ? { ...told, pixels } : told);
        }}
      />
      <div className="key-row end-keys">
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => {
            if (!disabled && run('blob.delete', { blobRef: record.id })) editor.setInHand({ trace: null });
          }}
        >
          Take it away
        </button>
      </div>
    </div>
  );
}

/** What is asked now is brought into view: on a phone little of the panel is seen beside the drawing. */
function Asked({ children }: { readonly children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.scrollIntoView({ block: 'center' }), []);
  return (
    <div className="trace-form" ref={place}>
      {children}
    </div>
  );
}

/** The length, or the width and height, once the places have been tapped. */
function Known({ trace }: { readonly trace: TraceInHand }) {
  const editor = useEditor();
  const { disabled, run } = useChange();
  const [wide, setWide] = useState<number | null>(null);
  const { taps, doing, blobRef } = trace;
  const enough = doing === 'scale' ? taps.length === 2 : doing === 'square' && taps.length === 4;
  useEffect(() => {
    if (!enough) setWide(null);
  }, [enough]);
  if (!enough) {
    const wanted = doing === 'scale' ? 2 : doing === 'square' ? 4 : 0;
    return wanted === 0 || taps.length === 0 ? null : (
      <p className="trace-count" aria-live="polite">
        {taps.length} of {wanted} tapped
      </p>
    );
  }
  const done = (ok: boolean): boolean => {
    if (ok) editor.setInHand({ trace: { ...trace, taps: [] } });
    return ok;
  };
  const scale = (lengthMm: number): boolean => {
    const [a, b] = taps;
    if (!a || !b) return false;
    const ok = done(run('trace.scale', { blobRef, a, b, lengthMm }));
    if (ok) lookOnAt(editor, a, lengthMm / distance(a, b));
    return ok;
  };
  const square = (widthMm: number, heightMm: number): boolean =>
    done(run('trace.square', { blobRef, corners: taps, widthMm, heightMm }));
  if (doing === 'scale') {
    return (
      <Asked>
        <NumberBox
          label="It is this long"
          value={null}
          unit="mm"
          min={1}
          max={100_000}
          empty
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && scale(v)}
        />
        <KnownKeys doing="scale" disabled={disabled} onScale={scale} onSquare={square} />
      </Asked>
    );
  }
  return (
    <Asked>
      <div className="pair">
        <NumberBox
          label="Width"
          value={wide}
          unit="mm"
          min={1}
          max={100_000}
          empty
          disabled={disabled}
          onSet={(v) => {
            if (typeof v !== 'number') return false;
            setWide(v);
            return true;
          }}
        />
        <NumberBox
          label="Height"
          value={null}
          unit="mm"
          min={1}
          max={100_000}
          empty
          help={wide === null ? 'The width first.' : undefined}
          disabled={disabled || wide === null}
          onSet={(v) => typeof v === 'number' && wide !== null && square(wide, v)}
        />
      </div>
      <KnownKeys doing="square" disabled={disabled} onScale={scale} onSquare={square} />
    </Asked>
  );
}
