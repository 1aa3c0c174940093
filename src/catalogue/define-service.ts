import type { Joining } from '../plan/records/pipework.ts';

export interface ServiceKind {
  readonly id: string;
  readonly label: string;
  /** Letter tag on the drawing: told apart without colour. */
  readonly tag: string;
  /** Key of the line style in the look tokens. */
  readonly style: string;
  readonly system: 'gas' | 'heating' | 'cold' | 'hot' | 'condensate' | 'discharge' | 'flue';
  readonly runsDownhill: boolean;
  readonly defaultTube: { readonly kind: string; readonly size: string };
  readonly defaultJoining: Joining;
  readonly order: number;
}

export const defineService = (kind: ServiceKind): ServiceKind => kind;
