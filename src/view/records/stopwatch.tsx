import { useEffect, useState } from 'react';

const TICK_MS = 100;
const seconds = (from: number): number => Math.round((performance.now() - from) / TICK_MS) / 10;

/** Times the meter: the seconds go into the form when it is stopped. */
export function Stopwatch({ onStop }: { readonly onStop: (seconds: number) => void }) {
  const [from, setFrom] = useState<number | null>(null);
  const [shown, setShown] = useState(0);
  useEffect(() => {
    if (from === null) return;
    const timer = setInterval(() => setShown(seconds(from)), TICK_MS);
    return () => clearInterval(timer);
  }, [from]);
  const press = (): void => {
    if (from === null) {
      setShown(0);
      setFrom(performance.now());
      return;
    }
    onStop(seconds(from));
    setFrom(null);
  };
  return (
    <div className="key-row">
      <button type="button" className="key slight" aria-pressed={from !== null} onClick={press}>
        {from === null ? 'Time the meter' : `Stop at ${shown.toFixed(1)} s`}
      </button>
    </div>
  );
}
