import { useId, useState } from 'react';
import type { Row } from '../../../report/section.ts';
import { Cites } from './cites.tsx';
import { sayUnit, sayWithUnit } from './figures.ts';

type Sum = Extract<Row, { kind: 'sum' }>;

/** One line of working. A tap opens where its figures come from. */
export function SumRow({ row }: { readonly row: Sum }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const inside = (
    <>
      <span className="sum-label">{row.label}</span>
      <span className="sum-result">{sayWithUnit(row.result)}</span>
      {row.how !== '' && <span className="sum-how">{sayUnit(row.how)}</span>}
    </>
  );
  if (row.cites.length === 0) return <div className="sum">{inside}</div>;
  return (
    <div className="sum-with-cites">
      <button type="button" className="sum" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        {inside}
        <span className="out-of-sight">{open ? 'hide where this is from' : 'where this is from'}</span>
      </button>
      <div id={id} hidden={!open}>
        <Cites cites={row.cites} />
      </div>
    </div>
  );
}
