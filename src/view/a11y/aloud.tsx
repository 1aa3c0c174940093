import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Said together when they come so close: a reader that is still at the first would lose it to the second. */
const TOGETHER_MS = 120;

export const aloud = createStore<{ readonly text: string; readonly n: number }>(() => ({ text: '', n: 0 }));

let waiting: string[] = [];

/** Says something when there is a pause. The same words that wait already are not said twice. */
export function sayAloud(text: string): void {
  if (text === '' || waiting.includes(text)) return;
  waiting.push(text);
  if (waiting.length > 1) return;
  setTimeout(() => {
    const said = waiting.join(' ');
    waiting = [];
    aloud.setState(({ n }) => ({ text: said, n: n + 1 }));
  }, TOGETHER_MS);
}

/** What is said without being asked for. A dialog has its own: while it is open nothing outside it is heard. */
export function Aloud() {
  const { text, n } = useStore(aloud);
  return (
    <div className="out-of-sight" role="status">
      <span key={n}>{text}</span>
    </div>
  );
}
