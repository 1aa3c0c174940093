import { openChapter } from '../app/screen.ts';
import { OptionList } from '../options/option-list.tsx';

/** The ways the work could be done, as in their own chapter. */
export function OptionsPart() {
  return (
    <>
      <OptionList />
      <div className="key-row">
        <button type="button" className="key slight" onClick={() => openChapter('options')}>
          What differs
        </button>
      </div>
    </>
  );
}
