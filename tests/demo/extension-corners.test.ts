import { describe, expect, test } from 'vitest';
import { type Corner, wayOf } from './corners.ts';
import { extensionPlan } from './extension-plan.ts';

const corners: Readonly<Record<string, readonly Corner[]>> = {
  'D-g1': [
    [900, 0, 450],
    [900, 400, 450],
    [900, 400, -300],
    [900, 7500, -300],
    [6600, 7500, -300],
    [6600, 7500, 2537],
    [6600, 8150, 2537],
    [5460, 8150, 2537],
    [5460, 9400, 2537],
  ],
  'D-g2': [
    [5460, 9400, 2537],
    [5460, 12960, 2537],
    [6640, 12960, 2537],
    [6640, 12960, 1010],
    [6640, 13300, 1010],
    [6640, 13300, 1180],
  ],
  'D-g3': [
    [5460, 9400, 2537],
    [5460, 9400, 2600],
    [6450, 9400, 2600],
    [6450, 9400, 900],
  ],
  'D-f1': [
    [6640, 13430, 1180],
    [6640, 13430, 870],
    [6640, 12860, 870],
    [6640, 12860, 2537],
    [5580, 12860, 2537],
    [5580, 8210, 2537],
    [6660, 8210, 2537],
    [6660, 6560, 2537],
    [6660, 6560, 150],
  ],
  'D-r1': [
    [6640, 13170, 1180],
    [6640, 13170, 1150],
    [6640, 13060, 1150],
    [6640, 13060, 2537],
    [5220, 13060, 2537],
    [5220, 8030, 2537],
    [6430, 8030, 2537],
    [6430, 6500, 2537],
    [6430, 6500, 150],
  ],
  'D-c1': [
    [6550, 7400, 400],
    [6550, 7400, 2537],
    [6550, 8090, 2537],
    [5340, 8090, 2537],
    [5340, 13010, 2537],
    [6640, 13010, 2537],
    [6640, 13010, 1080],
    [6640, 13235, 1080],
    [6640, 13235, 1180],
  ],
  'D-h1': [
    [6640, 13365, 1180],
    [6640, 13365, 940],
    [6640, 12910, 940],
    [6640, 12910, 2600],
    [3700, 12910, 2600],
    [3700, 12910, 2537],
    [3700, 11700, 2537],
    [2600, 11700, 2537],
    [2600, 11700, 900],
  ],
  'D-p1': [
    [6630, 13620, 1170],
    [7040, 13620, 1160],
    [7040, 13620, -100],
  ],
  'D-k1': [
    [6600, 13490, 1150],
    [7060, 13490, 1129],
    [7060, 7400, 855],
    [7060, 7400, -100],
  ],
  'D-k3': [
    [6660, 13560, 900],
    [6660, 13560, 2600],
    [5020, 13560, 2600],
    [5020, 13560, 2537],
    [5020, 8240, 2537],
    [5020, 8240, 2600],
    [6380, 8240, 2600],
    [6380, 7000, 2600],
    [6380, 7000, 750],
  ],
  'D-k5': [
    [6560, 13560, 1100],
    [6560, 14700, 1047],
    [6560, 14700, -400],
    [6560, 16100, -463],
  ],
};

const plan = extensionPlan();
const SHARED = ['D-c1', 'D-f1', 'D-g1', 'D-g2', 'D-g3', 'D-h1', 'D-p1', 'D-r1'];
const DRAINS = { A: ['D-k2', 'D-k3'], B: ['D-k1'], C: ['D-k5'], D: ['D-k4'] } as const;
const OPTIONS = ['A', 'B', 'C', 'D'] as const;

describe('the house with a rear extension', () => {
  test.each(Object.entries(corners))('%s goes by the corners surveyed, in every option that has it', (run, wanted) => {
    const own = OPTIONS.map((o) => (o === 'A' ? run : `${run}-${o}`)).filter((id) => plan.runs[id]);
    expect(own).toHaveLength(SHARED.includes(run) ? OPTIONS.length : 1);
    for (const id of own) expect(wayOf(plan, id), id).toEqual(wanted);
  });

  test.each(OPTIONS)('option %s is whole by itself', (option) => {
    const of = (id: string) => (option === 'A' ? id : `${id}-${option}`);
    const runs = Object.values(plan.runs).filter((r) => r.option === option);
    expect(runs.map((r) => r.id as string).sort()).toEqual([...SHARED, ...DRAINS[option]].map(of).sort());
    for (const leg of Object.values(plan.legs).filter((l) => l.option === option)) {
      for (const end of [leg.a, leg.b]) expect([option, null], `${leg.id} ${end}`).toContain(plan.nodes[end]?.option);
    }
    expect(plan.options[option]?.note.length).toBeGreaterThan(20);
  });

  test('the new branch falls all the way and lies in the slab that is not poured', () => {
    const way = wayOf(plan, 'D-k4-D');
    expect(way).toEqual([
      [6600, 13490, 1150],
      [6600, 13490, -152],
      [6600, 14000, -183],
      [6300, 14000, -200],
    ]);
  });
});
