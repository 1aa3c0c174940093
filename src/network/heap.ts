/** Takes out the least entry first, in log time. `before` must order every two entries that are not the same. */
export class Heap<T> {
  readonly #entries: T[] = [];
  readonly #before: (one: T, other: T) => boolean;

  constructor(before: (one: T, other: T) => boolean) {
    this.#before = before;
  }

  push(entry: T): void {
    const list = this.#entries;
    list.push(entry);
    let at = list.length - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.#swapIfBefore(at, up)) break;
      at = up;
    }
  }

  pop(): T | undefined {
    const list = this.#entries;
    const least = list[0];
    const last = list.pop();
    if (list.length === 0 || last === undefined) return least;
    list[0] = last;
    let at = 0;
    for (;;) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      const [l, r] = [list[left], list[right]];
      if (l === undefined) break;
      const down = r !== undefined && this.#before(r, l) ? right : left;
      if (!this.#swapIfBefore(down, at)) break;
      at = down;
    }
    return least;
  }

  #swapIfBefore(one: number, other: number): boolean {
    const list = this.#entries;
    const [a, b] = [list[one], list[other]];
    if (a === undefined || b === undefined || !this.#before(a, b)) return false;
    list[one] = b;
    list[other] = a;
    return true;
  }
}
