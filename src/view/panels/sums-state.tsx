import { useLate } from '../app/use-late.ts';
import { useReport } from '../app/use-session.ts';

/** Said over the answers when they are late, or when the sums could not be done at all; nothing else. */
export function SumsState() {
  const late = useLate(useReport((s) => s.waiting));
  const failed = useReport((s) => s.failed);
  if (failed !== null) {
    return (
      <p className="sums-state wrong" role="alert">
        The sums stopped here, so these figures are not those of the drawing. The drawing is kept: undo the last step,
        or open the job again. <span className="sums-why">{failed}</span>
      </p>
    );
  }
  return late ? (
    <p className="sums-state" role="status">
      working it out
    </p>
  ) : null;
}
