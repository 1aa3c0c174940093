import { defineTool } from '../tools/define-tool.ts';
import { askStates } from '../tools/void-asks.ts';
import { faceStates } from '../tools/void-face.ts';
import { blank, type Memory } from '../tools/void-memory.ts';
import { outlineStates } from '../tools/void-outline.ts';
import { taskStates } from '../tools/void-tasks.ts';

/**
 * Draws voids: a tap takes a room whole, corners or one drag make an outline, and of floors and ceilings the joists are
 * asked. On a wall's face it draws boxings and chases. With a task in hand it changes the void that is chosen.
 */
export default defineTool<Memory>({
  id: 'void',
  label: 'Void',
  key: 'v',
  order: 57,
  initial: 'idle',
  memory: blank,
  states: { ...outlineStates, ...askStates, ...faceStates, ...taskStates },
});
