import type { KeyInput } from '../editor-api.ts';
import type { AnyTool, ToolContext, ToolEvent, ToolStateChart } from './define-tool.ts';

type Handler = 'down' | 'move' | 'up';

export interface Chart {
  readonly tool: AnyTool;
  readonly state: () => string;
  /** States gone through since the chart was made, for tests. */
  readonly path: () => readonly string[];
  on(handler: Handler, event: ToolEvent): void;
  key(key: KeyInput): boolean;
  cancel(): void;
  interrupt(): void;
  changed(): void;
  leave(): void;
  /** Remembers the tool as it stands; what comes back puts it back so, with no handler called. */
  keep(): () => void;
}

const MOST_KEPT = 200;

/** What the chart needs around a tool: a context for each call, told whether a commit is allowed in it. */
export interface ChartPorts {
  readonly context: (memory: unknown, may: { commit: boolean }) => ToolContext<unknown>;
  readonly onState: (state: string) => void;
}

/** Runs a tool's state chart. Handlers name the next state; giving up never leads to a commit. */
export function runChart(tool: AnyTool, ports: ChartPorts): Chart {
  const memory = (tool.memory() ?? {}) as Record<string, unknown>;
  let name = tool.initial;
  let path: string[] = [name];

  const here = (): ToolStateChart<unknown> => tool.states[name] ?? {};

  function go(next: string | undefined, may: { commit: boolean }): void {
    if (next === undefined || next === name) return;
    if (!tool.states[next]) throw new Error(`tool ${tool.id}: no state "${next}"`);
    const ctx = ports.context(memory, may);
    here().exit?.(ctx);
    name = next;
    path = [...path, next].slice(-MOST_KEPT);
    ports.onState(next);
    here().enter?.(ctx);
  }

  function giveUp(how: 'cancel' | 'interrupt'): void {
    const may = { commit: false };
    const ctx = ports.context(memory, may);
    const state = here();
    const handler = how === 'interrupt' ? (state.interrupt ?? state.cancel) : state.cancel;
    go(handler ? handler(ctx) : tool.initial, may);
  }

  return {
    tool,
    state: () => name,
    path: () => path,
    on(handler, event) {
      const may = { commit: handler !== 'move' };
      const next: unknown = here()[handler]?.(ports.context(memory, may), event);
      go(typeof next === 'string' ? next : undefined, may);
    },
    key(key) {
      const may = { commit: true };
      const next = here().key?.(ports.context(memory, may), key);
      go(next, may);
      return next !== undefined;
    },
    cancel: () => giveUp('cancel'),
    interrupt: () => giveUp('interrupt'),
    changed() {
      const may = { commit: false };
      go(here().changed?.(ports.context(memory, may)), may);
    },
    keep() {
      const lists = Object.entries(memory).map(([key, v]) => [key, Array.isArray(v) ? [...v] : v]);
      const was = { name, path, memory: Object.fromEntries(lists) };
      return () => {
        for (const key of Object.keys(memory)) delete memory[key];
        Object.assign(memory, was.memory);
        name = was.name;
        path = was.path;
        ports.onState(name);
      };
    },
    leave() {
      giveUp('cancel');
      here().exit?.(ports.context(memory, { commit: false }));
    },
  };
}
