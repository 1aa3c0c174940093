import { useState } from 'react';
import { useStore } from 'zustand';
import { isHolding, whyNot } from '../../editor/key-changes.ts';
import { chordOf, isBareSign, type KeyBinding, type KeyGroup } from '../../editor/keys.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { changeKey, keysOf, keyTable, resetKey, resetKeys, switchSigns } from './key-table.ts';
import { sayKey } from './say-key.ts';
import './keys.css';

const GROUPS: readonly { readonly group: KeyGroup; readonly title: string }[] = [
  { group: 'tool', title: 'Tools' },
  { group: 'change', title: 'Steps' },
  { group: 'look', title: 'Looking and the cross' },
  { group: 'page', title: 'The page' },
];

const SIGNS = [
  { value: true, label: 'on' },
  { value: false, label: 'only on the drawing' },
] as const;

/** Every key by what it does; each can be changed, and letters by themselves can be off. */
export function KeySettings() {
  const table = useStore(keyTable);
  const [asking, setAsking] = useState<string | null>(null);
  const [told, setTold] = useState('');
  const keys = keysOf(table);
  const some = Object.keys(table.changes).length > 0;
  const press = (binding: KeyBinding, e: React.KeyboardEvent): void => {
    if (asking !== binding.id || isHolding(e.key) || e.key === 'Tab') return;
    e.preventDefault();
    e.stopPropagation();
    const chord = chordOf({ key: e.key, ctrl: e.ctrlKey || e.metaKey, shift: e.shiftKey });
    if (e.key === 'Escape' && binding.id !== 'cancel') {
      setAsking(null);
      setTold(`${binding.label} keeps its key.`);
      return;
    }
    const why = whyNot(keys, binding.id, chord);
    if (why !== null) {
      setTold(`${sayKey(chord)}: ${why}`);
      return;
    }
    changeKey(binding.id, chord);
    setAsking(null);
    setTold(`${binding.label} is on ${sayKey(chord)} now.`);
  };
  return (
    <>
      <RadioKeys legend="Letters and signs by themselves" choices={SIGNS} chosen={table.signs} onChoose={switchSigns} />
      <p className="keys-note">
        Only on the drawing: a letter pressed anywhere else does nothing, and takes no tool. Keys held with Ctrl stay as
        they are. It helps where words are spoken to the device.
      </p>
      <p className="keys-told" role="status">
        {told}
      </p>
      {GROUPS.map(({ group, title }) => (
        <section key={group} aria-label={title}>
          <h4 className="keys-head">{title}</h4>
          <ul className="keys-list">
            {keys
              .filter((k) => k.group === group)
              .map((k) => (
                <KeyRow
                  key={k.id}
                  binding={k}
                  asking={asking === k.id}
                  off={!table.signs && isBareSign(k)}
                  changed={table.changes[k.id] !== undefined}
                  onAsk={() => {
                    setAsking(asking === k.id ? null : k.id);
                    setTold(asking === k.id ? '' : `Press the new key for ${k.label}. Esc leaves it.`);
                  }}
                  onKey={(e) => press(k, e)}
                  onReset={() => {
                    resetKey(k.id);
                    setAsking(null);
                    setTold(`${k.label} has its own key again.`);
                  }}
                  onLeave={() => asking === k.id && setAsking(null)}
                />
              ))}
          </ul>
        </section>
      ))}
      <button
        type="button"
        className="key slight"
        aria-disabled={!some}
        onClick={() => {
          if (!some) return;
          resetKeys();
          setTold('All keys are as they came.');
        }}
      >
        All keys as they came
      </button>
    </>
  );
}

interface RowProps {
  readonly binding: KeyBinding;
  readonly asking: boolean;
  readonly off: boolean;
  readonly changed: boolean;
  readonly onAsk: () => void;
  readonly onKey: (e: React.KeyboardEvent) => void;
  readonly onReset: () => void;
  readonly onLeave: () => void;
}

function KeyRow({ binding, asking, off, changed, onAsk, onKey, onReset, onLeave }: RowProps) {
  const { label } = binding;
  const key = sayKey(binding);
  return (
    <li>
      <span className="keys-act">{label}</span>
      {changed && (
        <button type="button" className="bare-key" aria-label={`${label}: its own key again`} onClick={onReset}>
          reset
        </button>
      )}
      <button
        type="button"
        className="key slight keys-key"
        aria-label={asking ? `${label}: press the new key` : `${label}: ${key}${off ? ', off' : ''}. Change`}
        aria-pressed={asking}
        onClick={onAsk}
        onKeyDown={onKey}
        onBlur={onLeave}
      >
        {asking ? 'press a key' : <kbd>{off ? `${key}, off` : key}</kbd>}
      </button>
    </li>
  );
}
