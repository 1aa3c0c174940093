import { services } from '../../catalogue/services.ts';

/** A service as it is said inside a sentence; one that this version does not know is called by its id. */
export function serviceWord(service: string | undefined): string {
  if (service === undefined) return 'pipe';
  return (services.get(service)?.label ?? service).toLowerCase();
}
