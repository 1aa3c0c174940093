import { FindingMark, OUTCOME_WORD, Vial } from '../look/mark.tsx';

const MARKS = [
  { outcome: 'stop', says: 'must not be built like this' },
  { outcome: 'check', says: 'may not be right: look at it and decide' },
  { outcome: 'cantTell', says: 'something is missing, and it says what' },
  { outcome: 'note', says: 'good to know, nothing is wrong' },
] as const;

/** The marks of findings and of what passes, each with what it means. */
export function MarkWords() {
  return (
    <table className="key-table marks-table">
      <tbody>
        {MARKS.map(({ outcome, says }) => (
          <tr key={outcome}>
            <th scope="row">
              <span className="mark-word">
                <FindingMark outcome={outcome} hidden />
                {OUTCOME_WORD[outcome]}
              </span>
            </th>
            <td>{says}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">
            <span className="mark-word">
              <Vial width={26} />
              passes
            </span>
          </th>
          <td>compared with its limit and within it; no more than that</td>
        </tr>
      </tbody>
    </table>
  );
}
