import { LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js';
import type { HydraulicNet, NetLink } from '../../../src/engine/hydraulics/hydraulic-net.ts';
import { PROGRAM_GRAVITY_FT } from './other-laws.ts';

export interface ProgramAnswer {
  readonly flowLPerS: ReadonlyMap<string, number>;
  readonly headM: ReadonlyMap<string, number>;
}

/**
 * The program works in cubic feet with 28.317 litres in one, and turns velocity heads into loss by 0.02517 where its own
 * gravity gives 8 / (pi^2 g). Told as it is, a net would be solved with a litre 5 in a million and a fitting 1 in ten
 * thousand off; a link that carries the little difference of two sources is then off by a hundredth of itself. So what
 * is told is stretched by what it will be shrunk by.
 */
const LITRE = 28.317 / 28.316846592;
const HEADS = 8 / (Math.PI ** 2 * PROGRAM_GRAVITY_FT) / 0.02517;

const curveOf = (l: NetLink): string => `C${l.id}`;

/** A pump of h0 - r q² through three points: none, half and all of the flow it can give. */
function curve(l: NetLink): string[] {
  const { h0M = 0, r = 1 } = l.pump ?? {};
  const most = Math.sqrt(h0M / r);
  return [0, most / 2, most].map((q) => `${curveOf(l)} ${q * LITRE} ${h0M - r * q * q}`);
}

/**
 * A net in the words of the program. A pump is a link without length there. Viscosity is told in m2/s: its "1.0" means
 * another figure than water at 20 degrees has.
 */
function written(net: HydraulicNet, viscosityM2PerS: number): string {
  const pipes = net.links.filter((l) => !l.pump);
  const pumps = net.links.filter((l) => l.pump);
  return [
    '[JUNCTIONS]',
    ...net.nodes.filter((n) => n.headM === undefined).map((n) => `${n.id} 0 ${(n.demandLPerS ?? 0) * LITRE}`),
    '[RESERVOIRS]',
    ...net.nodes.filter((n) => n.headM !== undefined).map((n) => `${n.id} ${n.headM}`),
    '[PIPES]',
    ...pipes.map((l) => `${l.id} ${l.from} ${l.to} ${l.lengthM} ${l.boreMm} ${l.roughnessMm} ${l.k * HEADS} Open`),
    '[PUMPS]',
    ...pumps.map((l) => `${l.id} ${l.from} ${l.to} HEAD ${curveOf(l)}`),
    '[CURVES]',
    ...pumps.flatMap(curve),
    '[OPTIONS]',
    'Units LPS',
    'Headloss D-W',
    `Viscosity ${viscosityM2PerS}`,
    'Trials 200',
    'Accuracy 0.00001',
    'HEADERROR 0.000000001',
    'FLOWCHANGE 0.000000001',
    '[END]',
    '',
  ].join('\n');
}

export type AskProgram = (net: HydraulicNet, viscosityM2PerS: number) => ProgramAnswer;

/** The public-domain program for water networks, started once. */
export async function startProgram(): Promise<AskProgram> {
  const workspace = new Workspace();
  await workspace.loadModule();
  const project = new Project(workspace);
  return (net, viscosityM2PerS) => {
    workspace.writeFile('net.inp', written(net, viscosityM2PerS));
    project.open('net.inp', 'net.rpt', 'net.out');
    project.openH();
    project.initH(10);
    project.runH();
    const flowLPerS = new Map(
      net.links.map(
        (l) => [l.id, project.getLinkValue(project.getLinkIndex(l.id), LinkProperty.Flow) / LITRE] as const,
      ),
    );
    const headM = new Map(
      net.nodes.map((n) => [n.id, project.getNodeValue(project.getNodeIndex(n.id), NodeProperty.Head)] as const),
    );
    project.closeH();
    project.close();
    return { flowLPerS, headM };
  };
}
