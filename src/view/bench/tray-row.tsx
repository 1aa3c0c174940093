import type { ReactNode } from 'react';
import type { InHand } from '../../editor/editor-api.ts';
import { screen } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';

export function useInHand(): readonly [InHand, (change: Partial<InHand>) => void] {
  const editor = useEditor();
  const inHand = useEditorState((s) => s.inHand);
  return [inHand, editor.setInHand];
}

/** Nothing is left to choose: the drawing is wanted again, not the tray over it. */
export const closeTray = (): void => screen.setState({ tray: false });

export function Row({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <fieldset className="plain-set tray-row">
      <legend className="out-of-sight">{label}</legend>
      <span className="tray-label" aria-hidden="true">
        {label}
      </span>
      <div className="tray-keys">{children}</div>
    </fieldset>
  );
}

export function Pick({
  on,
  onPick,
  children,
}: {
  readonly on: boolean;
  readonly onPick: () => void;
  readonly children: ReactNode;
}) {
  return (
    <button type="button" className="key" aria-pressed={on} onClick={onPick}>
      {children}
    </button>
  );
}
