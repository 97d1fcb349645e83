/** Typed arrays that grow by doubling, for as many numbers as a file turns out to hold. */

/** Small, because a file may hold many thousands of objects. */
const FEW = 48;

export class GrowingFloats {
  private items: Float64Array;
  length = 0;

  constructor(capacity = 0) {
    this.items = new Float64Array(Math.max(FEW, Math.ceil(capacity)));
  }

  /** Valid up to `length`, and until the next push. */
  get all(): Float64Array {
    return this.items;
  }

  push3(a: number, b: number, c: number): void {
    if (this.length + 3 > this.items.length) this.items = grown(this.items, new Float64Array(2 * this.items.length));
    const { items, length } = this;
    items[length] = a;
    items[length + 1] = b;
    items[length + 2] = c;
    this.length = length + 3;
  }

  toArray(): Float64Array {
    return this.items.slice(0, this.length);
  }
}

export class GrowingIndices {
  private items: Uint32Array;
  length = 0;

  constructor(capacity = 0) {
    this.items = new Uint32Array(Math.max(FEW, Math.ceil(capacity)));
  }

  /** Valid up to `length`, and until the next push. */
  get all(): Uint32Array {
    return this.items;
  }

  push3(a: number, b: number, c: number): void {
    if (this.length + 3 > this.items.length) this.items = grown(this.items, new Uint32Array(2 * this.items.length));
    const { items, length } = this;
    items[length] = a;
    items[length + 1] = b;
    items[length + 2] = c;
    this.length = length + 3;
  }

  toArray(): Uint32Array {
    return this.items.length === this.length ? this.items : this.items.slice(0, this.length);
  }
}

function grown<T extends Float64Array | Uint32Array>(old: T, larger: T): T {
  larger.set(old);
  return larger;
}
