import type { Plan } from '../../../src/plan/plan.ts';
import type { Joists } from '../../../src/plan/records/building.ts';
import { demoPlan } from '../demo-file.ts';

const HOSE = 'D-k3';

/** The demo house with a rear extension, without the hose of its pump unless that is asked for, its roof joists changed. */
export function extension({ hose = false, change = {} }: { hose?: boolean; change?: Partial<Joists> } = {}): Plan {
  const plan = structuredClone(demoPlan('extension'));
  if (!hose) for (const leg of Object.values(plan.legs)) if (leg.run === HOSE) delete plan.legs[leg.id];
  const roof = plan.voids.DV2;
  if (roof?.joists) roof.joists = { ...roof.joists, ...change };
  return plan;
}
