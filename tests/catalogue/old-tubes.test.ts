import { describe, expect, it } from 'vitest';
import { sayTubeSize, tubeKinds, tubeKindsFor, tubeOdMm } from '../../src/catalogue/tubes.ts';
import { sectionDrop } from '../../src/engine/gas/section-drop.ts';
import { tube } from '../../src/reference/tubes.ts';
import { exact } from '../../src/report/quantity.ts';

const OLD = ['copper-imperial', 'lead', 'microbore', 'old-plastic'];
const ids = (service: string, surveyed: boolean, now = 'copper') =>
  tubeKindsFor(service, surveyed, now).map((k) => k.id);

describe('old kinds of tube', () => {
  it('are offered for pipe that was found, and for no new pipe', () => {
    for (const id of OLD) expect(tubeKinds.get(id)?.onlyExisting, id).toBe(true);
    expect(ids('gas', true)).toEqual(expect.arrayContaining(['copper-imperial', 'lead']));
    for (const service of ['gas', 'cold', 'hot', 'heatingFlow']) {
      for (const id of OLD) expect(ids(service, false), `${service} ${id}`).not.toContain(id);
    }
  });

  it('stay named on a pipe that is said to be of them', () => {
    expect(ids('gas', false, 'lead')).toContain('lead');
    expect(ids('condensate', true)).not.toContain('lead');
  });

  it('are said by the name of their size, and measured outside', () => {
    expect(sayTubeSize({ kind: 'copper-imperial', size: '3/4' })).toBe('3/4 in');
    expect(tubeOdMm({ kind: 'copper-imperial', size: '3/4' })).toBe(22);
    expect(tubeOdMm({ kind: 'lead', size: '1/2' })).toBeGreaterThan(20);
    expect(tubeOdMm({ kind: 'microbore', size: '8' })).toBe(8);
    for (const id of OLD) {
      for (const s of tubeKinds.get(id)?.sizes() ?? [])
        expect(tube(id, s.size)?.sureness, `${id} ${s.size}`).not.toBe('page');
    }
  });

  it.each([
    ['copper-imperial', '1/2'],
    ['lead', '3/4'],
    ['microbore', '10'],
    ['copper-imperial', null],
  ])('gas in %s %s has no figure: it is never reckoned as something else', (tubeKind, size) => {
    const { drop, working } = sectionDrop({
      label: 'old pipe',
      tubeKind,
      size,
      lengthM: exact(4, 'm', 1, 'page'),
      fittings: [{ class: 'elbow90', count: 2 }],
      flow: exact(2.5, 'm3/h', 2, 'page'),
      gas: 'natural',
      editions: {},
    });
    expect(drop.hi).toBeNull();
    expect(drop.lo).toBe(0);
    expect(working.result).toBeNull();
    expect(working.missing.length).toBeGreaterThan(0);
  });
});
