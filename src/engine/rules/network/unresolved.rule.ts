import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { CANT_TELL, illegal, ONE_WAY } from './illegal.ts';

function seenNew(given: Given, edges: readonly string[]): boolean {
  const legs = edges.flatMap((id) => given.network.edges.get(id) ?? []).filter((e) => e.kind === 'leg');
  const placed = (vertex: string): boolean => Boolean(given.network.vertices.get(vertex)?.place);
  // Where a place is missing, that is what is told: see network/no-height.
  if (legs.some((e) => !placed(e.a) || !placed(e.b))) return false;
  return legs.some((e) => e.state === 'new') && (legs.length > 1 || legs.length === edges.length);
}

export default defineRule({
  id: 'network/unresolved',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what meets what'],
  params: () => ({}),
  // Pipes nobody can see meet somewhere behind the tail they are told from; that is no fitting of this job.
  judge: (given) => illegal(given, 'unresolved', 'check').filter((f) => seenNew(given, f.legs ?? [])),
  say: {
    fault: {
      title: '{run}: no made fitting stands here',
      why: '{say}',
      todo: 'Turn it by 45 or 90, move the corner, or make it of two fittings. It is in the list as unresolved.',
    },
    cantTell: CANT_TELL,
    pass: 'Every corner has a fitting.',
  },
  examples: [
    ONE_WAY,
    {
      name: 'a turn of sixty-five degrees',
      given: () =>
        example().run('c', 'cold', [
          [0, 0, 300],
          [1000, 0, 300],
          [1423, 906, 300],
        ]).plan,
      expect: 'check',
    },
  ],
});
