import type { Plan } from '../../../plan/plan.ts';
import type { Outcome } from '../../../report/finding.ts';
import { sayThing } from '../../a11y/say-thing.ts';
import { FindingMark, OUTCOME_WORD } from '../../look/mark.tsx';
import type { Thing } from './things-of.ts';

/** How many findings a thing has, and the worst of them. */
export interface ThingFindings {
  readonly worst: Outcome;
  readonly count: number;
}

interface Props {
  readonly plan: Plan;
  readonly thing: Thing;
  readonly at: number;
  readonly current: boolean;
  readonly chosen: boolean;
  readonly findings: ThingFindings | undefined;
  readonly onFocus: () => void;
  readonly onChoose: (add: boolean) => void;
  readonly onShow: () => void;
}

const sayFound = ({ worst, count }: ThingFindings): string =>
  `${count} ${count === 1 ? 'finding' : 'findings'}, ${count === 1 ? '' : 'worst '}${OUTCOME_WORD[worst]}`;

/** A thing as a line of the list: chosen by a tap, shown on the drawing by the key beside it. */
export function ThingLine({ plan, thing, at, current, chosen, findings, onFocus, onChoose, onShow }: Props) {
  const says = sayThing(plan, thing);
  return (
    <li className="thing-line">
      <button
        type="button"
        className="thing"
        data-row={at}
        tabIndex={current ? 0 : -1}
        aria-pressed={chosen}
        onFocus={onFocus}
        onClick={(e) => onChoose(e.ctrlKey || e.metaKey || e.shiftKey)}
      >
        <span className="thing-name">{thing.name}</span>
        {says !== '' && <span className="thing-says">{says}</span>}
        {findings && <span className="out-of-sight">, {sayFound(findings)}</span>}
      </button>
      {findings && (
        <span className="thing-findings" aria-hidden="true">
          <FindingMark outcome={findings.worst} hidden />
          {findings.count > 1 && findings.count}
        </span>
      )}
      {(current || chosen) && (
        <button
          type="button"
          className="bare-key thing-show"
          tabIndex={current ? 0 : -1}
          aria-label={`Show ${thing.name} on the drawing`}
          onClick={onShow}
        >
          Show
        </button>
      )}
    </li>
  );
}
