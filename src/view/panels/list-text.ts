import { sayAmount, sayJoining, wanted } from '../../files/format/list-lines.ts';
import type { Line } from '../../report/piece.ts';

/** How much of it, as the list shows it: "18.4 m", "2". */
export function sayQuantityOf(line: Line): string {
  return line.unit === 'm' ? `${sayAmount(wanted(line))} m` : sayAmount(wanted(line));
}

/** What it is, as the list shows it: size first, since the eye goes down the sizes. */
export function sayWhat(line: Line): string {
  const what = [line.size, line.name].filter((t) => t !== '').join(' ');
  const joining = sayJoining(line.joining);
  return joining === '' || line.name.includes(joining) ? what : `${what}, ${joining}`;
}
