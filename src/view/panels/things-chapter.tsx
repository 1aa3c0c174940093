import { lazy, Suspense } from 'react';
import { useEditorState } from '../app/use-session.ts';
import './things.css';

const ThingsList = lazy(() => import('./things/things-list.tsx').then((m) => ({ default: m.ThingsList })));

/** The drawing as a list, beside it. */
export function ThingsChapter() {
  const some = useEditorState(({ plan: { points, runs, rooms, walls, voids, roofs, grounds } }) =>
    [points, runs, rooms, walls, voids, roofs, grounds].some((map) => Object.keys(map).length > 0),
  );
  if (!some) return <p className="empty-chapter">Nothing is drawn yet.</p>;
  return (
    <Suspense fallback={null}>
      <ThingsList />
    </Suspense>
  );
}
