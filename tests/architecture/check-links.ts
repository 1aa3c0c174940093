import { posix } from 'node:path';
import { doors, layerOf, mayImport, mayRead, packageHome } from './layers.ts';
import type { Link } from './module-links.ts';

export interface Surroundings {
  readonly isFile: (path: string) => boolean;
  /** Packages that come with the product, not only with its tests. */
  readonly dependencies: ReadonlySet<string>;
}

/** The fixed part of a glob pattern, up to the first folder that holds a wildcard. */
const fixedPart = (pattern: string): string => {
  const parts = pattern.split('/');
  const wild = parts.findIndex((part) => /[*?{[(!]/.test(part));
  return (wild < 0 ? parts : parts.slice(0, wild)).join('/');
};

const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

function checkPackage(layer: string, specifier: string, around: Surroundings): string | undefined {
  const name = specifier.startsWith('node:') ? 'node:' : packageOf(specifier);
  if (name !== 'node:' && !around.dependencies.has(name)) return `${specifier} is not among the dependencies`;
  // zustand alone is at home in the view, while its part without react is free.
  const homes = name === 'zustand' ? packageHome[specifier] : packageHome[name];
  return homes === undefined || homes.includes(layer) ? undefined : `${name} belongs to ${homes.join(', ')} only`;
}

function checkShared(layer: string, target: string): string | undefined {
  const folder = target.split('/').slice(0, 2).join('/');
  const readers = Object.hasOwn(mayRead, folder) ? mayRead[folder] : undefined;
  if (readers === undefined) return `${target} is not for code to read`;
  return readers.includes(layer) ? undefined : `${folder} may be read by ${readers.join(', ')} only`;
}

function checkOwn(layer: string, target: string): string | undefined {
  const other = layerOf(target);
  if (other === undefined) return `${target} lies in no known layer`;
  if (other === layer) return undefined;
  if (!mayImport[layer]?.includes(other)) return `${layer} may not import ${other} (${target})`;
  const door = doors[other];
  return door === undefined || door === target ? undefined : `${other} is reached through ${door} only`;
}

/**
 * What is wrong with one link of one file, or undefined.
 * @param path of the importing file, from the top of the repository, in src
 */
export function faultOf(path: string, link: Link, around: Surroundings): string | undefined {
  const layer = layerOf(path);
  if (layer === undefined) return `${path} lies in no known layer`;
  if (link.specifier === undefined) return `a ${link.kind} is computed at run time and cannot be checked`;
  const specifier = link.specifier.replace(/^!/, '').replace(/\?\w+$/, '');
  if (!specifier.startsWith('.')) {
    if (link.kind === 'import') return checkPackage(layer, specifier, around);
    return `${specifier}: a ${link.kind} starts with ./ or ../`;
  }
  const written = link.kind === 'glob' ? fixedPart(specifier) : specifier;
  const target = posix.join(posix.dirname(path), written);
  // A folder stands for what is in it, so that a pattern straight in a layer's folder is in that layer.
  const place = link.kind === 'glob' ? `${target.replace(/\/$/, '')}/` : target;
  if (link.kind !== 'glob' && !around.isFile(target)) return `${specifier} is no file (imports carry their extension)`;
  if (place.startsWith('shared/')) return checkShared(layer, place);
  if (place.startsWith('src/')) return checkOwn(layer, place);
  // The empty page opens a demo house: a plan as data, fetched when it is asked for.
  if (/^demo-plans\/[\w-]+\.plan\.json$/.test(place)) {
    return layer === 'view' ? undefined : `${specifier}: only the view opens demo plans`;
  }
  return `${specifier} leads out of src and shared`;
}
