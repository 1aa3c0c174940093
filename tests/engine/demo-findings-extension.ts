import { said, type TrueFinding } from './demo-true.ts';

const OPTIONS = ['A', 'B', 'C', 'D'] as const;
type Option = (typeof OPTIONS)[number];

/** What is said in every option, since all but the condensate is the same in each. */
function inEvery(option: Option): TrueFinding[] {
  const own = (id: string) => (option === 'A' ? id : `${id}-${option}`);
  const after = said('extension', 'after', option);
  return [
    after('stop', 'structure/joists', [own('D-g1'), 'DV1'], 'drops at x 900, the centreline of the second joist'),
    after('note', 'structure/under-wall', ['DV1'], 'below DP3 at y 4000 and DP4 at x 3400'),
    after('note', 'network/tail-outside', [own('D-NB')], 'relief 320 from the middle of a case 420 wide'),
    after('note', 'network/tail-unused', ['D-OT'], 'hot has no run, and cold comes from the stop tap'),
    after('check', 'gas/drop', [own('D-NB')], '0.80 to 1.20: the table cannot say of 28 at this flow'),
    after('check', 'gas/drop', [own('D-HB')], 'the hob hangs on the same 28 as far as its tee'),
    after('check', 'structure/heat-beside-cold', [own('D-c1'), own('D-r1')], '50 between centres at y 13010 and 13060'),
    after('note', 'flue/plume', ['D-BO', own('D-NF')], 'fence 1200 from the wall, terminal 100 deep: 1100 of 2500'),
    after('note', 'water/insulation', [own('D-NB'), own('D-h1')], '9.3 m of new hot, bare'),
    after(
      'check',
      'water/wait',
      [own('D-KS'), own('D-NB')],
      '3.0 litres at 6 a minute are 30 s before tube and boiler',
    ),
    after('cantTell', 'water/mains', [own('D-NB')], 'nobody measured pressure or flow'),
    after('check', 'structure/threading', ['DV2'], 'six runs of rigid tube through up to eleven joists 450 apart'),
    after(
      'cantTell',
      'gas/in-void',
      [own('D-g1'), own('D-g2'), own('D-g3'), 'DV2'],
      '2.5, 4.9 and 1.3 m in the roof, and nobody told how it is ventilated',
    ),
    after(
      'note',
      'building/through-wall',
      option === 'C' ? ['DN', 'DS', 'DXE', 'DXN'] : ['DN', 'DS', 'DXE'],
      'gas in by the front wall; all by the old back wall beside the steel; outside walls of the boot room',
    ),
  ];
}

const [pump, outside, soakaway, branch] = OPTIONS.map((option) => said('extension', 'after', option));
const own = [
  pump?.('cantTell', 'structure/joists', ['D-k3', 'DV2'], 'nobody told the size of the hose'),
  outside?.('stop', 'building/across-opening', ['D-k1-B', 'dd3'], 'about 0.99 m up in front of the side door'),
  outside?.('check', 'condensate/fall', ['D-k1-B'], '274 over 6090 is 45.0'),
  outside?.('check', 'condensate/outside', ['D-k1-B'], '6.1 m along the wall and 1.0 m down'),
  soakaway?.('stop', 'condensate/end', ['D-SA-C', 'D-k5-C'], 'clay was found'),
  soakaway?.('check', 'condensate/fall', ['D-k5-C'], '63 over 1400 in the ground is 45.0'),
  soakaway?.('check', 'condensate/insulation', ['D-k5-C'], 'bare from y 14600 down to the ground'),
  ...[outside, soakaway].map((after, i) =>
    after?.(
      'check',
      'heating/high-point',
      [`D-f1-${'BC'[i]}`],
      'over the ceiling at 2537 and down at both ends, no vent',
    ),
  ),
  branch?.('note', 'condensate/end', ['D-UF-D', 'D-k4-D'], 'the branch is not laid yet'),
  branch?.('note', 'structure/before-pour', ['DV4'], 'in the slab that is to be poured on 15 June'),
].flatMap((f) => (f === undefined ? [] : [f]));

const before = OPTIONS.map((option) =>
  said('extension', 'before', option)('cantTell', 'gas/drop', ['D-EB'], 'nobody saw the old gas pipe'),
);

export const EXTENSION_FINDINGS: readonly TrueFinding[] = [...OPTIONS.flatMap(inEvery), ...own, ...before];
