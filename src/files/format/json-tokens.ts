/** End of the string that starts at `at`; the index is negative where it breaks: -1 the text ends, -2 a sign that may not stand there. */
export function stringEnd(text: string, at: number): number {
  for (let i = at + 1; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    if (c === 0x22) return i + 1;
    if (c < 0x20) return -2;
    if (c !== 0x5c) continue;
    i += 1;
    const escaped = text.charAt(i);
    if (escaped === '') return -1;
    if (escaped === 'u') {
      const digits = text.slice(i + 1, i + 5);
      if (!/^[0-9a-fA-F]*$/.test(digits)) return -2;
      if (digits.length < 4) return -1;
      i += 4;
    } else if (!'"\\/bfnrt'.includes(escaped)) return -2;
  }
  return -1;
}

const WORD = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
/** What touches the end of the text and may have lost its tail: 12 of 1200, tr of true. */
const CUT_SHORT = /^(?:-?(?:0|[1-9]\d*)(?:\.\d*)?(?:[eE][+-]?\d*)?|-|t(?:ru?)?|f(?:a(?:ls?)?)?|n(?:ul?)?)$/;
const LONGEST = 64;

function wordEnd(text: string, at: number): number {
  if (text.length - at < LONGEST && CUT_SHORT.test(text.slice(at))) return -1;
  WORD.lastIndex = at;
  return WORD.test(text) ? WORD.lastIndex : -2;
}

/** End of the string, number or word at `at`, or a negative index as of `stringEnd`. */
export function scalarEnd(text: string, at: number): number {
  return text.charAt(at) === '"' ? stringEnd(text, at) : wordEnd(text, at);
}

export function afterSpace(text: string, at: number): number {
  let i = at;
  for (; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    if (c !== 0x20 && c !== 0x0a && c !== 0x0d && c !== 0x09) break;
  }
  return i;
}

/** Line and column, counted from 1, of an index. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  for (let i = text.indexOf('\n'); i !== -1 && i < at; i = text.indexOf('\n', i + 1)) {
    line += 1;
    start = i + 1;
  }
  return { line, column: at - start + 1 };
}
