import { useReport } from '../app/use-session.ts';
import { FindingsChapter } from './findings-chapter.tsx';
import { Inspect } from './inspect/inspect.tsx';
import { JobChapter } from './job-chapter.tsx';
import { ListChapter } from './list-chapter.tsx';
import { RunsChapter } from './runs-chapter.tsx';
import { SectionChapter } from './section-chapter.tsx';
import { ThingsChapter } from './things-chapter.tsx';

/** What stands in a chapter. Sections of the report need no entry here. */
export function ChapterBody({ id }: { readonly id: string }) {
  const report = useReport((s) => s.report);
  if (id.startsWith('section:')) {
    const section = report?.sections.find((s) => `section:${s.id}` === id);
    return section ? <SectionChapter section={section} /> : null;
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
    case 'job':
      return <JobChapter />;
    case 'inspect':
      return <Inspect />;
    default:
      return null;
  }
}
