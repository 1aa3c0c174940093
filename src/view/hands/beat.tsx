import { services } from '../../catalogue/services.ts';
import { isServiceLook, look } from '../look/tokens.ts';
import { serviceColour } from '../panels/service-tag.tsx';

const WIDTH = 46;
const HEIGHT = 16;

/** A piece of a service's line in its own beat and weight, as it lies on the drawing. */
export function Beat({ service }: { readonly service: string }) {
  const style = services.get(service)?.style ?? '';
  if (!isServiceLook(style)) return null;
  const { dashMm, newMm } = look.service[style];
  const perMm = look.screen.pxPerMm;
  return (
    <svg className="beat" width={WIDTH} height={HEIGHT} aria-hidden="true">
      <path
        d={`M1 ${HEIGHT / 2}H${WIDTH - 1}`}
        style={{ stroke: serviceColour(service) }}
        strokeWidth={newMm * perMm}
        strokeDasharray={dashMm.map((mm) => mm * perMm).join(' ')}
      />
    </svg>
  );
}
