import { useState } from 'react';
import type { Size } from '../../catalogue/define-point.ts';
import { servicesInOrder } from '../../catalogue/services.ts';
import type { Connection } from '../../plan/records/pipework.ts';
import { Icon } from '../look/icon.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { SelectBox } from '../panels/inspect/select-box.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { ServiceTag } from '../panels/service-tag.tsx';
import { inOrder, isUnderside, swapped, withTail } from './tail-order.ts';
import { Underside } from './underside.tsx';
import './things.css';

interface Props {
  readonly size: Size;
  readonly tails: readonly Connection[];
  readonly disabled: boolean;
  readonly onSet: (tails: Connection[], label: string) => boolean;
}

/** The tails of a thing from left to right: where each leaves, how large it is, and keys that change their order. */
export function TailsEditor({ size, tails, disabled, onSet }: Props) {
  const row = inOrder(tails);
  const below = isUnderside(tails);
  const change = (id: string, what: Partial<Connection>, label: string): boolean =>
    onSet(
      tails.map((t) => (t.id === id ? { ...t, ...what } : t)),
      label,
    );
  return (
    <div className="tails-editor">
      {row.length > 0 && <Underside size={size} tails={tails} />}
      {row.length === 0 && <p className="thing-note">It has no tails yet.</p>}
      <ol className="tail-rows">
        {row.map((t, i) => (
          <li key={t.id} className="tail-row">
            <div className="tail-head">
              <ServiceTag service={t.service} />
              <span className="tail-label">{t.label}</span>
              <button
                type="button"
                className="bare-key"
                aria-label={`${t.label}: one to the left`}
                aria-disabled={disabled || i === 0}
                onClick={() => i > 0 && onSet(swapped(tails, t.id, -1), `${t.label} to the left`)}
              >
                left
              </button>
              <button
                type="button"
                className="bare-key"
                aria-label={`${t.label}: one to the right`}
                aria-disabled={disabled || i === row.length - 1}
                onClick={() => i < row.length - 1 && onSet(swapped(tails, t.id, 1), `${t.label} to the right`)}
              >
                right
              </button>
              <button
                type="button"
                className="bare-key"
                aria-label={`Take the ${t.label.toLowerCase()} tail away`}
                aria-disabled={disabled}
                onClick={() =>
                  onSet(
                    tails.filter((o) => o.id !== t.id),
                    `take ${t.label} away`,
                  )
                }
              >
                <Icon name="bin" size={20} />
              </button>
            </div>
            <div className="triple">
              <NumberBox
                label="From left"
                value={t.at.x + size.widthMm / 2}
                min={0}
                max={size.widthMm}
                disabled={disabled}
                onSet={(v) =>
                  typeof v === 'number' &&
                  change(t.id, { at: { ...t.at, x: v - size.widthMm / 2 } }, `place of ${t.label}`)
                }
              />
              <NumberBox
                label={below ? 'Off the wall' : 'Up'}
                value={below ? t.at.y : t.at.z}
                min={0}
                max={below ? size.depthMm : size.heightMm}
                disabled={disabled}
                onSet={(v) =>
                  typeof v === 'number' &&
                  change(t.id, { at: below ? { ...t.at, y: v } : { ...t.at, z: v } }, `place of ${t.label}`)
                }
              />
              <TextBox
                label="Size"
                value={t.size ?? ''}
                disabled={disabled}
                onSet={(v) => change(t.id, { size: v.trim() === '' ? null : v.trim() }, `size of ${t.label}`)}
              />
            </div>
          </li>
        ))}
      </ol>
      <AddTail size={size} tails={tails} disabled={disabled} onSet={onSet} />
    </div>
  );
}

function AddTail({ size, tails, disabled, onSet }: Props) {
  const [service, setService] = useState<string>('heatingFlow');
  return (
    <div className="key-row add-tail">
      <div className="grow">
        <SelectBox
          label="A further tail"
          choices={servicesInOrder().map((s) => ({ value: s.id, label: s.label }))}
          chosen={service}
          disabled={disabled}
          onChoose={(v) => v !== null && setService(v)}
        />
      </div>
      <button
        type="button"
        className="key slight"
        aria-disabled={disabled}
        onClick={() => !disabled && onSet(withTail(tails, service, size.widthMm, size.depthMm), 'add a tail')}
      >
        Add
      </button>
    </div>
  );
}
