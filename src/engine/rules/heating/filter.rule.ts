import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { isHeating, waterSystems } from '../../heating-system/water-systems.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { waterHouse } from './water-houses.ts';

function judge(given: Given): Fault[] {
  return waterSystems(given).flatMap((system): Fault[] => {
    const onReturn = (edge: string): boolean => {
      const e = given.network.edges.get(edge);
      return e !== undefined && isHeating(e) && e.circuit === 'heatingReturn';
    };
    const filtered = [...system.vertices.values()].some(
      (v) => v.edges.some(onReturn) && v.items.some((i) => given.plan.items[i]?.kind === 'filter'),
    );
    if (filtered) return [];
    return system.boilers.flatMap((b): Fault[] => {
      const tails = [...system.vertices.values()].filter((v) => v.point === b.id && v.edges.some(onReturn));
      if (b.option === null || tails.length === 0) return [];
      return [
        {
          outcome: 'note',
          ids: [b.id],
          words: { boiler: midSentence(sayPoint(given.plan, b.id)) },
          at: atVertex(given.network, tails[0]?.id),
        },
      ];
    });
  });
}

export default defineRule({
  id: 'heating/filter',
  topic: 'heating',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'bs-7593', clause: 'in-line filters' }],
  needs: ['the return to the new boiler'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'No filter is drawn on the return to the {boiler}',
      why: 'What lies in old radiators is carried into the new boiler first. The standard on treating heating water counts a filter in line among what keeps it clean.',
      todo: 'Set a filter on the return next to the boiler, with a valve each side, where it can be opened.',
    },
    cantTell: {
      title: "Can't tell whether a filter stands on the return",
      why: 'Not known: {missing}.',
      todo: 'Draw the return as far as the boiler.',
    },
    pass: 'A filter stands on the return.',
  },
  examples: [
    { name: 'a filter on the return', given: () => waterHouse({ onReturn: 'filter' }), expect: 'pass' },
    { name: 'none', given: () => waterHouse(), expect: 'note' },
    { name: 'the return is not drawn yet', given: () => waterHouse({ returnDrawn: false }), expect: 'pass' },
    { name: 'the boiler stays', given: () => waterHouse({ option: null }), expect: 'pass' },
  ],
});
