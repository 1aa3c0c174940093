import { useStore } from 'zustand';
import { Icon } from '../look/icon.tsx';
import { Broken } from './broken.tsx';
import { desk, say } from './desk.ts';
import { Frame } from './frame.tsx';
import { Undone } from './undone.tsx';

/** The open job, or a moment of nothing while it is opened; over it, what stood in the way of the last opening. */
export function App() {
  const session = useStore(desk, (d) => d.session);
  return (
    <Broken>
      {session ? <Frame key={session.id} session={session} /> : <p className="waiting">opening</p>}
      <Trouble />
      <Undone />
    </Broken>
  );
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
