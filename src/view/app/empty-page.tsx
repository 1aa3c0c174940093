import { DemoList } from './demo-list.tsx';
import { openFileFromDevice } from './open-file.ts';
import { setOver } from './screen.ts';
import { useEditor } from './use-session.ts';
import './empty-page.css';

/** What an empty page offers. No tour, no name asked. */
export function EmptyPage() {
  const editor = useEditor();
  return (
    <section className="empty-page" aria-labelledby="empty-title">
      <svg className="empty-kick" viewBox="0 0 138 78" width="138" height="78" aria-hidden="true">
        <path d="M4 62h34l32-46h60" strokeWidth="12" />
        <path d="M6 50v24M132 4v24" strokeWidth="9" />
      </svg>
      <h2 id="empty-title">An empty page answers too.</h2>
      <p>How big a gas pipe? Say where it goes.</p>
      <p>Nothing has to be drawn first.</p>
      <div className="key-row">
        <button type="button" className="key primary" onClick={() => setOver('words')}>
          Say a run
        </button>
        <button type="button" className="key" onClick={() => editor.setTool('wall')}>
          Draw a wall
        </button>
        <button type="button" className="key" onClick={() => void openFileFromDevice()}>
          Open a file
        </button>
      </div>
      <button
        type="button"
        className="empty-line"
        onClick={() => void import('../traces/draw-over.ts').then(({ drawOver }) => drawOver())}
      >
        <span className="demo-name">Draw over a picture:</span> an agent's plan, a scan
      </button>
      <button type="button" className="empty-line" onClick={() => setOver('sums')}>
        <span className="demo-name">Sums without a drawing:</span> gas run, wait, vessel, bends
      </button>
      <p>Or look at an invented house.</p>
      <DemoList />
    </section>
  );
}
