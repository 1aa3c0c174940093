import { facesOf } from '../faces.ts';
import type { SheetKind } from '../sheet.ts';
import { viewPages } from '../view-pages.ts';

const USUAL = [20, 50, 100] as const;

const face: SheetKind = {
  id: 'face',
  order: 20,
  choices: (job) =>
    facesOf(job).map(({ wall, side, title, boiler }) => ({
      key: `face:${wall.id}:${side}`,
      label: `Wall face, ${title}`,
      usual: boiler,
      scales: [10, ...USUAL],
    })),
  pages(job, key, layout, scale) {
    const found = facesOf(job).find((f) => `face:${f.wall.id}:${f.side}` === key);
    if (!found) return [];
    const { wall, side, title } = found;
    const view = { kind: 'face', wall: wall.id, side } as const;
    const drawn = {
      key,
      view,
      storey: wall.storey,
      title,
      documentType: 'wall face',
      usual: USUAL,
      north: false,
      ladder: false,
    };
    return viewPages(job, drawn, layout, scale);
  },
};

export default face;
