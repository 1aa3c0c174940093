import { DifferenceList } from './difference-list.tsx';
import { OptionList } from './option-list.tsx';
import '../panels/inspect/inspect.css';

/** The ways of doing the work, and how they differ from what is there and from each other. */
export default function OptionsChapter() {
  return (
    <div className="inspect">
      <OptionList />
      <DifferenceList />
    </div>
  );
}
