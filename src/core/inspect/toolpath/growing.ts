/** A list of numbers that grows, and whose room is used again. */
export class Growing {
  values = new Float64Array(256);
  count = 0;

  add(value: number): void {
    if (this.count === this.values.length) {
      const more = new Float64Array(2 * this.count);
      more.set(this.values);
      this.values = more;
    }
    this.values[this.count] = value;
    this.count += 1;
  }

  clear(): void {
    this.count = 0;
  }

  /** What it holds, as an array of its own. */
  copy(): Float64Array {
    return this.values.slice(0, this.count);
  }
}
