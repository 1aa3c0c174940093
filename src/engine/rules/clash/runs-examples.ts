import type { Example } from '../../define-rule.ts';
import { example } from '../../example.ts';

/** A return coming down at y 240, and another pipe passing it at y. */
const crossing = (y: number, service: string, z = 300) =>
  example()
    .run(
      'r',
      'heatingReturn',
      [
        [1000, 240, 1300],
        [1000, 240, 200],
      ],
      { size: '22x0.9' },
    )
    .run(
      'c',
      service,
      [
        [0, y, z],
        [2000, y, z],
      ],
      { size: '22x0.9' },
    ).plan;

export const runsExamples: readonly Example[] = [
  {
    name: 'cold through the return',
    given: () => crossing(250, 'cold'),
    expect: 'stop',
    found: { lo: -12, hi: -12, tolerance: 0.1 },
    from: '10 between centres less two radii of 11',
  },
  { name: 'cold along behind the return', given: () => crossing(295, 'cold'), expect: 'pass' },
  {
    name: 'gas 13 clear of the return',
    given: () => crossing(275, 'gas'),
    expect: 'check',
    found: { lo: 13, hi: 13, tolerance: 0.1 },
    from: '35 between centres less two radii of 11',
  },
  { name: 'cold a millimetre from it', given: () => crossing(263, 'cold'), expect: 'check' },
  {
    name: 'cold through it at a height nobody measured',
    given: () => {
      const plan = crossing(250, 'cold');
      for (const { place } of Object.values(plan.nodes)) {
        if (place.on === 'storey' && place.height.mm === 300) place.height.assumed = { lo: 150, hi: 450 };
      }
      return plan;
    },
    expect: 'check',
  },
  {
    name: 'lagged cold beside lagged hot',
    given: () => {
      const e = example();
      for (const [service, z] of [
        ['cold', 300],
        ['hot', 340],
      ] as const) {
        const ends = [
          [0, 0, z],
          [2000, 0, z],
        ] as const;
        e.run(service, service, ends, { insulationMm: 13 });
      }
      return e.plan;
    },
    expect: 'check',
    found: { lo: -8, hi: -8, tolerance: 0.1 },
    from: '40 between centres less two radii of 11 and twice 13 of lagging',
  },
  {
    name: 'a run drawn across itself',
    given: () =>
      example().run('c', 'cold', [
        [0, 0, 300],
        [2000, 0, 300],
        [2000, 500, 300],
        [1000, 500, 300],
        [1000, -500, 300],
      ]).plan,
    expect: 'stop',
    found: { lo: -22, hi: -22, tolerance: 0.1 },
    from: 'two legs of 22 in one place',
  },
  {
    name: 'gas beside it by an edition that is not here',
    given: () => {
      const plan = crossing(275, 'gas');
      plan.basis.editions = { 'gas-clearance': 'of another year' };
      return plan;
    },
    expect: 'cantTell',
  },
  { name: 'cold over the top of it', given: () => crossing(250, 'cold', 1400), expect: 'pass' },
  {
    name: 'close to a pipe of unknown size',
    given: () =>
      example()
        .run(
          'r',
          'gas',
          [
            [1000, 240, 1300],
            [1000, 240, 200],
          ],
          { size: null },
        )
        .run('c', 'cold', [
          [0, 260, 300],
          [2000, 260, 300],
        ]).plan,
    expect: 'cantTell',
  },
];
