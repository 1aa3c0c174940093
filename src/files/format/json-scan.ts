import { afterSpace, scalarEnd, stringEnd } from './json-tokens.ts';

export interface JsonScan {
  /** Index of the first character that does not fit, with the reason; null where the whole text is JSON. */
  readonly fault: { readonly at: number; readonly why: string } | null;
  readonly depth: number;
  /** Names that stand twice in one object: only the last of each would be read. */
  readonly repeated: readonly string[];
  /** The text up to the last whole value, with every open bracket closed: as much of a broken text as is JSON. */
  readonly whole: string;
}

const WANTED = {
  value: 'a value should stand here',
  valueOrEnd: 'a value or ] should stand here',
  key: 'a name in quotes should stand here',
  keyOrEnd: 'a name in quotes or } should stand here',
  colon: 'a colon should stand here',
  commaOrEnd: 'a comma or a closing bracket should stand here',
  end: 'nothing more should follow',
} as const;
type Want = keyof typeof WANTED;

const CUT_SHORT = -1;
const NO_FIT = -2;
const BREAKS_OFF = 'the text breaks off';

/**
 * Reads JSON without building it: says where it breaks and why, and how deep it goes. Engines differ in what they tell
 * of a broken text, and some tell no place. It never recurses, so a hostile depth costs no stack.
 */
export function scanJson(text: string): JsonScan {
  const open: { readonly close: '}' | ']'; readonly keys: Set<string> }[] = [];
  const repeated: string[] = [];
  let want = 'value' as Want;
  let at = 0;
  let depth = 0;
  let whole = { to: 0, depth: 0 };

  const keep = (end: number): number => {
    whole = { to: end, depth: open.length };
    return end;
  };
  const close = (c: string): number => {
    if (open[open.length - 1]?.close !== c) return NO_FIT;
    open.pop();
    want = open.length === 0 ? 'end' : 'commaOrEnd';
    return keep(at + 1);
  };
  const value = (c: string): number => {
    if (c === '{' || c === '[') {
      open.push({ close: c === '{' ? '}' : ']', keys: new Set() });
      depth = Math.max(depth, open.length);
      want = c === '{' ? 'keyOrEnd' : 'valueOrEnd';
      return keep(at + 1);
    }
    const end = scalarEnd(text, at);
    // Alone in the text a number cannot be told from one cut short, and a plan is never one number.
    if (end < 0) return end;
    want = open.length === 0 ? 'end' : 'commaOrEnd';
    return keep(end);
  };
  const key = (c: string): number => {
    const end = c === '"' ? stringEnd(text, at) : NO_FIT;
    if (end < 0) return end;
    const name = text.slice(at + 1, end - 1);
    const keys = open[open.length - 1]?.keys;
    if (keys?.has(name)) repeated.push(name);
    keys?.add(name);
    want = 'colon';
    return end;
  };
  /** Index after what stands at `at`, or why it does not fit. */
  const step = (c: string): number => {
    if ((c === ']' && want === 'valueOrEnd') || (c === '}' && want === 'keyOrEnd')) return close(c);
    if (want === 'value' || want === 'valueOrEnd') return value(c);
    if (want === 'key' || want === 'keyOrEnd') return key(c);
    if (want === 'commaOrEnd' && c !== ',') return close(c);
    if (want === 'end' || (want === 'colon' && c !== ':')) return NO_FIT;
    want = want === 'colon' || open[open.length - 1]?.close === ']' ? 'value' : 'key';
    return at + 1;
  };
  const done = (fault: JsonScan['fault']): JsonScan => {
    const closers = open.slice(0, whole.depth).map((frame) => frame.close);
    return { fault, depth, repeated, whole: text.slice(0, whole.to) + closers.reverse().join('') };
  };

  for (;;) {
    at = afterSpace(text, at);
    if (at >= text.length) return done(want === 'end' ? null : { at, why: BREAKS_OFF });
    const end = step(text.charAt(at));
    if (end < 0) return done({ at, why: end === CUT_SHORT ? BREAKS_OFF : WANTED[want] });
    at = end;
  }
}
