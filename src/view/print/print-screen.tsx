import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { PAPERS } from '../../drawing/sheet/paper.ts';
import type { Sheet, SheetJob } from '../../drawing/sheet/sheet.ts';
import { sheetChoices } from '../../drawing/sheet/sheet-kinds.ts';
import { sayNumber } from '../../drawing/sheet/sheet-svg.ts';
import { listGroups } from '../../files/format/list-sheet.ts';
import { fileName, saveBytes } from '../app/hand-over.ts';
import { Notices } from '../app/notices.tsx';
import { setOver } from '../app/screen.ts';
import { WRITER } from '../app/storage.ts';
import { useFocusBack } from '../app/use-focus-back.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { IssueFields } from './issue-fields.tsx';
import { keepPaper, type PrintChoices, sheetsChosen, storedPaper } from './print-choices.ts';
import { printsSheets } from './print-pages.ts';
import { sheetFonts } from './sheet-fonts.ts';
import { SheetPicture } from './sheet-picture.tsx';
import { SheetRows } from './sheet-rows.tsx';
import { useSheetFonts } from './use-sheet-fonts.ts';
import './print.css';
import '../app/dialog.css';

const today = (): string => {
  const d = new Date();
  return [d.getFullYear(), d.getMonth() + 1, d.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
};

/** The open job as sheets are made of it; null while its report is not there. */
function useSheetJob(): SheetJob | null {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const report = useReport((s) => s.report);
  return useMemo(
    () => report && { plan, chosen, report, list: listGroups(report.lines), today: today() },
    [plan, chosen, report],
  );
}

/** The sheets of the open job: which, on what paper, at what scale; every page as it will come out; print, or one PDF. */
export default function PrintScreen() {
  const dialog = useRef<HTMLDialogElement>(null);
  useFocusBack();
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  const job = useSheetJob();
  const fonts = useSheetFonts();
  return (
    <dialog
      ref={dialog}
      className="sheet print-screen"
      aria-label="Print"
      onCancel={(e) => {
        e.preventDefault();
        setOver(null);
      }}
    >
      <header className="sheet-head">
        <h2>Print</h2>
        <button type="button" className="bare-key" aria-label="Close" onClick={() => setOver(null)}>
          <Icon name="close" size={22} />
        </button>
      </header>
      {job && fonts !== 'loading' ? (
        <Sheets job={job} ownFont={fonts === 'ready'} />
      ) : (
        <p className="waiting">Working it out.</p>
      )}
      <Notices />
    </dialog>
  );
}

interface SheetsProps {
  readonly job: SheetJob;
  /** The sheets are set in their own font; without it there is no PDF, and print is in the page's. */
  readonly ownFont: boolean;
}

function Sheets({ job, ownFont }: SheetsProps) {
  const all = useMemo(() => sheetChoices(job), [job]);
  const [choices, setChoices] = useState<PrintChoices>(() => ({ paper: storedPaper(), on: {}, scales: {} }));
  const choose = (change: Partial<PrintChoices>): void => {
    if (change.paper !== undefined) keepPaper(change.paper);
    setChoices((now) => ({ ...now, ...change }));
  };
  const wanted = useDeferredValue(choices);
  const sheets = useMemo(() => sheetsChosen(job, all, wanted), [job, all, wanted]);
  return (
    <div className="print-body">
      <Pages sheets={sheets} />
      <section className="print-side" aria-label="What is printed">
        <div className="print-choices">
          <RadioKeys
            legend="Paper"
            className="choices print-papers"
            choices={PAPERS.map((p) => ({ value: p.id, label: p.label }))}
            chosen={choices.paper}
            onChoose={(paper) => choose({ paper })}
          />
          <SheetRows job={job} all={all} choices={choices} onChoose={choose} />
          <IssueFields today={job.today} />
        </div>
        <Keys job={job} sheets={sheets} ownFont={ownFont} />
      </section>
    </div>
  );
}

/** What scrolls and holds no key of its own is reached with the tab key, so that the arrows can move it. */
const byKeys = (element: HTMLElement | null): void => element?.setAttribute('tabindex', '0');

function Pages({ sheets }: { readonly sheets: readonly Sheet[] }) {
  return (
    <section ref={byKeys} className="print-pages-shown" aria-label="Pages">
      {sheets.length === 0 && <p className="print-none">No sheet is chosen.</p>}
      {sheets.map((s) => (
        <figure key={s.key}>
          <SheetPicture sheet={s} />
          <figcaption>
            {sayNumber(s)}: {s.head.title}
            {s.head.scale !== null && `, 1:${s.head.scale}`}
          </figcaption>
        </figure>
      ))}
    </section>
  );
}

interface KeysProps extends SheetsProps {
  readonly sheets: readonly Sheet[];
}

function Keys({ job, sheets, ownFont }: KeysProps) {
  const [said, setSaid] = useState(
    ownFont ? '' : 'The font of the sheets could not be loaded: print is in that of the page.',
  );
  const [busy, setBusy] = useState(false);
  const now = useRef(sheets);
  now.current = sheets;
  useEffect(() => printsSheets(() => now.current), []);
  const none = sheets.length === 0;
  const save = async (): Promise<void> => {
    if (none || busy) return;
    setBusy(true);
    setSaid('');
    try {
      const { writePdf } = await import('./write-pdf.ts');
      const title = job.plan.name === '' ? 'Job without a name' : job.plan.name;
      const bytes = await writePdf(sheets, { title, writer: WRITER, fonts: await sheetFonts() });
      saveBytes(fileName(job.plan.name, '.pdf'), 'application/pdf', bytes);
      setSaid(`Saved: ${sheets.length === 1 ? 'one sheet' : `${sheets.length} sheets`}.`);
    } catch (error) {
      setSaid(error instanceof Error ? error.message : 'The PDF could not be written.');
    }
    setBusy(false);
  };
  return (
    <footer className="print-keys">
      <p className="field-help">Print at actual size, then check the bar on a sheet with a rule.</p>
      <div className="key-row">
        <button type="button" className="key primary" aria-disabled={none} onClick={() => !none && window.print()}>
          Print
        </button>
        <button type="button" className="key" aria-disabled={none || busy} onClick={() => void save()}>
          Save as PDF
        </button>
      </div>
      <p className="print-said" role="status">
        {said}
      </p>
    </footer>
  );
}
