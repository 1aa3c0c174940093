import { type ReactNode, useId } from 'react';
import { useStore } from 'zustand';
import { KickTurn } from '../look/kick.tsx';
import { folds, turnFold } from './folds.ts';

interface Props {
  readonly id: string;
  readonly title: string;
  /** What stands in it, in a few words: seen while it is closed. */
  readonly answer: string;
  readonly children: ReactNode;
}

/** A part of the job card: a row with its answer, opened in place. */
export function Fold({ id, title, answer, children }: Props) {
  const open = useStore(folds, (s) => s.open.has(id));
  const body = useId();
  return (
    <section className="fold">
      <h3>
        <button
          type="button"
          className="fold-row"
          aria-expanded={open}
          aria-controls={body}
          onClick={() => turnFold(id)}
        >
          <span className="fold-title">{title}</span>
          <span className="fold-answer">{answer}</span>
          <KickTurn />
        </button>
      </h3>
      <div id={body} className="fold-body" hidden={!open}>
        {open && children}
      </div>
    </section>
  );
}
