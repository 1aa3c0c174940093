/** Exit codes: 0 fine, 1 some stop was found, 2 the input or the words of the call were not understood. */
export const FINE = 0;
export const SOME_STOP = 1;
export const BAD_INPUT = 2;

/** The world a verb may touch; a test hands in its own. */
export interface Terminal {
  /** Text of a file; throws with a sentence when it cannot be read. */
  readonly read: (file: string) => string;
  readonly write: (file: string, text: string) => void;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

export interface Call {
  readonly words: readonly string[];
  readonly flags: Readonly<Record<string, string | true>>;
}

export interface Verb {
  readonly id: string;
  readonly usage: string;
  readonly about: string;
  readonly flags: readonly string[];
  readonly run: (call: Call, terminal: Terminal) => Promise<number>;
}

export const defineVerb = (verb: Verb): Verb => verb;

/** A slip of the caller: its message is one sentence that says what and where. */
export class BadCall extends Error {}
