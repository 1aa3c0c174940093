import { services } from '../../../catalogue/services.ts';
import { tubeKinds } from '../../../catalogue/tubes.ts';
import { word } from '../../../reference/figure.ts';
import { tables } from '../../../reference/tables.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const TABLE = 'tube-allowed';
/** Kinds of the catalogue that stand in one column of the table. */
const COLUMN: Readonly<Record<string, string>> = { 'plastic-overflow': 'waste' };

const has = (row: string, column: string): boolean =>
  tables().some((t) => t.id === TABLE && t.rows.some((r) => r.key === row) && t.columns.some((c) => c.key === column));

function judge(given: Given): Fault[] {
  return [...given.network.edgesOfRun].flatMap(([id, edges]): Fault[] => {
    const run = given.plan.runs[id];
    if (!run) return [];
    const system = services.get(run.service)?.system ?? run.service;
    const kinds = new Map<string, string[]>();
    for (const e of edges) {
      const edge = given.network.edges.get(e);
      if (!edge || edge.state === 'there') continue;
      kinds.set(edge.tube.kind, [...(kinds.get(edge.tube.kind) ?? []), e]);
    }
    return [...kinds].flatMap(([kind, legs]): Fault[] => {
      const column = COLUMN[kind] ?? kind;
      // A service may have a row of its own beside its system's.
      const row = has(run.service, column) ? run.service : system;
      if (kind === 'unknown' || !has(row, column)) return [];
      const found = word(TABLE, row, column);
      const shared = {
        ids: [id],
        legs,
        words: {
          run: sayRun(given.plan, id),
          kind: (tubeKinds.get(kind)?.label ?? kind).toLowerCase(),
          service: system,
        },
        at: atEdge(given.network, legs[0]),
      };
      if (found.is !== 'known')
        return [{ outcome: 'cantTell', ...shared, missing: [`whether ${kind} may carry ${system}`] }];
      if (found.word === 'yes') return [];
      return [
        {
          outcome: 'stop',
          ...shared,
          unverified: found.sureness === 'memory',
          cites: [{ source: found.cite.source, clause: found.cite.clause, table: found.cite.table }],
        },
      ];
    });
  });
}

const run = (service: string, kind: string, size: string) =>
  example().run(
    'r',
    service,
    [
      [0, 0, 300],
      [1000, 0, 300],
    ],
    { kind, size, joining: 'compression' },
  ).plan;

export default defineRule({
  id: 'joining/tube',
  topic: 'joints',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'by service', table: TABLE }],
  needs: ['kind of tube'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run}: {kind} is not for {service}',
      why: 'What it carries attacks it, softens it or leaks through it.',
      todo: 'Choose another kind of tube for this run.',
    },
    cantTell: {
      title: "{run}: can't tell whether {kind} may be used",
      why: 'No table has been read that says so: {missing}.',
      todo: "Look it up in the tube's own instructions.",
    },
    pass: 'The tube is usual for what it carries.',
  },
  examples: [
    { name: 'copper on condensate', given: () => run('condensate', 'copper', '22x0.9'), expect: 'stop' },
    { name: 'copper on heating', given: () => run('heatingFlow', 'copper', '22x0.9'), expect: 'pass' },
    { name: 'steel on cold', given: () => run('cold', 'steel', '20'), expect: 'cantTell' },
  ],
});
