import { sayTubeSize } from '../../../catalogue/tubes.ts';
import type { Change, Fitting } from '../../../network/fitting.ts';

const sayChange = (c: Change): string => `${c.is} ${sayTubeSize(c.from)} to ${sayTubeSize(c.to)}`;

/** What stands at a place, as it is asked for at a counter. */
export function sayFitting(f: Fitting): string {
  switch (f.is) {
    case 'plain':
      return 'The pipe goes straight on: no fitting.';
    case 'coupling':
      return `Coupling ${sayTubeSize(f.tube)}: new pipe carries on from old.`;
    case 'elbow':
      return `Elbow ${sayTubeSize(f.tube)}, ${f.degrees} degrees${f.change ? `, with ${sayChange(f.change)}` : ''}.`;
    case 'bend':
      return `Bend pulled in ${sayTubeSize(f.tube)}, ${Math.round(f.turnDeg)} degrees.`;
    case 'reducer':
    case 'transition':
      return `${sayChange(f.change)}.`;
    case 'tee':
      return `${f.words}.`;
    case 'joint':
      return `Meets a tail of ${f.size ?? 'unknown size'}.`;
    case 'open':
      return `Open end of ${sayTubeSize(f.tube)}.`;
    case 'cap':
      return `Cap ${sayTubeSize(f.tube)}.`;
    case 'unresolved':
      return f.why;
    case 'none':
      return 'No pipe reaches here.';
  }
}
