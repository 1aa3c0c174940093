import { useStore } from 'zustand';
import { Broken } from './broken.tsx';
import { desk } from './desk.ts';
import { Frame } from './frame.tsx';
import { PageNotices } from './notices.tsx';

/** The open job, or a moment of nothing while it is opened; over it, what stood in the way of the last opening. */
export function App() {
  const session = useStore(desk, (d) => d.session);
  return (
    <Broken>
      {session ? <Frame key={session.id} session={session} /> : <p className="waiting">opening</p>}
      <PageNotices />
    </Broken>
  );
}
