import { services } from '../../catalogue/services.ts';
import { isServiceLook, look } from '../look/tokens.ts';
import { serviceColour } from '../panels/service-tag.tsx';

const WIDTH = 52;
const HEIGHT = 16;
/** Of its beat on the drawing: so that one whole beat of each service shows. */
const SMALLER = 0.7;

/** A piece of a service's line in its own beat and weight, as it lies on the drawing. */
export function Beat({ service }: { readonly service: string }) {
  const style = services.get(service)?.style ?? '';
  if (!isServiceLook(style)) return null;
  const { dashMm, newMm } = look.service[style];
  const perMm = look.screen.pxPerMm * SMALLER;
  return (
    <svg className="beat" width={WIDTH} height={HEIGHT} aria-hidden="true">
      <path
        d={`M1 ${HEIGHT / 2}H${WIDTH - 1}`}
        style={{ stroke: serviceColour(service) }}
        strokeWidth={newMm * look.screen.pxPerMm}
        strokeDasharray={dashMm.map((mm) => mm * perMm).join(' ')}
      />
    </svg>
  );
}
