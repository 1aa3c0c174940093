import { evaluate } from '../../../engine/evaluate.ts';
import { copiesOf } from '../copies.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

const MANY = 20;
const FEW = 5;

export default defineDuel({
  id: 'evaluate-twenty',
  ours: 'evaluate the house with a rear extension twenty times over',
  peer: 'evaluate it five times over',
  figure: { name: 'exponent', of: (ratio) => Math.log(ratio) / Math.log(MANY / FEW) },
  atMost: 1.2,
  prepare() {
    const house = demoPlan('extension');
    const [many, few] = [copiesOf(house, MANY), copiesOf(house, FEW)];
    return { ours: () => evaluate(many, AFTER), peer: () => evaluate(few, AFTER) };
  },
});
