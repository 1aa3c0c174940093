import type { SaidLine } from './job-lines.tsx';

/** A line as it is read: what, a figure beside it, and what else is known. */
export function Said({ said }: { readonly said: SaidLine }) {
  return (
    <>
      <span className="line-top">
        <span className="line-what">{said.what}</span>
        <span className={said.open ? 'line-figure line-open' : 'line-figure'}>{said.figure}</span>
      </span>
      {said.more !== '' && <span className="line-more">{said.more}</span>}
    </>
  );
}

interface Props {
  readonly said: SaidLine;
  readonly disabled: boolean;
  readonly onOpen: () => void;
}

/** A line that a tap opens. */
export function SaidRow({ said, disabled, onOpen }: Props) {
  return (
    <button
      type="button"
      className="job-line"
      aria-disabled={disabled}
      onClick={() => {
        if (!disabled) onOpen();
      }}
    >
      <Said said={said} />
    </button>
  );
}
