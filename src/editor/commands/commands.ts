import { registry } from '../../catalogue/registry.ts';
import type { AnyCommand } from './define-command.ts';

/** Every command by its id. */
export const commands: ReadonlyMap<string, AnyCommand> = registry(
  import.meta.glob<AnyCommand>('./*.command.ts', { eager: true, import: 'default' }),
);
