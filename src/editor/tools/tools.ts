import { registry } from '../../catalogue/registry.ts';
import type { AnyTool } from './define-tool.ts';
import { LATER_TOOLS, type ToolWords } from './later-tools.ts';

/** Those of `editor/later` join when they have arrived. */
export const tools: Map<string, AnyTool> = registry(
  import.meta.glob<AnyTool>('./*.tool.ts', { eager: true, import: 'default' }),
);

/** In the order they lie on the bench, those that have not arrived too. */
export const toolsInOrder = (): readonly ToolWords[] =>
  [...tools.values(), ...LATER_TOOLS.filter((t) => !tools.has(t.id))].sort((a, b) => a.order - b.order);
