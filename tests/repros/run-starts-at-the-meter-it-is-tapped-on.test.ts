import { describe, expect, test } from 'vitest';
import { connectionPlace, pointFrame, toHouse } from '../../src/geometry/hosting.ts';
import { editorOf, handOn } from '../editor/hand.ts';

function withMeter(kind = 'gas-meter') {
  const editor = editorOf();
  const made = editor.run('point.add', {
    kind,
    storey: 'ground',
    place: { on: 'storey', x: 1000, y: 1000, angleDeg: 0, height: { from: 'floor', of: 'ground', mm: 700 } },
  });
  const id = made.ok ? made.made[0]! : '';
  const point = editor.store.getState().plan.points[id]!;
  const { widthMm, depthMm } = point.size;
  // So near that its outlet is far outside what a mouse touches.
  editor.setCamera('plan', { centre: [1000, 1000], mmPerPx: 1 });
  const corner = toHouse(pointFrame(editor.store.getState().plan, point)!, {
    x: -widthMm * 0.45,
    y: depthMm * 0.1,
    z: 0,
  });
  editor.setTool('run');
  editor.setInHand({ service: 'gas' });
  return { editor, id, point, corner, hand: handOn(editor, 'mouse') };
}

const starts = ({ editor }: ReturnType<typeof withMeter>) =>
  Object.values(editor.store.getState().plan.nodes).map((n) => n.place.on);

describe('a run begun on the box of a meter, beside its outlet', () => {
  test('starts at the outlet and not on the floor under it', () => {
    const drawn = withMeter();
    const { hand, corner, point, editor, id } = drawn;
    expect(connectionPlace(editor.store.getState().plan, id, point.connections[0]!.id)).toBeDefined();
    hand.tap(corner.x, corner.y);
    hand.tap(corner.x, corner.y + 2000);
    expect(starts(drawn)).toContain('connection');
  });

  test('but not with a service in hand that it does not give', () => {
    const drawn = withMeter();
    drawn.editor.setInHand({ service: 'cold' });
    drawn.hand.tap(drawn.corner.x, drawn.corner.y);
    drawn.hand.tap(drawn.corner.x, drawn.corner.y + 2000);
    expect(starts(drawn)).not.toContain('connection');
  });
});
