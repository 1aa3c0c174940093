export type CsvCell = string | number | boolean | null;

export interface CsvShape {
  /** Comma after RFC 4180; semicolon where the sheet program of the country takes a comma for the decimal sign. */
  readonly separator?: ',' | ';' | '\t';
  /** Sign between whole and tenths. */
  readonly decimal?: '.' | ',';
  /** Mark of byte order in front, by which some sheet programs know UTF-8. */
  readonly mark?: boolean;
}

/** What a sheet program would run as a formula, though only text was meant. */
const FORMULA = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/;

function say(cell: CsvCell, decimal: '.' | ','): string {
  if (cell === null) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell).replace('.', decimal) : '';
  // An apostrophe in front is how sheet programs themselves mark text that looks like a sum.
  return FORMULA.test(cell) ? `'${cell}` : cell;
}

/** Rows as RFC 4180 tells: lines end with CR LF, and whatever holds a separator, a quote or a line end is quoted. */
export function csv(rows: readonly (readonly CsvCell[])[], shape: CsvShape = {}): string {
  const { separator = ',', decimal = '.', mark = false } = shape;
  const quoted = (text: string): string =>
    text.includes(separator) || /["\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  const lines = rows.map((row) => `${row.map((cell) => quoted(say(cell, decimal))).join(separator)}\r\n`);
  return (mark ? '\ufeff' : '') + lines.join('');
}
