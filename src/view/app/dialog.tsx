import { type ReactNode, useEffect, useRef } from 'react';
import { Icon } from '../look/icon.tsx';
import { Notices } from './notices.tsx';
import { setOver } from './screen.ts';
import { useFocusBack } from './use-focus-back.ts';
import './dialog.css';

/** A sheet over the drawing. The browser's own dialog keeps the focus inside it; it goes back where it came from. */
export function Dialog({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useFocusBack();
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className="sheet"
      aria-label={title}
      onCancel={(e) => {
        e.preventDefault();
        setOver(null);
      }}
    >
      <header className="sheet-head">
        <h2>{title}</h2>
        <button type="button" className="bare-key" aria-label="Close" onClick={() => setOver(null)}>
          <Icon name="close" size={22} />
        </button>
      </header>
      <div className="sheet-body">{children}</div>
      <Notices />
    </dialog>
  );
}
