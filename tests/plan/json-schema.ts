import { toJsonSchema } from '@valibot/to-json-schema';
import { envelopeSchema, MINOR, VERSION } from '../../src/plan/envelope.ts';
import { planSchema } from '../../src/plan/plan.ts';

/**
 * The file format for readers that are not ours: the envelope with the plan inside. What JSON Schema has no word for
 * (a number must be finite) is left out, since no JSON text can break it.
 */
export function planJsonSchema(): string {
  const options = { target: 'draft-2020-12', errorMode: 'ignore' } as const;
  const { $schema, ...envelope } = toJsonSchema(envelopeSchema, options);
  const { $schema: inner, ...plan } = toJsonSchema(planSchema, options);
  if ($schema !== inner) throw new Error('two dialects of JSON Schema');
  const schema = {
    $schema,
    title: `Kickset plan, version ${VERSION}.${MINOR}`,
    description:
      'Lengths in mm from the datum. Unknown records and fields are kept by every reader of the same version.',
    ...envelope,
    properties: { ...envelope.properties, plan },
  };
  return `${JSON.stringify(schema, null, 1)}\n`;
}
