import { type FocusEvent, useEffect, useRef } from 'react';
import type { WordKey } from '../../editor/words/words-api.ts';
import { isFocusLost } from '../app/use-focus-back.ts';
import { Icon } from '../look/icon.tsx';

interface Props {
  /** The run is told: what could be told next takes little room, so that the answer has it. */
  readonly told: boolean;
  readonly keys: readonly WordKey[];
  readonly onPress: (key: string) => void;
}

/** Where each key of the telling lies, row by row; the rows above the digits change with what is told. */
const GRID: readonly (readonly string[])[] = [
  ['up', '7', '8', '9', 'left'],
  ['ahead', '4', '5', '6', 'right'],
  ['down', '1', '2', '3', 'tee'],
  ['back', '00', '0', 'rub', 'keep'],
];
const ICONS: Readonly<Record<string, string>> = {
  up: 'up',
  ahead: 'ahead',
  down: 'down',
  left: 'left',
  right: 'right',
  tee: 'branch',
};
const LAST = ['back', 'rub', 'keep'];
const WORDS: readonly WordKey['group'][] = ['service', 'from', 'class'];

const idOf = (keys: readonly WordKey[], name: string): string | null =>
  keys.find((k) => k.id === name || k.id === `digit ${name}`)?.id ?? null;

/** The pad: a row of places and things above, then digits between the ways. Where a word is wanted, words fill it. */
export function WordsPad({ told, keys, onPress }: Props) {
  const box = useRef<HTMLElement>(null);
  const held = useRef(true);
  useEffect(() => {
    // A pressed key is often gone with what it told. The pad keeps the focus: Enter then still means "keep".
    if (held.current && isFocusLost()) box.current?.focus({ preventScroll: true });
  });
  const holding = {
    ref: box,
    tabIndex: -1,
    onFocus: () => {
      held.current = true;
    },
    onBlur: (e: FocusEvent) => {
      if (e.relatedTarget !== null) held.current = false;
    },
  };
  const words = keys.filter((k) => WORDS.includes(k.group));
  const top = keys.filter((k) => k.group === 'height' || k.group === 'end');
  if (words.length > 0) {
    const last = LAST.flatMap((name) => {
      const id = idOf(keys, name);
      return id === null ? [] : [{ name, id }];
    });
    return (
      <section className="pad" aria-label="Pad" {...holding}>
        {told && <p className="pad-next">Kept. Say another run:</p>}
        <div className={told ? 'pad-top' : 'pad-words'}>
          {words.map((k) => (
            <button
              key={k.id}
              type="button"
              className={told ? 'pad-place' : 'pad-key word'}
              onClick={() => onPress(k.id)}
            >
              {k.label}
            </button>
          ))}
        </div>
        {last.length > 0 && (
          <div className="pad-row last">
            {last.map(({ name, id }) => (
              <PadKey key={name} name={name} id={id} onPress={onPress} />
            ))}
          </div>
        )}
      </section>
    );
  }
  return (
    <section className="pad" aria-label="Pad" {...holding}>
      <div className="pad-top">
        {top.map((k) => (
          <button key={k.id} type="button" className="pad-place" onClick={() => onPress(k.id)}>
            {k.label}
          </button>
        ))}
      </div>
      {GRID.map((row) => (
        <div key={row[0]} className="pad-row">
          {row.map((name) => (
            <PadKey key={name} name={name} id={idOf(keys, name)} onPress={onPress} />
          ))}
        </div>
      ))}
    </section>
  );
}

function PadKey({
  name,
  id,
  onPress,
}: {
  readonly name: string;
  readonly id: string | null;
  readonly onPress: (key: string) => void;
}) {
  const icon = ICONS[name];
  const look = name === 'keep' ? ' primary' : /^\d+$/.test(name) ? ' digit' : icon ? ' way' : ' edit';
  return (
    <button
      type="button"
      className={`pad-key${look}`}
      aria-disabled={id === null}
      onClick={() => {
        if (id !== null) onPress(id);
      }}
    >
      {icon && <Icon name={icon} size={24} />}
      {name}
    </button>
  );
}
