import type { HydraulicNet, NetLink, NetNode } from '../../../src/engine/hydraulics/hydraulic-net.ts';

/** Development nets with the answers of two solvers: the public-domain network program, and a root search with the exact law. */
export interface ReferenceNet {
  readonly title: string;
  readonly net: HydraulicNet;
  readonly viscosityM2PerS: number;
  /** Each answer: by the network program, and by the independent root search (64 / Re under 2300, then Colebrook, g 9.80665). */
  readonly heads: Readonly<Record<string, readonly [number, number]>>;
  readonly flows: Readonly<Record<string, readonly [number, number]>>;
}

/** "q1 R-N1 4/26.2/2": id, ends, length in m / bore in mm / velocity heads. Copper, 0.0015 mm. */
function pipes(text: string): NetLink[] {
  return text.split(';').map((one) => {
    const [id = '', ends = '', sizes = ''] = one.trim().split(' ');
    const [from = '', to = ''] = ends.split('-');
    const [lengthM = Number.NaN, boreMm = Number.NaN, k = Number.NaN] = sizes.split('/').map(Number);
    return { id, from, to, lengthM, boreMm, roughnessMm: 0.0015, k };
  });
}

function nodes(
  links: readonly NetLink[],
  held: string,
  headM: number,
  drawn: Readonly<Record<string, number>>,
): NetNode[] {
  const ids = [...new Set(links.flatMap((l) => [l.from, l.to]))];
  return ids.map((id) => ({
    id,
    ...(id === held ? { headM } : {}),
    ...(drawn[id] === undefined ? {} : { demandLPerS: drawn[id] }),
  }));
}

const treePipes = pipes(
  'p1 MAIN-A 8/26.2/3; p2 A-B 4/20.2/1.5; p3 B-SINK 3/13.6/4; p4 A-C 5.5/20.2/2.2; p5 C-BATH 2.5/20.2/3; p6 C-D 3/13.6/1; p7 D-BASIN 1.6/13.6/4.5; p8 D-WC 1.2/13.6/5; p9 B-BOILER 6/13.6/2',
);
const loopPipes = pipes(
  'q1 R-N1 4/26.2/2; q2 N1-N2 6/20.2/1.2; q3 N1-N3 8/20.2/.8; q4 N2-N4 7/13.6/1.6; q5 N3-N4 5/13.6/.8; q6 N3-N5 9/20.2/1.2; q7 N4-N5 6/13.6/2.4',
);
const circuitPipes: NetLink[] = [
  { id: 'pump', from: 'RET', to: 'FLO', lengthM: 0, boreMm: 20.2, roughnessMm: 0.0015, k: 0, pump: { h0M: 5, r: 16 } },
  ...pipes(
    'hx FLO-F0 3/20.2/25; f1 F0-F1 5/20.2/1; f2 F1-F2 4/20.2/1; f3 F2-F3 4/13.6/1; r1 F0-B0 6/13.6/120; r2 F1-B1 5/13.6/90; r3 F2-B2 7/13.6/70; r4 F3-B3 4/13.6/40; b3 B3-B2 4/13.6/1; b2 B2-B1 4/20.2/1; b1 B1-B0 5/20.2/1; b0 B0-RET 3/20.2/4',
  ),
];

export const REFERENCE_NETS: readonly ReferenceNet[] = [
  {
    title: 'a tree of cold water',
    viscosityM2PerS: 1.3058e-6,
    net: {
      tC: 10,
      links: treePipes,
      nodes: nodes(treePipes, 'MAIN', 25, { SINK: 0.2, BATH: 0.3, BASIN: 0.1, WC: 0.1, BOILER: 0.15 }),
    },
    heads: {
      A: [23.72068, 23.71607],
      B: [23.30329, 23.29808],
      SINK: [22.31325, 22.30758],
      C: [22.60911, 22.60134],
      BATH: [22.31939, 22.31141],
      D: [21.90873, 21.90077],
      BASIN: [21.70303, 21.6956],
      WC: [21.71523, 21.70763],
      BOILER: [22.46226, 22.45853],
    },
    flows: { p1: [0.85, 0.85], p4: [0.5, 0.5] },
  },
  {
    title: 'two loops',
    viscosityM2PerS: 3.8717e-7,
    net: { tC: 75, links: loopPipes, nodes: nodes(loopPipes, 'R', 20, { N2: 0.12, N3: 0.15, N4: 0.1, N5: 0.18 }) },
    heads: {
      N1: [19.73524, 19.73421],
      N2: [19.5449, 19.54298],
      N3: [19.24809, 19.24481],
      N4: [19.19693, 19.19366],
      N5: [19.1297, 19.12625],
    },
    flows: {
      q2: [0.219935, 0.219996],
      q3: [0.330065, 0.330004],
      q4: [0.099935, 0.099996],
      q5: [0.041613, 0.041668],
      q6: [0.138452, 0.138336],
      q7: [0.041548, 0.041664],
    },
  },
  {
    title: 'a closed circuit of two pipes and four radiators',
    viscosityM2PerS: 4.1275e-7,
    net: { tC: 70, links: circuitPipes, nodes: nodes(circuitPipes, 'RET', 15, {}) },
    heads: { FLO: [18.43706, 18.43892], F0: [17.07275, 17.07429], B0: [15.34689, 15.34748] },
    flows: {
      pump: [0.312544, 0.312358],
      f1: [0.238957, 0.238786],
      f2: [0.164091, 0.163961],
      f3: [0.087246, 0.087169],
      r1: [0.073587, 0.073572],
      r2: [0.074865, 0.074825],
      r3: [0.076845, 0.076792],
      r4: [0.087246, 0.087169],
    },
  },
];
