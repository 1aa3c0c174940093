import type { Editor } from '../../src/editor/editor-api.ts';
import { editorOf } from './hand.ts';

export interface Drawn {
  readonly editor: Editor;
  /** Made ids by what they are. */
  readonly id: Readonly<Record<string, string>>;
}

/** A room of 4 by 3 m with a boiler on its north wall, a meter, a gas run between them and a cold pipe over it. */
export function drawn(): Drawn {
  const editor = editorOf();
  const id: Record<string, string> = {};
  const run = (name: string, command: string, args: unknown): readonly string[] => {
    const outcome = editor.run(command, args);
    if (!outcome.ok) throw new Error(`${command}: ${outcome.why}`);
    id[name] = outcome.made[0] ?? '';
    return outcome.made;
  };
  const wall = (name: string, a: [number, number], b: [number, number]) =>
    run(name, 'wall.add', {
      storey: 'ground',
      a: { x: a[0], y: a[1] },
      b: { x: b[0], y: b[1] },
      thicknessMm: 100,
      construction: 'block',
    });
  wall('south', [0, 0], [4000, 0]);
  wall('east', [4000, 0], [4000, 3000]);
  wall('north', [4000, 3000], [0, 3000]);
  wall('west', [0, 3000], [0, 0]);
  run('door', 'opening.add', {
    wall: id.south,
    kind: 'door',
    from: 'a',
    alongMm: 500,
    widthMm: 800,
    sillMm: 0,
    headMm: 2000,
  });
  run('kitchen', 'room.add', { storey: 'ground', seed: { x: 2000, y: 1500 }, name: 'kitchen' });
  const height = (mm: number) => ({ from: 'floor', of: 'ground', mm });
  const hang = {
    on: 'wall',
    wall: id.north,
    side: 'left',
    from: 'a',
    alongMm: 2000,
    standOffMm: 0,
    height: height(1100),
  };
  run('boiler', 'point.add', { kind: 'boiler', storey: 'ground', place: hang });
  const floor = { on: 'storey', x: 600, y: 1000, angleDeg: 0, height: height(300) };
  run('meter', 'point.add', { kind: 'gas-meter', storey: 'ground', place: floor });
  const pipe = (service: string, path: readonly unknown[]) =>
    run(service, 'run.start', {
      service,
      joining: 'endFeed',
      turns: 'elbow',
      tube: { kind: 'copper', size: '22x0.9' },
      path,
    });
  const free = (x: number, y: number, mm: number) => ({ at: 'free', storey: 'ground', x, y, height: height(mm) });
  const { plan } = editor.store.getState();
  const outlet = plan.points[id.meter ?? '']?.connections[0]?.id ?? '';
  const from = { at: 'connection', point: id.meter, connection: outlet };
  const gas = pipe('gas', [from, free(675, 885, 2000), free(1500, 885, 2000), free(1500, 2000, 2000)]);
  gas.forEach((made, i) => {
    id[`gas.${i}`] = made;
  });
  const cold = pipe('cold', [free(1000, 500, 150), free(1000, 2500, 150)]);
  cold.forEach((made, i) => {
    id[`cold.${i}`] = made;
  });
  editor.restore(editor.store.getState().plan, [], []);
  return { editor, id };
}
