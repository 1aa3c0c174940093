import { useId, useState } from 'react';
import type { Row } from '../../../report/section.ts';
import { Cites } from './cites.tsx';

type Note = Extract<Row, { kind: 'note' }>;

/** A sentence of a chapter. A tap opens where it is from. */
export function NoteRow({ row }: { readonly row: Note }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const said = (
    <>
      {row.say} {row.unverified && <em className="unverified">unverified</em>}
    </>
  );
  if (row.cites.length === 0) return <p className="row-note">{said}</p>;
  return (
    <div className="row-note">
      <button type="button" className="note-key" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        {said} <span className="note-from">{row.cites.length === 1 ? 'source' : 'sources'}</span>
      </button>
      <div id={id} hidden={!open}>
        <Cites cites={row.cites} />
      </div>
    </div>
  );
}
