import { useStore } from 'zustand';
import { Icon } from '../look/icon.tsx';
import { desk, say } from './desk.ts';
import { Undone } from './undone.tsx';
import { useScreen } from './use-session.ts';

/** What stood in the way of the last opening, and what can be brought back. */
export function Notices() {
  return (
    <>
      <Trouble />
      <Undone />
    </>
  );
}

/** The same on the page itself. A dialog shows its own: while it is open nothing outside it can be reached. */
export function PageNotices() {
  const dialog = useScreen((s) => s.over !== null && s.over !== 'words');
  return dialog ? null : <Notices />;
}

function Trouble() {
  const trouble = useStore(desk, (d) => d.trouble);
  if (trouble === null) return null;
  return (
    <div className="trouble" role="alert">
      <p>{trouble}</p>
      <button type="button" className="bare-key" aria-label="Close" onClick={() => say(null)}>
        <Icon name="close" size={20} />
      </button>
    </div>
  );
}
