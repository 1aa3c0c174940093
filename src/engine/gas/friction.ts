import { constant, type TableCite, word } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { Sureness } from '../../report/quantity.ts';

export type FrictionLaw = 'smooth' | 'rough';

interface Law {
  readonly laminar: number;
  readonly blasius: number;
  readonly power: number;
  readonly roughnessMm: number;
}

function read(law: FrictionLaw): Law {
  const model = table('gas-physical-model');
  const of = (column: string): number => constant(model, law, column);
  return { laminar: of('laminar'), blasius: of('blasius'), power: of('power'), roughnessMm: of('roughnessMm') };
}

// Read once: the tables never change while the program runs, and every section of every trial asks for them.
const LAWS: Readonly<Record<FrictionLaw, Law>> = { smooth: read('smooth'), rough: read('rough') };

/** Turbulent factor of a rough tube by Colebrook, from the smooth one as first guess. Settles in a few turns. */
function colebrook(re: number, relativeRoughness: number, guess: number): number {
  let f = guess;
  for (let turn = 0; turn < 50; turn++) {
    const next = (-2 * Math.log10(relativeRoughness / 3.7 + 2.51 / (re * Math.sqrt(f)))) ** -2;
    if (Math.abs(next - f) < 1e-12) return next;
    f = next;
  }
  return f;
}

/**
 * Darcy friction factor: the larger of the laminar and the turbulent one, so that the change of flow is neither smoothed
 * nor blended. Re above 0, bore in mm. Source: table gas-physical-model.
 */
export function frictionFactor(re: number, law: FrictionLaw, boreMm: number): number {
  const { laminar, blasius, power, roughnessMm } = LAWS[law];
  const smooth = blasius * re ** power;
  if (law === 'smooth') return Math.max(laminar / re, smooth);
  return Math.max(laminar / re, colebrook(re, roughnessMm / boreMm, smooth));
}

/** Which law a kind of tube follows; undefined where none has been set down for it. */
export function lawOf(
  tubeKind: string,
): { readonly law: FrictionLaw; readonly sureness: Sureness; readonly cite: TableCite } | undefined {
  const found = word('gas-friction-law', tubeKind);
  if (found.is !== 'known' || (found.word !== 'smooth' && found.word !== 'rough')) return undefined;
  return { law: found.word, sureness: found.sureness, cite: found.cite };
}
