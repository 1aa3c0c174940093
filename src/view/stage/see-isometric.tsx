import { showBeside } from './beside.ts';

/** From the form of a run or of one of its legs to its isometric. */
export function SeeIsometric({ run }: { readonly run: string }) {
  return (
    <button type="button" className="key slight" onClick={() => showBeside({ what: 'iso', scope: 'run', run })}>
      See it in isometric
    </button>
  );
}
