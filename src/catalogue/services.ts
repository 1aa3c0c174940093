import type { ServiceKind } from './define-service.ts';
import { registry } from './registry.ts';

/** Every service, sorted by id. Show them in their `order`. */
export const services: ReadonlyMap<string, ServiceKind> = registry(
  import.meta.glob<ServiceKind>('./services/*.service.ts', { eager: true, import: 'default' }),
);

/** In the order of lists and keys. */
export const servicesInOrder = (): readonly ServiceKind[] => [...services.values()].sort((a, b) => a.order - b.order);
