import type { Outcome } from '../../report/finding.ts';
import { inLetters } from './in-letters.ts';

const LETTER: Readonly<Record<Outcome, string>> = { stop: 'S', check: 'C', note: 'N', cantTell: '?' };
/** What a mark is called when it cannot be seen. */
export const OUTCOME_WORD: Readonly<Record<Outcome, string>> = {
  stop: 'stop',
  check: 'check',
  note: 'note',
  cantTell: "can't tell",
};

const octagon = (r: number): string =>
  Array.from({ length: 8 }, (_, i) => {
    const a = ((2 * i + 1) * Math.PI) / 8;
    return `${(13 + r * Math.cos(a)).toFixed(2)},${(13 + r * Math.sin(a)).toFixed(2)}`;
  }).join(' ');

function Shape({ outcome }: { readonly outcome: Outcome }) {
  if (outcome === 'stop') return <polygon className="mark-shape" points={octagon(12.5)} />;
  if (outcome === 'check')
    return <path className="mark-shape" strokeLinejoin="round" d="M13 1.500 25.500 23.500H.500z" />;
  if (outcome === 'note') return <circle className="mark-shape" cx={13} cy={13} r={11.6} />;
  return <rect className="mark-shape" x={1.9} y={1.9} width={22.2} height={22.2} strokeDasharray="3.75 2.75" />;
}

/** A finding's mark: told by its shape and letter, so that it needs no colour. */
export function FindingMark({
  outcome,
  name,
  size = 26,
  hidden = false,
}: {
  readonly outcome: Outcome;
  /** "S1"; left out: the letter alone. */
  readonly name?: string | undefined;
  readonly size?: number;
  /** Set where a word beside it already says the same. */
  readonly hidden?: boolean;
}) {
  const text = name ?? LETTER[outcome];
  const low = outcome === 'check';
  const fontSize = text.length > 2 ? 8.5 : text.length > 1 ? (low ? 9.5 : 11) : low ? 11 : 13;
  return (
    <svg
      className={`mark mark-${outcome}`}
      width={inLetters(size)}
      height={inLetters(size)}
      viewBox="0 0 26 26"
      role={hidden ? undefined : 'img'}
      aria-hidden={hidden ? true : undefined}
      aria-label={hidden ? undefined : `${OUTCOME_WORD[outcome]}${name === undefined ? '' : ` ${name}`}`}
      overflow="visible"
    >
      <Shape outcome={outcome} />
      <text
        className="mark-letter"
        x={13}
        y={low ? 20.2 : 13 + fontSize * 0.355}
        fontSize={fontSize}
        textAnchor="middle"
      >
        {text}
      </text>
    </svg>
  );
}

/** A level vial with the bubble in the middle: it passes. */
export function Vial({ width = 38 }: { readonly width?: number }) {
  const h = width * 0.41;
  return (
    <svg
      className="vial"
      width={inLetters(width)}
      height={inLetters(h)}
      viewBox="0 0 38 15.6"
      aria-hidden="true"
      overflow="visible"
    >
      <rect x={0.75} y={0.75} width={36.5} height={14.1} rx={7.05} fill="none" strokeWidth={1.5} />
      <path d="M13.100.900v13.800M24.900.900v13.800" fill="none" strokeWidth={1.2} />
      <circle cx={19} cy={7.8} r={4.1} className="vial-bubble" />
    </svg>
  );
}
