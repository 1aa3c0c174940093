import { constant, type TableCite, word } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { Sureness } from '../../report/quantity.ts';

export type FrictionLaw = 'smooth' | 'rough';

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
  const model = table('gas-physical-model');
  const laminar = constant(model, law, 'laminar') / re;
  const smooth = constant(model, law, 'blasius') * re ** constant(model, law, 'power');
  if (law === 'smooth') return Math.max(laminar, smooth);
  return Math.max(laminar, colebrook(re, constant(model, law, 'roughnessMm') / boreMm, smooth));
}

/** Which law a kind of tube follows; undefined where none has been set down for it. */
export function lawOf(
  tubeKind: string,
): { readonly law: FrictionLaw; readonly sureness: Sureness; readonly cite: TableCite } | undefined {
  const found = word('gas-friction-law', tubeKind);
  if (found.is !== 'known' || (found.word !== 'smooth' && found.word !== 'rough')) return undefined;
  return { law: found.word, sureness: found.sureness, cite: found.cite };
}
