import { useId } from 'react';
import { Dialog } from '../app/dialog.tsx';
import { type Over, screen, setOver } from '../app/screen.ts';
import { usePhone } from '../app/use-phone.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { toolKeys } from '../bench/tools.ts';
import { Icon } from '../look/icon.tsx';
import { KEY_HINTS } from './key-hints.ts';

const PAGES: readonly { readonly over: Exclude<Over, null>; readonly icon: string; readonly label: string }[] = [
  { over: 'my-things', icon: 'my-things', label: 'My things' },
  { over: 'options', icon: 'options', label: 'Options' },
  { over: 'sums', icon: 'sums', label: 'Sums' },
  { over: 'jobs', icon: 'list', label: 'Jobs' },
  { over: 'print', icon: 'print', label: 'Print' },
  { over: 'help', icon: 'help', label: 'Help' },
];

/** The tools that have no place on the bench, and the rest of the page; each with what it is for. */
export default function MoreSheet() {
  const editor = useEditor();
  const phone = usePhone();
  const tool = useEditorState((s) => s.tool);
  const take = (id: string): void => {
    editor.setTool(id);
    setOver(null);
  };
  return (
    <Dialog title="More">
      <h3>Tools</h3>
      <div className="tool-grid">
        {toolKeys()
          .filter((k) => !(phone ? k.phone : k.tablet))
          .map((k) => (
            <HintedKey
              key={k.id}
              icon={k.icon}
              label={k.label}
              hint={KEY_HINTS[k.id]}
              pressed={k.id === tool}
              onPress={() => take(k.id)}
            />
          ))}
      </div>
      <h3>The page</h3>
      <div className="tool-grid">
        <HintedKey
          icon="in-hand"
          label="In hand"
          hint={KEY_HINTS['in-hand']}
          onPress={() => screen.setState({ over: null, tray: true })}
        />
        {phone && <HintedKey icon="words" label="By words" hint={KEY_HINTS.words} onPress={() => setOver('words')} />}
        {PAGES.map(({ over, icon, label }) => (
          <HintedKey key={over} icon={icon} label={label} hint={KEY_HINTS[over]} onPress={() => setOver(over)} />
        ))}
      </div>
    </Dialog>
  );
}

interface HintedKeyProps {
  readonly icon: string;
  readonly label: string;
  readonly hint: string | undefined;
  readonly pressed?: boolean;
  readonly onPress: () => void;
}

/** The hint is read after the name of the key, not as part of it: the name is what is said to press it. */
function HintedKey({ icon, label, hint, pressed, onPress }: HintedKeyProps) {
  const id = useId();
  return (
    <button
      type="button"
      className="key"
      aria-label={label}
      aria-describedby={hint === undefined ? undefined : id}
      aria-pressed={pressed}
      onClick={onPress}
    >
      <Icon name={icon} />
      {label}
      {hint !== undefined && (
        <span className="under" id={id}>
          {hint}
        </span>
      )}
    </button>
  );
}
