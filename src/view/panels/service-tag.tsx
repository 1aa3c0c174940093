import { services } from '../../catalogue/services.ts';

const kebab = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

/** Colour of a service as a custom property of the theme. */
export function serviceColour(service: string): string {
  const style = services.get(service)?.style ?? '';
  return `var(--service-${kebab(style)}, var(--ink2))`;
}

/** The plate with a service's letters, as on the drawing. */
export function ServiceTag({ service }: { readonly service: string }) {
  const kind = services.get(service);
  return (
    <span className="service-tag" style={{ borderColor: serviceColour(service) }} title={kind?.label}>
      {kind?.tag ?? '?'}
    </span>
  );
}
