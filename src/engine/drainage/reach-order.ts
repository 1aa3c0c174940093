/** By id, so that the same plan gives the same order. */
export const compareIds = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
