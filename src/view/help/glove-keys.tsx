import { useState } from 'react';
import { useEditor } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { keepGloves, storedGloves } from './stored-gloves.ts';

const CHOICES = [
  { value: false, label: 'bare hands' },
  { value: true, label: 'gloves' },
] as const;

/** Gloves make every touch coarser: what is near enough to be caught is further away. */
export function GloveKeys() {
  const editor = useEditor();
  const [on, setOn] = useState(storedGloves);
  const choose = (gloves: boolean): void => {
    keepGloves(gloves);
    editor.setGloves(gloves);
    setOn(gloves);
  };
  return <RadioKeys<boolean> legend="Touched with" choices={CHOICES} chosen={on} onChoose={choose} />;
}
