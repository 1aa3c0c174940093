import { useState } from 'react';
import { useEditor } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';

const KEY = 'kickset.gloves';
const CHOICES = [
  { value: false, label: 'bare hands' },
  { value: true, label: 'gloves' },
] as const;

export function storedGloves(): boolean {
  try {
    return localStorage.getItem(KEY) === 'yes';
  } catch {
    return false;
  }
}

/** Gloves make every touch coarser: what is near enough to be caught is further away. */
export function GloveKeys() {
  const editor = useEditor();
  const [on, setOn] = useState(storedGloves);
  const choose = (gloves: boolean): void => {
    try {
      localStorage.setItem(KEY, gloves ? 'yes' : 'no');
    } catch {
      // It holds until the page is closed.
    }
    editor.setGloves(gloves);
    setOn(gloves);
  };
  return <RadioKeys<boolean> legend="Touched with" choices={CHOICES} chosen={on} onChoose={choose} />;
}
