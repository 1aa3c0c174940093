import { useState } from 'react';
import type { UnsafeSituation } from '../../plan/records/basis.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { sayDate } from '../job/say-job.ts';
import { Icon } from '../look/icon.tsx';
import { keyed } from '../panels/keyed.ts';
import { PhotoView } from '../photos/photo-view.tsx';
import { addPhoto, type From } from '../photos/take-photo.ts';
import { SignatureDrawn } from './signature-drawn.tsx';
import { SignaturePad } from './signature-pad.tsx';

interface Props {
  readonly line: UnsafeSituation;
  readonly disabled: boolean;
  /** True where the line was kept as told. */
  readonly onSet: (line: UnsafeSituation) => boolean;
  readonly onWords: () => void;
  readonly onDelete: () => void;
  readonly onClose: () => void;
}

/** One situation as it stands: its words, its photo, who has signed it. */
export function UnsafeCard({ line, disabled, onSet, onWords, onDelete, onClose }: Props) {
  const [signing, setSigning] = useState(false);
  const rows: readonly (readonly [string, string])[] = [
    ['Classification', line.classification],
    ['Where', line.place],
    ['Notice', line.notice],
    ['On', line.on === null ? '' : sayDate(line.on)],
  ];
  return (
    <section className="line-form" aria-label={line.what}>
      <h4 className="record-title">{line.what}</h4>
      <dl className="unsafe-words">
        {rows.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value === '' ? 'not told' : value}</dd>
          </div>
        ))}
      </dl>
      <Photo line={line} disabled={disabled} onSet={onSet} />
      {line.signed.length === 0 && !signing && <p className="fold-says">Nobody has signed it yet.</p>}
      <ul className="signed">
        {keyed(line.signed, (s) => `${s.name} ${s.on ?? ''}`).map(({ key, item: s }, at) => (
          <li key={key}>
            {s.strokes.length > 0 && <SignatureDrawn strokes={s.strokes} />}
            <span className="signed-name">
              {[s.name, s.on === null ? '' : sayDate(s.on)].filter((t) => t !== '').join(', ')}
            </span>
            <button
              type="button"
              className="key slight"
              aria-disabled={disabled}
              aria-label={`Take off the signature ${s.name}`.trim()}
              onClick={() => {
                if (!disabled) onSet({ ...line, signed: line.signed.filter((_, i) => i !== at) });
              }}
            >
              Take it off
            </button>
          </li>
        ))}
      </ul>
      {signing ? (
        <SignaturePad
          onKeep={(signature) => onSet({ ...line, signed: [...line.signed, signature] })}
          onLeave={() => setSigning(false)}
        />
      ) : (
        <div className="key-row">
          <button
            type="button"
            className="key primary slight"
            aria-disabled={disabled}
            onClick={() => {
              if (!disabled) setSigning(true);
            }}
          >
            Sign it
          </button>
          <button type="button" className="key slight" aria-disabled={disabled} onClick={onWords}>
            Change the words
          </button>
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => {
              if (!disabled) onDelete();
            }}
          >
            Delete
          </button>
          <button type="button" className="key slight" onClick={onClose}>
            Close it
          </button>
        </div>
      )}
    </section>
  );
}

function Photo({ line, disabled, onSet }: Pick<Props, 'line' | 'disabled' | 'onSet'>) {
  const editor = useEditor();
  const photo = useEditorState((s) => (line.photo === null ? undefined : s.plan.blobRefs[line.photo]));
  const [busy, setBusy] = useState(false);
  const add = async (from: From): Promise<void> => {
    if (disabled || busy) return;
    setBusy(true);
    const made = await addPhoto(editor, from, null);
    setBusy(false);
    if (made !== null) onSet({ ...line, photo: made });
  };
  if (photo)
    return (
      <>
        <PhotoView photo={photo} />
        <div className="key-row">
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => {
              if (!disabled) onSet({ ...line, photo: null });
            }}
          >
            Without the photo
          </button>
        </div>
      </>
    );
  return (
    <>
      {line.photo !== null && <p className="fold-says">Its photo was taken out of the job.</p>}
      <div className="photo-keys">
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled || busy}
          onClick={() => void add('camera')}
        >
          <Icon name="photo" size={20} />
          Take a photo
        </button>
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled || busy}
          onClick={() => void add('device')}
        >
          Choose one
        </button>
      </div>
    </>
  );
}
