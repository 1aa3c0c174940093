import { inLetters } from './in-letters.ts';

/** The mark of the tool: a set in a pipe, capped at both ends. */
export function KickMark({ size = 34 }: { readonly size?: number }) {
  return (
    <svg
      className="kick-mark"
      width={inLetters(size)}
      height={inLetters(size * 0.76)}
      viewBox="0 0 34 26"
      aria-hidden="true"
      focusable="false"
    >
      <path d="M3 20h9l10-14h9" strokeWidth={3.2} />
      <path d="M3 15v10M31 1v10" strokeWidth={2.4} />
    </svg>
  );
}

/** The line under the one that is chosen. */
export function KickUnderline() {
  return (
    <svg
      className="kick-underline"
      width={inLetters(66)}
      height={inLetters(8)}
      viewBox="0 0 66 8"
      aria-hidden="true"
      focusable="false"
    >
      <path d="M1 6.500h23l5-4.500h36" strokeWidth={2} />
    </svg>
  );
}

/** The turn at the end of a closed row, and the handle of the panel. */
export function KickTurn({ size = 24 }: { readonly size?: number }) {
  return (
    <svg
      className="kick-turn"
      width={inLetters(size * 0.5)}
      height={inLetters(size)}
      viewBox="0 0 12 24"
      aria-hidden="true"
      focusable="false"
    >
      <path d="M2.500 3v7l7 5v7" strokeWidth={1.9} />
    </svg>
  );
}
