import type { Line } from '../../report/piece.ts';
import { byFamily, FAMILY_NAMES, sayAmount, sayMoved, wanted } from './list-lines.ts';

/** What is not decided may have no number yet: then none is written. */
function sayOpen(line: Line): string {
  const what = [line.name, line.size].filter((part) => part !== '').join(', ');
  return wanted(line) > 0 ? sayLine(line) : what;
}

/** "2 x 22 end feed elbow"; pipe as it is measured and as it is asked for: "18.4 m of 22 copper tube (7 lengths of 3 m)". */
export function sayLine(line: Line): string {
  const amount = sayAmount(wanted(line));
  const what = [line.size, line.name].filter((part) => part !== '').join(' ');
  if (line.unit === 'each') return `${amount} x ${what}`;
  // What is asked for was worked out from the drawing, so it says nothing of a figure set by hand.
  const asked = line.edited?.quantity == null && line.asked !== '' ? ` (${line.asked})` : '';
  return `${amount} m of ${what}${asked}`;
}

function withNotes(line: Line): string {
  const notes = [line.note, line.edited?.note ?? '', sayMoved(line), line.unverified ? 'unverified' : ''];
  const said = notes.filter((note) => note !== '').join('; ');
  return said === '' ? sayLine(line) : `${sayLine(line)} - ${said}`;
}

/**
 * The list as a message to send or to read out at the counter. Nothing is left out without a word: what was taken off by
 * hand, and what the drawing does not decide, stand at the end.
 */
export function listText(lines: readonly Line[], title = ''): string {
  const open = lines.filter((line) => line.unresolved !== null);
  const decided = lines.filter((line) => line.unresolved === null);
  const buy = decided.filter((line) => wanted(line) > 0);
  const off = decided.filter((line) => wanted(line) <= 0);
  const parts = byFamily(buy).map(([family, of]) => [FAMILY_NAMES[family], ...of.map(withNotes)].join('\n'));
  if (off.length > 0) {
    const each = off.map(
      (line) => `${sayLine({ ...line, edited: null })}${line.edited?.note ? ` - ${line.edited.note}` : ''}`,
    );
    parts.push(['Taken off by hand', ...each].join('\n'));
  }
  if (open.length > 0) {
    parts.push(
      ['To settle before ordering', ...open.map((line) => `${sayOpen(line)} - ${line.unresolved}`)].join('\n'),
    );
  }
  if (parts.length === 0) parts.push('Nothing to buy.');
  return `${[...(title === '' ? [] : [title]), ...parts].join('\n\n')}\n`;
}
