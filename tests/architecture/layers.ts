/** What each layer may import, types included. Everything not listed is forbidden. A layer may always import itself. */
export const mayImport: Readonly<Record<string, readonly string[]>> = {
  plan: [],
  report: ['plan'],
  geometry: ['plan'],
  reference: ['plan'],
  catalogue: ['plan', 'report', 'geometry', 'reference'],
  network: ['plan', 'report', 'geometry', 'reference', 'catalogue'],
  engine: ['plan', 'report', 'geometry', 'reference', 'catalogue', 'network'],
  drawing: ['plan', 'report', 'geometry', 'catalogue', 'network'],
  editor: ['plan', 'report', 'geometry', 'catalogue', 'network', 'drawing'],
  'files/format': ['plan', 'report', 'geometry', 'catalogue', 'drawing'],
  'files/store': ['plan', 'report', 'files/format'],
  worker: ['plan', 'report', 'engine'],
  view: [
    'plan',
    'report',
    'geometry',
    'catalogue',
    'network',
    'drawing',
    'editor',
    'files/format',
    'files/store',
    'worker',
  ],
  cli: ['plan', 'report', 'geometry', 'reference', 'catalogue', 'network', 'engine', 'drawing', 'files/format'],
};

/** The only layers that may read each folder of shared data. */
export const mayRead: Readonly<Record<string, readonly string[]>> = {
  'shared/tables': ['reference'],
  'shared/sources': ['reference'],
  'shared/fonts': ['drawing'],
  'shared/look': ['drawing', 'view'],
};

/**
 * Packages that tie code to one place: the page, this browser's storage, or node. All others may be used anywhere.
 * The key is a package, a package with a path, or "node:" for all of node's own modules.
 */
export const packageHome: Readonly<Record<string, readonly string[]>> = {
  react: ['view'],
  'react-dom': ['view'],
  'react-konva': ['view'],
  konva: ['view'],
  jspdf: ['view'],
  'svg2pdf.js': ['view'],
  // Its main entry brings react; zustand/vanilla does not and is free.
  zustand: ['view'],
  '@fontsource-variable/hanken-grotesk': ['view'],
  idb: ['files/store'],
  'node:': ['cli'],
};

/** Files in which two layers meet from outside: other layers reach a layer with a door through it only. */
export const doors: Readonly<Record<string, string>> = {
  engine: 'src/engine/evaluate.ts',
};

/** The layer of a file in src, or undefined where no layer is known. */
export function layerOf(path: string): string | undefined {
  const [src, first, second] = path.split('/');
  if (src !== 'src' || first === undefined || second === undefined) return undefined;
  const name = first === 'files' ? `files/${second}` : first;
  return Object.hasOwn(mayImport, name) ? name : undefined;
}
