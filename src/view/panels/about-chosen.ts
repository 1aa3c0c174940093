import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';

/** Which section of the report answers for a service: whoever moves such a pipe wants to see what it does there. */
const SECTION_OF: Readonly<Record<string, string>> = {
  gas: 'gas-drop',
  condensate: 'condensate',
  discharge: 'discharge',
  boilerRelief: 'discharge',
};

function servicesOf(plan: Plan, { map, id }: Selected): readonly string[] {
  const ofRun = (run: string | undefined): readonly string[] => {
    const service = plan.runs[run ?? '']?.service;
    return service === undefined ? [] : [service];
  };
  const atNode = (node: string | undefined): readonly string[] =>
    Object.values(plan.legs).flatMap((l) => (l.a === node || l.b === node ? ofRun(l.run) : []));
  switch (map) {
    case 'runs':
      return ofRun(id);
    case 'legs':
    case 'stretches':
      return ofRun(plan[map][id]?.run);
    case 'points':
      return plan.points[id]?.connections.map((c) => c.service) ?? [];
    case 'items':
      return atNode(plan.items[id]?.node);
    case 'nodes':
      return atNode(id);
    default:
      return [];
  }
}

/** Ids of the sections that what is chosen has a part in. */
export function sectionsOf(plan: Plan, selection: readonly Selected[]): ReadonlySet<string> {
  return new Set(selection.flatMap((s) => servicesOf(plan, s)).flatMap((service) => SECTION_OF[service] ?? []));
}
