import type { Section } from '../../report/section.ts';
import { SectionChapter } from '../panels/section-chapter.tsx';
import { FlueFaceKey } from './flue-face-key.tsx';

/** The chapter of the flue as the report tells it, with the way to its drawing. */
export default function FlueChapter({ section }: { readonly section: Section }) {
  return (
    <>
      <div className="key-row">
        <FlueFaceKey />
      </div>
      <SectionChapter section={section} />
    </>
  );
}
