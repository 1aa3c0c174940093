import { defineTool } from './define-tool.ts';
import { emptyRunMemory, type RunMemory } from './live-run.ts';
import { runStates } from './run-states.ts';

/** Lays pipe: each tap is a node, a tap on a tail or a pipe ends the run, a second tap or Enter keeps it open. */
export default defineTool<RunMemory>({
  id: 'run',
  label: 'Run',
  key: 'r',
  order: 20,
  initial: 'idle',
  memory: emptyRunMemory,
  states: runStates({}),
});
