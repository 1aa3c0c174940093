import { figure } from '../../reference/figure.ts';
import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, citesOf, step } from '../gas/said.ts';
import { type ChaseWay, chaseLimits } from '../structure/chase-limits.ts';

const title = 'How deep a wall may be chased';

export default defineSum({
  id: 'chase-depth',
  title,
  topic: 'building',
  inputs: [
    { key: 'way', label: 'way it runs', kind: 'choice', unit: '', required: true, choices: ['vertical', 'horizontal'] },
    {
      key: 'leaf',
      label: 'single leaf, without finishes',
      kind: 'number',
      unit: 'mm',
      required: true,
      least: 50,
      most: 600,
    },
    { key: 'blocks', label: 'blocks', kind: 'choice', unit: '', required: true, choices: ['solid', 'hollow'] },
    {
      key: 'pipe',
      label: 'outside of the pipe with its wrap',
      kind: 'number',
      unit: 'mm',
      required: false,
      least: 6,
      most: 150,
    },
  ],
  work({ way, leaf, blocks, pipe }) {
    // Hollow and cellular blocks are not chased at all: there is no depth to give.
    if (blocks === 'hollow') return cannot(title, ['a solid leaf: hollow and cellular blocks are not chased']);
    const { depth, length } = chaseLimits(way as ChaseWay, Number(leaf));
    if (!depth) return cannot(title, ['the share of the leaf']);
    const share = figure('wall-chases', String(way), 'share');
    const cites = citesOf(share.cite);
    const left = pipe === undefined ? null : depth.lo - Number(pipe);
    return {
      title,
      steps: [
        step('Deepest', share.is === 'known' ? `${share.lo.toFixed(3)} of the leaf` : '', depth, cites),
        ...(length ? [step('Longest', 'level or raking', length, cites)] : []),
        ...(left === null
          ? []
          : [step('Left over the pipe', 'deepest less the pipe', exact(left, 'mm', 1, depth.sureness))]),
      ],
      result: depth,
      missing: [],
      assumed: ['no chase on the other face within the thickness of the wall'],
    };
  },
  example: {
    values: { way: 'vertical', leaf: 102.5, blocks: 'solid' },
    result: 34.17,
    within: 0.02,
    from: 'standard specification clause 650: upright a third of the leaf; 102.5 / 3 by hand',
  },
});
