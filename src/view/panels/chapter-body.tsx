import { lazy, Suspense } from 'react';
import { useReport } from '../app/use-session.ts';
import { ThingsChapter } from './things-chapter.tsx';

/** Not needed before the first stroke: they come when they are first opened. */
const SectionChapter = lazy(() => import('./section-chapter.tsx').then((m) => ({ default: m.SectionChapter })));
const ReachChapter = lazy(() => import('./reach-chapter.tsx').then((m) => ({ default: m.ReachChapter })));
const FindingsChapter = lazy(() => import('./findings-chapter.tsx').then((m) => ({ default: m.FindingsChapter })));
const RunsChapter = lazy(() => import('./runs-chapter.tsx').then((m) => ({ default: m.RunsChapter })));
const Inspect = lazy(() => import('./inspect/inspect.tsx').then((m) => ({ default: m.Inspect })));
const JobChapter = lazy(() => import('../job/job-chapter.tsx').then((m) => ({ default: m.JobChapter })));
const ListChapter = lazy(() => import('./list-chapter.tsx').then((m) => ({ default: m.ListChapter })));

const TracesChapter = lazy(() => import('../traces/traces-chapter.tsx').then((m) => ({ default: m.TracesChapter })));
const FlueChapter = lazy(() => import('../flue-face/flue-chapter.tsx'));
const OptionsChapter = lazy(() => import('../options/options-chapter.tsx'));
const RecordsChapter = lazy(() => import('../records/records-chapter.tsx'));

/** What stands in a chapter. Sections of the report need no entry here. */
export function ChapterBody({ id }: { readonly id: string }) {
  return (
    <Suspense fallback={null}>
      <Body id={id} />
    </Suspense>
  );
}

function Body({ id }: { readonly id: string }) {
  const report = useReport((s) => s.report);
  if (id.startsWith('section:')) {
    const section = report?.sections.find((s) => `section:${s.id}` === id);
    if (!section) return null;
    if (section.id === 'flue') return <FlueChapter section={section} />;
    if (section.id === 'tests') return <RecordsChapter section={section} />;
    return section.id === 'reach' ? <ReachChapter section={section} /> : <SectionChapter section={section} />;
  }
  switch (id) {
    case 'findings':
      return <FindingsChapter />;
    case 'list':
      return <ListChapter />;
    case 'runs':
      return <RunsChapter />;
    case 'things':
      return <ThingsChapter />;
    case 'traces':
      return <TracesChapter />;
    case 'options':
      return <OptionsChapter />;
    case 'job':
      return <JobChapter />;
    case 'inspect':
      return <Inspect />;
    default:
      return null;
  }
}
