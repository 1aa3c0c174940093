import { defineTool } from './define-tool.ts';
import { emptyRunMemory, type RunMemory } from './live-run.ts';
import { runStates } from './run-states.ts';

/** Starts on a pipe that is there, and goes on as a run of the same service. */
export default defineTool<RunMemory>({
  id: 'tee',
  label: 'Tee',
  key: 't',
  order: 30,
  initial: 'idle',
  memory: emptyRunMemory,
  states: runStates({ only: ['leg', 'node'], missed: 'Tap the pipe that the tee goes into.' }),
});
