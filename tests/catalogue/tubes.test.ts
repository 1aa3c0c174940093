import { describe, expect, it } from 'vitest';
import type { TubeKind } from '../../src/catalogue/define-tube.ts';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import { services } from '../../src/catalogue/services.ts';
import { sayTubeSize, tubeKinds, tubeOdMm } from '../../src/catalogue/tubes.ts';
import { table } from '../../src/reference/tables.ts';

const kinds = [...tubeKinds.values()].map((k) => [k.id, k] as const);
const kind = (id: string): TubeKind => {
  const found = tubeKinds.get(id);
  if (!found) throw new Error(id);
  return found;
};

describe('kinds of tube', () => {
  it.each(kinds)('%s rises in size and is carried by known services', (_id, k) => {
    const ods = k.sizes().map((s) => s.odMm);
    expect(ods).toEqual([...ods].sort((a, b) => a - b));
    for (const s of k.services) expect(services.has(s), s).toBe(true);
  });

  it('says copper bare and measures it outside', () => {
    expect(sayTubeSize({ kind: 'copper', size: '22x0.9' })).toBe('22');
    expect(tubeOdMm({ kind: 'copper', size: '22x0.9' })).toBe(22);
    expect(tubeOdMm({ kind: 'copper', size: '22' })).toBe(22);
    expect(
      kind('copper')
        .sizes()
        .map((s) => s.nominal),
    ).toContain('28');
  });

  it('knows the outside of tube whose bore nobody read', () => {
    expect(tubeOdMm({ kind: 'plastic-overflow', size: '21.5' })).toBe(21.5);
    expect(kind('waste').odMm('32')).toBeGreaterThan(32);
  });

  it('knows nothing of a size no table has', () => {
    expect(tubeOdMm({ kind: 'copper', size: '23x1' })).toBeUndefined();
    expect(tubeOdMm({ kind: 'copper', size: null })).toBeUndefined();
    expect(tubeOdMm({ kind: 'unknown', size: '22' })).toBeUndefined();
    expect(sayTubeSize({ kind: 'copper', size: null })).toBe('?');
    expect(sayTubeSize({ kind: 'bamboo', size: '40' })).toBe('40');
    expect(sayTubeSize({ kind: 'copper', size: '23x1' })).toBe('23');
  });

  it.each([...services.values()].map((s) => [s.id, s] as const))(
    '%s starts in a tube and joint that fit it',
    (id, s) => {
      const own = kind(s.defaultTube.kind);
      expect(own.sizes().map((x) => x.size)).toContain(s.defaultTube.size);
      expect(own.joinings).toContain(s.defaultJoining);
      expect(own.services).toContain(id);
    },
  );
});

describe('keys into the tables', () => {
  const keys = (id: string) => table(id).rows.map((r) => r.key);

  it('every kind of point has an assumed height there', () => {
    for (const k of pointKinds.values()) expect(keys('assumed-heights'), k.id).toContain(k.assumedHeight);
  });

  it('every class of appliance stands there', () => {
    for (const k of pointKinds.values()) {
      if (k.gasClass !== undefined) expect(keys('gas-appliance-classes')).toContain(k.gasClass);
      for (const c of k.fields.find((f) => f.key === 'class')?.choices ?? []) {
        const known = keys('gas-appliance-classes');
        expect(known.includes(`boiler${c.value}`) || known.includes(`boiler${c.value}heatOnly`), c.value).toBe(true);
      }
    }
  });
});
