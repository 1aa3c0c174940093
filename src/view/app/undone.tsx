import { useEffect } from 'react';
import { screen } from './screen.ts';
import { useScreen } from './use-session.ts';

const OFFER_MS = 12_000;

/** What was just taken away, with a key that brings it back, for as long as it takes to notice. */
export function Undone() {
  const undone = useScreen((s) => s.undone);
  useEffect(() => {
    if (undone === null) return;
    const timer = setTimeout(() => screen.setState({ undone: null }), OFFER_MS);
    return () => clearTimeout(timer);
  }, [undone]);
  if (undone === null) return null;
  return (
    <div className="trouble" role="status">
      <p>{undone.text}</p>
      <button
        type="button"
        className="key slight"
        onClick={() => {
          screen.setState({ undone: null });
          undone.undo();
        }}
      >
        Bring it back
      </button>
    </div>
  );
}
