import { lazy, Suspense } from 'react';
import { screen } from '../app/screen.ts';
import { useScreen } from '../app/use-session.ts';
import type { Shows } from './beside.ts';
import { BesideBar } from './beside-bar.tsx';

const IsoPane = lazy(() => import('../iso/iso-pane.tsx'));

/** What stands beside the plan with the bar that parts them, or the key to it where there is room for one of them. */
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
      {shows !== 'both' && <PaneSwitch up={shows === 'beside'} />}
    </>
  );
}

/** Where there is room for one only: which one. */
function PaneSwitch({ up }: { readonly up: boolean }) {
  return (
    <button type="button" className="key pane-switch" onClick={() => screen.setState({ besideUp: !up })}>
      {up ? 'Plan' : 'Isometric'}
    </button>
  );
}
