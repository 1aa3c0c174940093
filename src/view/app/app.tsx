import { useEffect } from 'react';
import { useStore } from 'zustand';
import { Frame } from './frame.tsx';
import { desk, openEmpty } from './jobs.ts';

/** The open job, or a moment of nothing while it is opened. */
export function App() {
  const session = useStore(desk, (d) => d.session);
  useEffect(() => {
    if (desk.getState().session === null) void openEmpty();
  }, []);
  if (!session) return <p className="waiting">opening</p>;
  return <Frame key={session.id} session={session} />;
}
