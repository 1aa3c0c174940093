import { JOINING_WORDS } from '../../../catalogue/joining-words.ts';
import { services } from '../../../catalogue/services.ts';
import type { Joining } from '../../../plan/records/pipework.ts';
import { word } from '../../../reference/figure.ts';
import { tables } from '../../../reference/tables.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const TABLE = 'joining-allowed';
const listed = (key: string): boolean => tables().some((t) => t.id === TABLE && t.rows.some((r) => r.key === key));

function judge(given: Given): Fault[] {
  return [...given.network.edgesOfRun].flatMap(([id, edges]): Fault[] => {
    const run = given.plan.runs[id];
    const first = edges.find((e) => given.network.edges.get(e)?.state === 'new');
    if (!run || run.joining === null || first === undefined) return [];
    const system = services.get(run.service)?.system ?? run.service;
    if (!listed(system)) return [];
    const found = word(TABLE, system, run.joining);
    const shared = {
      ids: [id],
      legs: edges,
      words: { run: sayRun(given.plan, id), joining: JOINING_WORDS[run.joining], service: system },
      at: atEdge(given.network, first),
    };
    if (found.is !== 'known')
      return [
        {
          outcome: 'cantTell',
          ...shared,
          missing: [`whether ${JOINING_WORDS[run.joining]} may be used for ${system}`],
        },
      ];
    if (found.word === 'yes') return [];
    return [
      {
        outcome: system === 'gas' ? 'stop' : 'check',
        ...shared,
        unverified: found.sureness === 'memory',
        cites: [{ source: found.cite.source, clause: found.cite.clause, table: found.cite.table }],
      },
    ];
  });
}

const run = (service: string, joining: Joining, kind: string, size: string) =>
  example().run(
    'r',
    service,
    [
      [0, 0, 300],
      [1000, 0, 300],
    ],
    { joining, kind, size },
  ).plan;

export default defineRule({
  id: 'joining/method',
  topic: 'joints',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'by service and place', table: TABLE }],
  needs: ['how the run is joined'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run}: {joining} joints are not for {service}',
      why: 'The joint is not made for what it would carry.',
      todo: 'Choose another way of joining for this run.',
    },
    cantTell: {
      title: "{run}: can't tell whether {joining} joints may be used",
      why: 'No table has been read that says so: {missing}.',
      todo: "Look it up in the fitting's own instructions.",
    },
    pass: 'The joints are usual for what the pipe carries.',
  },
  examples: [
    { name: 'push-fit on gas', given: () => run('gas', 'pushFit', 'copper', '22x0.9'), expect: 'stop' },
    { name: 'end feed on gas', given: () => run('gas', 'endFeed', 'copper', '22x0.9'), expect: 'pass' },
    {
      name: 'solder on condensate',
      given: () => run('condensate', 'endFeed', 'plastic-overflow', '21.5'),
      expect: 'check',
    },
    {
      name: 'threads on condensate, of which nothing was read',
      given: () => run('condensate', 'threaded', 'plastic-overflow', '21.5'),
      expect: 'cantTell',
    },
  ],
});
