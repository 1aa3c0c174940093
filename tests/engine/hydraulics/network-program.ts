import { LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js';
import type { HydraulicNet, NetLink } from '../../../src/engine/hydraulics/hydraulic-net.ts';

export interface ProgramAnswer {
  readonly flowLPerS: ReadonlyMap<string, number>;
  readonly headM: ReadonlyMap<string, number>;
}

const curveOf = (l: NetLink): string => `C${l.id}`;

/** A pump of h0 - r q² through three points: none, half and all of the flow it can give. */
function curve(l: NetLink): string[] {
  const { h0M = 0, r = 1 } = l.pump ?? {};
  const most = Math.sqrt(h0M / r);
  return [0, most / 2, most].map((q) => `${curveOf(l)} ${q} ${h0M - r * q * q}`);
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
    ...net.nodes.filter((n) => n.headM === undefined).map((n) => `${n.id} 0 ${n.demandLPerS ?? 0}`),
    '[RESERVOIRS]',
    ...net.nodes.filter((n) => n.headM !== undefined).map((n) => `${n.id} ${n.headM}`),
    '[PIPES]',
    ...pipes.map((l) => `${l.id} ${l.from} ${l.to} ${l.lengthM} ${l.boreMm} ${l.roughnessMm} ${l.k} Open`),
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
      net.links.map((l) => [l.id, project.getLinkValue(project.getLinkIndex(l.id), LinkProperty.Flow)] as const),
    );
    const headM = new Map(
      net.nodes.map((n) => [n.id, project.getNodeValue(project.getNodeIndex(n.id), NodeProperty.Head)] as const),
    );
    project.closeH();
    project.close();
    return { flowLPerS, headM };
  };
}
