/** Groups of whole numbers that grow by joining; the least of a group stands for it. */
export class UnionFind {
  readonly #above: Uint32Array;

  constructor(count: number) {
    this.#above = new Uint32Array(count);
    for (let i = 0; i < count; i += 1) this.#above[i] = i;
  }

  rootOf(item: number): number {
    const above = this.#above;
    let at = item;
    while (above[at] !== at) {
      above[at] = above[above[at]!]!;
      at = above[at]!;
    }
    return at;
  }

  /** True where they were in two groups. */
  join(a: number, b: number): boolean {
    const [first, second] = [this.rootOf(a), this.rootOf(b)];
    if (first === second) return false;
    this.#above[Math.max(first, second)] = Math.min(first, second);
    return true;
  }
}
