import type { Joining } from '../plan/records/pipework.ts';

/** Ways of joining as the counter says them, before the name of the piece: "end feed elbow". */
export const JOINING_WORDS: Readonly<Record<Joining, string>> = {
  endFeed: 'end feed',
  solderRing: 'solder ring',
  compression: 'compression',
  press: 'press',
  pushFit: 'push-fit',
  threaded: 'threaded',
  solvent: 'solvent weld',
  electrofusion: 'electrofusion',
};
