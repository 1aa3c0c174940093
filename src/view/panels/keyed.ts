/** Keys for a list whose members have no id of their own: what each says, and which of its like it is. */
export function keyed<T>(
  items: readonly T[],
  say: (item: T) => string,
): readonly { readonly key: string; readonly item: T }[] {
  const seen = new Map<string, number>();
  return items.map((item) => {
    const said = say(item);
    const n = (seen.get(said) ?? 0) + 1;
    seen.set(said, n);
    return { key: `${said}#${n}`, item };
  });
}
