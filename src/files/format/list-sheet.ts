import type { ListGroup } from '../../drawing/sheet/sheet.ts';
import type { Line } from '../../report/piece.ts';
import { byFamily, FAMILY_NAMES, sayAmount, sayJoining, sayMoved, wanted } from './list-lines.ts';

function whatOf(line: Line): string {
  const what = [line.size, line.name].filter((t) => t !== '').join(' ');
  const joining = sayJoining(line.joining);
  return joining === '' || line.name.includes(joining) ? what : `${what}, ${joining}`;
}

function rowOf(line: Line): ListGroup['rows'][number] {
  const byHand = line.edited?.quantity == null ? '' : `by hand; the drawing gives ${sayAmount(line.quantity)}`;
  const under = [
    line.edited?.quantity == null ? line.asked : '',
    line.note,
    byHand,
    line.edited?.note ?? '',
    sayMoved(line),
    line.unresolved ?? '',
    line.unverified ? 'unverified' : '',
  ];
  const amount = sayAmount(wanted(line));
  return {
    amount: line.unit === 'm' ? `${amount} m` : amount,
    what: whatOf(line),
    under: under.filter((t) => t !== '').join('; '),
  };
}

/** The list as a sheet has it: pipe first, then fittings; at the end what the drawing does not decide. */
export function listGroups(lines: readonly Line[]): ListGroup[] {
  const open = lines.filter((line) => line.unresolved !== null);
  const groups = byFamily(lines.filter((line) => line.unresolved === null)).map(
    ([family, of]): ListGroup => ({ title: FAMILY_NAMES[family], rows: of.map(rowOf) }),
  );
  return open.length === 0 ? groups : [...groups, { title: 'To settle before ordering', rows: open.map(rowOf) }];
}
