import { itemKinds } from '../../catalogue/items.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';

/** Words of ids that this version may not know: then the id itself, which is better than nothing. */
export const pointLabel = (kind: string): string => pointKinds.get(kind)?.label ?? kind;
export const serviceLabel = (service: string): string => services.get(service)?.label.toLowerCase() ?? service;
export const itemLabel = (kind: string): string => itemKinds.get(kind)?.label ?? kind;
