import type { Section } from '../report/section.ts';
import type { Given } from './given.ts';

export interface SectionKind {
  readonly id: string;
  readonly order: number;
  /** Null where there is nothing to say of this plan. */
  readonly write: (given: Given) => Omit<Section, 'id' | 'order'> | null;
}

export const defineSection = (section: SectionKind): SectionKind => section;
