import { itemKinds } from '../../catalogue/items.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { EditorState } from '../../editor/editor-api.ts';
import { nameOf } from '../panels/name-of.ts';
import { sayHeight } from '../ribbon/levels.ts';

const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

/** The two lines at the end of the bench: what the next touch makes or moves, and one thing about it. */
export function inHandWords(state: EditorState): readonly [string, string] {
  const { tool, inHand, plan, selection, caught, typed } = state;
  const live = typed !== '' ? `typed ${typed}` : (caught ?? '');
  switch (tool) {
    case 'run':
    case 'tee': {
      const service = services.get(inHand.service)?.label.toLowerCase() ?? inHand.service;
      const size = sayTubeSize(inHand.tube);
      if (inHand.goesOn !== null)
        return [`${capital(service)} run goes on, ${size}`, live || 'tap its end or the next corner'];
      return [`in hand: ${service} ${size}`, live || sayHeight(plan, inHand.height)];
    }
    case 'item':
      return [`in hand: ${(itemKinds.get(inHand.itemKind)?.label ?? inHand.itemKind).toLowerCase()}`, live];
    case 'point':
      if (inHand.thing?.kind === inHand.pointKind) return [`in hand: ${inHand.thing.name}`, live];
      return [`in hand: ${(pointKinds.get(inHand.pointKind)?.label ?? inHand.pointKind).toLowerCase()}`, live];
    case 'bank':
      return [`in hand: bank of ${inHand.bank.members.length}`, live || sayHeight(plan, inHand.height)];
    case 'step':
      return [
        `in hand: ${inHand.step.kind === 'swanNeck' ? 'swan neck' : inHand.step.kind}`,
        live || 'drag away from what lies across',
      ];
    case 'reroute':
      return ['in hand: re-route', live || 'tap both ends of the part'];
    case 'photo':
      return ['in hand: a photo', live || 'tap what it is of'];
    case 'wall':
      return [`in hand: wall ${inHand.wallThicknessMm}`, live || inHand.wallConstruction];
    case 'opening':
      return [`in hand: ${inHand.openingKind}`, live];
    case 'void':
      return [
        `in hand: ${/^(ceiling|floor)$/.test(inHand.voidKind) ? `${inHand.voidKind} void` : inHand.voidKind}`,
        live,
      ];
    case 'room':
      return [inHand.roomUse === '' ? 'in hand: room' : `in hand: ${inHand.roomUse}`, live || `sizes ${inHand.sizes}`];
    case 'roof':
      return ['in hand: roof', live];
    case 'ground':
      return ['in hand: ground level', live || inHand.groundKind];
    case 'stretch':
      return ['in hand: unseen pipe', live];
    case 'trace': {
      const laid = plan.blobRefs[inHand.trace?.blobRef ?? ''];
      return [laid ? `in hand: ${laid.name || 'picture'}` : 'no picture chosen', live];
    }
    case 'tape':
      return ['in hand: tape', live];
    default: {
      const [first] = selection;
      if (!first) return ['nothing chosen', live];
      const more = selection.length - 1;
      return [`chosen: ${nameOf(plan, first)}`, more > 0 ? `and ${more} more` : live];
    }
  }
}
