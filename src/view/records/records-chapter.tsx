import type { Section } from '../../report/section.ts';
import { useEditorState } from '../app/use-session.ts';
import { Fold } from '../job/fold.tsx';
import { SectionChapter } from '../panels/section-chapter.tsx';
import { answerUnsafe } from './say-records.ts';
import { TestsPart } from './tests-part.tsx';
import { UnsafePart } from './unsafe-part.tsx';
import '../panels/inspect/inspect.css';
import '../job/job.css';

/** Tests and records: what is written down first, then everything the drawing lets expect, with its sources. */
export default function RecordsChapter({ section }: { readonly section: Section }) {
  const unsafe = useEditorState((s) => s.plan.job.unsafe);
  return (
    <div className="inspect job-card">
      <TestsPart />
      <div className="folds">
        <Fold id="unsafe" title="Unsafe situations" answer={answerUnsafe(unsafe ?? [])}>
          <UnsafePart />
        </Fold>
        <Fold id="tests-expected" title="What to expect" answer="by the drawing">
          <SectionChapter section={section} />
        </Fold>
      </div>
    </div>
  );
}
