import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { RECORD_MAPS } from '../../src/plan/plan.ts';
import { planJsonSchema } from './json-schema.ts';

const path = fileURLToPath(new URL('../../shared/plan.schema.json', import.meta.url));

describe('the published schema of the file format', () => {
  test('is fresh', () => {
    const fresh = planJsonSchema();
    if (process.env.KICKSET_WRITE === '1') writeFileSync(path, fresh);
    expect(readFileSync(path, 'utf8')).toBe(fresh);
  });

  test('tells every map of records and keeps unknown fields', () => {
    const schema = JSON.parse(planJsonSchema());
    const plan = schema.properties.plan;
    for (const map of RECORD_MAPS) {
      const record = plan.properties[map].additionalProperties;
      expect(record.type, map).toBe('object');
      expect(record.required, map).toContain('id');
      expect(record.additionalProperties, map).not.toBe(false);
    }
    expect(schema.properties.format.const).toBe('kickset-plan');
  });
});
