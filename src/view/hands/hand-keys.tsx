import { useStore } from 'zustand';
import { useEditor } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { chooseLens, choosePen, handSettings } from './hand-settings.ts';

const USES = [
  { value: 'auto', label: 'as it comes' },
  { value: 'pen', label: 'pen draws, fingers move' },
  { value: 'fingers', label: 'fingers draw too' },
] as const;

const LENS = [
  { value: true, label: 'shown' },
  { value: false, label: 'not shown' },
] as const;

/** Who draws where there is a pen, and whether a lens shows what the finger hides. */
export function HandKeys() {
  const editor = useEditor();
  const { pen, lens } = useStore(handSettings);
  return (
    <>
      <RadioKeys
        legend="With a pen"
        choices={USES}
        chosen={pen}
        onChoose={(use) => {
          choosePen(use);
          editor.setPenUse(use);
        }}
      />
      <p className="field-help">As it comes: once a pen was seen, fingers move the paper for a minute.</p>
      <RadioKeys<boolean> legend="Lens above a finger" choices={LENS} chosen={lens} onChoose={chooseLens} />
    </>
  );
}
