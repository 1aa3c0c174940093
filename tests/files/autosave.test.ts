import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createAutosave } from '../../src/files/store/autosave.ts';
import { memoryPort } from '../../src/files/store/memory-port.ts';
import { createJob, listJobs, openJob } from '../../src/files/store/open-job.ts';
import type { StepEntry, StepRow, StorePort } from '../../src/files/store/store-port.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { flatPlan } from '../demo/flat-plan.ts';
import { editedPlan } from './edited-plan.ts';

const with_ = { savedAt: '2026-05-01T09:00:00.000Z', writer: 'Kickset test' };

async function opened(port: StorePort, id = 'flat') {
  const job = await openJob<StepEntry>(port, id);
  if (job.read.kind !== 'ok') throw new Error(job.read.sentence);
  return { ...job, plan: job.read.plan };
}

/** A job kept in memory and open in an editor; time stands still until `rest` is called. */
async function started(port = memoryPort()) {
  if ((await port.jobs()).length === 0) await createJob(port, flatPlan(), with_);
  const job = await opened(port);
  const doc = editedPlan(job.plan, job.undo, job.redo);
  let waiting: (() => void) | null = null;
  const said: (string | null)[] = [];
  const autosave = createAutosave({
    port,
    edited: doc.edited,
    opened: job,
    writer: 'Kickset test',
    now: () => '2026-05-01T10:00:00.000Z',
    later: (run) => {
      waiting = run;
      return () => {
        waiting = null;
      };
    },
    onTrouble: (sentence) => said.push(sentence),
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  const rest = async () => {
    await settle();
    waiting?.();
    await settle();
  };
  return { port, doc, autosave, said, settle, rest };
}

const rename = (name: string) => (draft: Plan) => {
  draft.name = name;
};
const thicken = (wall: string, mm: number) => (draft: Plan) => {
  const w = draft.walls[wall];
  if (w) w.thicknessMm = mm;
};

describe('keeping a job while it is edited', () => {
  test('a step is there at once, without any pause', async () => {
    const { port, doc, settle } = await started();
    doc.change('Thicker wall', thicken('BW', 300));
    doc.change('Name', rename('Flat 4'));
    await settle();
    const again = await opened(port);
    expect(again.plan).toEqual(doc.plan());
    expect(again.undo.map((e) => e.label)).toEqual(['Thicker wall', 'Name']);
    expect((await port.snapshots('flat')).map((s) => s.seq)).toEqual([0]);
  });

  test('undo and redo survive a reload, and go on from there', async () => {
    const one = await started();
    one.doc.change('A', thicken('BW', 300));
    one.doc.change('B', thicken('BE', 310));
    one.doc.undo();
    await one.settle();
    const two = await started(one.port);
    expect(two.doc.plan()).toEqual(one.doc.plan());
    expect([two.doc.undoLabels(), two.doc.redoLabels()]).toEqual([['A'], ['B']]);
    two.doc.redo();
    expect(two.doc.plan().walls.BE?.thicknessMm).toBe(310);
    two.doc.undo();
    two.doc.undo();
    expect(two.doc.plan()).toEqual(flatPlan());
    await two.settle();
    expect((await opened(one.port)).redo.map((e) => e.label)).toEqual(['B', 'A']);
  });

  test('a pause folds the steps into a snapshot, and the list knows the new name', async () => {
    const { port, doc, rest, autosave } = await started();
    doc.change('Name', rename('Flat 4'));
    await rest();
    expect((await port.snapshots('flat'))[0]).toMatchObject({ seq: 1, undo: [{ label: 'Name' }] });
    expect(await listJobs(port)).toEqual([{ id: 'flat', name: 'Flat 4', savedAt: '2026-05-01T10:00:00.000Z' }]);
    expect(autosave.behind()).toBe(false);
    expect((await opened(port)).plan).toEqual(doc.plan());
  });

  test('a hundred steps without a pause are folded all the same', async () => {
    const { port, doc, autosave, settle } = await started();
    for (let i = 1; i <= 105; i += 1) doc.change(`Step ${i}`, thicken('BW', 250 + i));
    await settle();
    await autosave.flush();
    expect((await port.snapshots('flat'))[0]?.seq).toBe(105);
    expect((await opened(port)).undo).toHaveLength(105);
  });

  test('any row of steps comes back as it was', async () => {
    const move = fc.oneof(
      fc.record({
        kind: fc.constant('change' as const),
        wall: fc.constantFrom('BW', 'BE', 'BS', 'gone'),
        mm: fc.nat(500),
      }),
      fc.constantFrom(
        { kind: 'undo' as const },
        { kind: 'redo' as const },
        { kind: 'rest' as const },
        { kind: 'drop' as const },
      ),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(move, { maxLength: 25 }), async (moves) => {
        const { port, doc, rest, settle } = await started();
        for (const m of moves) {
          if (m.kind === 'change') doc.change(`${m.wall} ${m.mm}`, thicken(m.wall, m.mm));
          else if (m.kind === 'undo') doc.undo();
          else if (m.kind === 'redo') doc.redo();
          else if (m.kind === 'drop') doc.change('Drop', (draft) => void delete draft.points['B-CU']);
          else await rest();
        }
        await settle();
        const again = await opened(port);
        expect(JSON.stringify(again.plan)).toBe(JSON.stringify(doc.plan()));
        expect(again.undo.map((e) => e.label)).toEqual(doc.undoLabels());
        expect(again.redo.map((e) => e.label)).toEqual(doc.redoLabels());
        expect(again.sentence).toBe('');
      }),
      { numRuns: 25 },
    );
  });

  test('after stop nothing is kept any more', async () => {
    const { port, doc, autosave } = await started();
    doc.change('A', thicken('BW', 300));
    await autosave.stop();
    doc.change('B', thicken('BW', 400));
    expect((await opened(port)).plan.walls.BW?.thicknessMm).toBe(300);
  });
});

describe('a storage that fails', () => {
  const full = Object.assign(new Error('full'), { name: 'QuotaExceededError' });

  test('says so, loses nothing, and says when it is well again', async () => {
    const { port, doc, said, settle, rest, autosave } = await started();
    doc.change('A', thicken('BW', 300));
    await settle();
    port.failWith(full);
    doc.change('B', thicken('BW', 310));
    doc.change('C', thicken('BW', 320));
    await settle();
    expect(said[0]).toContain('no room left');
    expect(autosave.behind()).toBe(true);
    expect((await opened(port)).plan.walls.BW?.thicknessMm).toBe(300);
    port.failWith(null);
    await rest();
    expect(said.at(-1)).toBeNull();
    expect(autosave.behind()).toBe(false);
    const again = await opened(port);
    expect(again.plan).toEqual(doc.plan());
    expect(again.undo.map((e) => e.label)).toEqual(['A', 'B', 'C']);
    doc.change('D', thicken('BW', 330));
    await settle();
    expect((await opened(port)).plan.walls.BW?.thicknessMm).toBe(330);
  });

  test('flush does not reject', async () => {
    const { port, doc, autosave, said } = await started();
    port.failWith(new Error('odd'));
    doc.change('A', thicken('BW', 300));
    await expect(autosave.flush()).resolves.toBeUndefined();
    expect(said.at(-1)).toContain('could not be kept');
  });
});

describe('a tail that cannot be read', () => {
  const spoiled = (seq: number, entry: unknown, more: Partial<StepRow> = {}): StepRow => ({
    job: 'flat',
    seq,
    version: 1,
    kind: 'do',
    entry: entry as StepEntry,
    ...more,
  });
  const patch = (path: string[], value: unknown) => ({
    label: 'x',
    patches: [{ op: 'replace', path, value }],
    inverse: [],
  });

  test.each<[string, StepRow[], string]>([
    ['a record that is no step', [spoiled(2, null)], 'The last step could not be read and is missing'],
    ['a step that leads nowhere', [spoiled(2, patch(['walls', 'none', 'deep', 'er'], 1))], 'The last step'],
    ['a step that spoils the plan', [spoiled(2, patch(['walls', 'BW', 'thicknessMm'], 'thick'))], 'The last step'],
    [
      'a gap',
      [spoiled(3, patch(['name'], 'x')), spoiled(4, patch(['name'], 'y'))],
      'The last 2 steps could not be read and are',
    ],
    ['a step of another version', [spoiled(2, patch(['name'], 'x'), { version: 0 })], 'The last step'],
    ['a step that reaches for the prototype', [spoiled(2, patch(['__proto__', 'polluted'], 1))], 'The last step'],
  ])('%s is cut off with a sentence, and the work goes on', async (_what, rows, sentence) => {
    const { port, doc, settle } = await started();
    doc.change('A', thicken('BW', 300));
    await settle();
    for (const row of rows) await port.append(row);
    const cut = await opened(port);
    expect(cut.plan).toEqual(doc.plan());
    expect(cut.undo.map((e) => e.label)).toEqual(['A']);
    expect(cut.sentence).toContain(sentence);
    expect(cut.whole).toBe(false);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();

    const next = await started(port);
    next.doc.change('B', thicken('BW', 350));
    await next.settle();
    const again = await opened(port);
    expect(again.plan.walls.BW?.thicknessMm).toBe(350);
    expect(again.sentence).toBe('');
  });

  test('a snapshot that cannot be read gives way to the one before and its steps', async () => {
    const { port, doc, rest, settle } = await started();
    doc.change('A', thicken('BW', 300));
    await rest();
    doc.change('B', thicken('BW', 310));
    await settle();
    const [latest] = await port.snapshots('flat');
    if (!latest) throw new Error('no snapshot');
    await port.writeSnapshot({ id: 'flat', name: 'x', savedAt: '' }, { ...latest, text: latest.text.slice(0, 500) });
    const again = await opened(port);
    expect(again.plan).toEqual(doc.plan());
    expect(again.sentence).toContain('the one before it was opened');
  });

  test('with no snapshot that can be read, the file itself says what is the matter', async () => {
    const port = memoryPort();
    const row = { id: 'flat', name: 'x', savedAt: '' };
    await port.writeSnapshot(row, {
      job: 'flat',
      seq: 0,
      text: '{"format":"kickset-plan","version":1,',
      undo: [],
      redo: [],
    });
    const job = await openJob(port, 'flat');
    expect(job.read.kind).toBe('broken');
  });

  test('a job that is gone is said to be gone', async () => {
    const job = await openJob(memoryPort(), 'none');
    expect(job.read).toEqual({ kind: 'notPlan', sentence: 'This job is no longer on this device.' });
  });
});

describe('the list of jobs', () => {
  test('is by name as people count, then latest first', async () => {
    const port = memoryPort();
    const add = (id: string, name: string, savedAt: string) =>
      createJob(port, { ...flatPlan(), id, name }, { ...with_, savedAt });
    await add('1', 'Flat 10', '2026-05-01');
    await add('2', 'flat 2', '2026-05-01');
    await add('3', 'Flat 2', '2026-05-03');
    expect((await listJobs(port)).map((j) => j.id)).toEqual(['3', '2', '1']);
  });

  test('a file opened again comes after all that was kept of it', async () => {
    const { port, doc, settle } = await started();
    doc.change('A', thicken('BW', 300));
    await settle();
    await createJob(port, flatPlan(), with_);
    expect((await opened(port)).plan).toEqual(flatPlan());
  });
});
