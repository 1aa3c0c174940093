import { registry } from '../../catalogue/registry.ts';
import type { AnyTool } from './define-tool.ts';

export const tools: ReadonlyMap<string, AnyTool> = registry(
  import.meta.glob<AnyTool>('./*.tool.ts', { eager: true, import: 'default' }),
);

/** In the order they lie on the bench. */
export const toolsInOrder = (): readonly AnyTool[] => [...tools.values()].sort((a, b) => a.order - b.order);
