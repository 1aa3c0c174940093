/** Files found by glob become a registry: sorted by id, a second one of the same id throws at the start. */
export function registry<T extends { readonly id: string }>(files: Record<string, T>): Map<string, T> {
  const found = new Map<string, T>();
  addTo(found, files);
  return found;
}

/** Files that arrive after the others join the same registry. */
export function addTo<T extends { readonly id: string }>(found: Map<string, T>, files: Record<string, T>): void {
  const byId = Object.entries(files).sort(([, a], [, b]) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  for (const [path, entry] of byId) {
    if (found.has(entry.id)) throw new Error(`${path}: the id "${entry.id}" is taken`);
    found.set(entry.id, entry);
  }
}
