import { evaluate } from '../../../engine/evaluate.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, manyLegs } from '../houses.ts';

export default defineDuel({
  id: 'evaluate-exponent',
  ours: 'evaluate 3,000 legs',
  peer: 'evaluate 1,000 legs of equal density',
  figure: { name: 'exponent', of: (ratio) => Math.log(ratio) / Math.log(3) },
  atMost: 1.2,
  prepare() {
    const [many, some] = [manyLegs(3000), manyLegs(1000)];
    const [legs, fewer] = [many, some].map((plan) => Object.keys(plan.legs).length);
    if (legs !== 3 * (fewer ?? 0)) throw new Error(`${legs} legs are not three times ${fewer}`);
    return { ours: () => evaluate(many, AFTER), peer: () => evaluate(some, AFTER) };
  },
});
