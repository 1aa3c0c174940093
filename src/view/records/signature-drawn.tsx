import { BOX_HIGH, BOX_WIDE, pathOf, type Stroke } from './signature-strokes.ts';

/** Strokes as they were written. */
export function SignatureDrawn({ strokes }: { readonly strokes: readonly Stroke[] }) {
  return (
    <svg className="sign-ink" viewBox={`0 0 ${BOX_WIDE} ${BOX_HIGH}`} aria-hidden="true">
      <path d={strokes.map(pathOf).join('')} />
    </svg>
  );
}
