import type { Quantity } from './quantity.ts';
import type { Cite } from './working.ts';

/** One figure a rule goes by: the table it stands in, and the figure. */
export interface RuleFigure {
  readonly title: string;
  readonly figure: Quantity;
  readonly cite: Cite;
}

/** What a reader wants to know of a rule: what it asks, how binding that is, what it needs, and its figures with their source. */
export interface RuleFacts {
  readonly id: string;
  readonly topic: string;
  readonly basis: 'law' | 'requirement' | 'recommendation' | 'practice';
  readonly lifeSafety: boolean;
  /** How things stand where it has nothing to say. */
  readonly asks: string;
  readonly needs: readonly string[];
  readonly figures: readonly RuleFigure[];
  readonly cites: readonly Cite[];
}
