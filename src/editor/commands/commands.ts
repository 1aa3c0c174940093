import { registry } from '../../catalogue/registry.ts';
import type { AnyCommand } from './define-command.ts';

/** Every command by its id. Those of `editor/later` join when they have arrived. */
export const commands: Map<string, AnyCommand> = registry(
  import.meta.glob<AnyCommand>('./*.command.ts', { eager: true, import: 'default' }),
);
