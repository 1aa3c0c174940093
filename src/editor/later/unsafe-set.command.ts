import * as v from 'valibot';
import type { UnsafeSituation } from '../../plan/records/basis.ts';
import { unsafeSituation } from '../../plan/records/basis.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { writeLine } from '../commands/job-lines.ts';

const at = v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)));

/** A signature is drawn in a box this wide; the numbers kept for one stay few enough to carry in every save. */
const BOX = 1000;
const MOST_NUMBERS = 6000;

const WORDS = ['what', 'place', 'classification', 'notice', 'on', 'photo'] as const;
const sameWords = (a: UnsafeSituation, b: UnsafeSituation): boolean => WORDS.every((key) => a[key] === b[key]);

function checkSignature({ name, strokes }: UnsafeSituation['signed'][number]): void {
  if (name.trim() === '' && strokes.length === 0) refuse('A signature is written, or the name is typed.');
  const numbers = strokes.flat();
  if (strokes.some((s) => s.length === 0 || s.length % 2 === 1)) refuse('That signature is spoiled: write it again.');
  if (numbers.some((n) => n < 0 || n > BOX)) refuse('That signature runs out of its box: write it again.');
  if (numbers.length > MOST_NUMBERS) refuse('That signature is too long to keep: write it again, shorter.');
}

/**
 * A situation somebody judged unsafe, in their own words. What was signed is not changed under a signature: it is taken
 * off first. Without `at` a new one.
 */
export default defineCommand({
  id: 'unsafe.set',
  label: (args) => `unsafe situation: ${args.line.what}`,
  args: v.object({ at, line: unsafeSituation }),
  run(draft, { at, line }) {
    if (line.what.trim() === '') refuse('Say what was found.');
    line.signed.forEach(checkSignature);
    const was = at === undefined ? undefined : draft.job.unsafe?.[at];
    // A photo that was taken out of the job since leaves the rest of the record as it was signed.
    if (line.photo !== null && line.photo !== was?.photo && !draft.blobRefs[line.photo])
      refuse('That photo is no longer in the job.');
    if (was && was.signed.length > 0 && line.signed.length > 0 && !sameWords(was, line))
      refuse('It is signed as it stands. Take the signatures off before its words are changed.');
    writeLine(draft, 'unsafe', at, line);
    return [];
  },
  example(plan, rng) {
    const stroke = rng.pick([[10, 20, 400, 80], [10, 20, 1400, 80], [10]]) ?? [];
    const name = rng.pick(['the householder', '']) ?? '';
    const signed = rng.below(2) ? [{ name, on: null, strokes: rng.below(2) ? [stroke] : [] }] : [];
    const line = {
      what: rng.pick(['open end on the old gas pipe', '']) ?? '',
      place: 'kitchen',
      classification: rng.pick(['as the engineer words it', '']) ?? '',
      notice: '',
      photo: rng.pick([null, ...Object.keys(plan.blobRefs)]) ?? null,
      on: null,
      signed,
    };
    const at = rng.pick((plan.job.unsafe ?? []).map((_, i) => i));
    return at === undefined || rng.below(2) ? { line } : { at, line };
  },
});
