import { lazy, Suspense } from 'react';
import { screen } from '../app/screen.ts';
import { useScreen } from '../app/use-session.ts';
import type { Shows } from './beside.ts';
import { BesideBar } from './beside-bar.tsx';

const IsoPane = lazy(() => import('../iso/iso-pane.tsx'));

/** What stands beside the plan, with the bar that parts them, or in its place. */
export default function BesidePanes({ shows }: { readonly shows: Shows }) {
  const share = useScreen((s) => s.planShare);
  return (
    <>
      {shows === 'both' && <BesideBar />}
      {shows !== 'plan' && (
        <div className="stage-beside" style={shows === 'both' ? { flexGrow: 100 - share } : undefined}>
          <Suspense fallback={null}>
            <IsoPane />
          </Suspense>
        </div>
      )}
      {shows === 'beside' && <PlanKey />}
    </>
  );
}

/** Where there is room for one only: back to the plan, which has the key to this. */
function PlanKey() {
  return (
    <button type="button" className="key slight pane-switch" onClick={() => screen.setState({ besideUp: false })}>
      Plan
    </button>
  );
}
