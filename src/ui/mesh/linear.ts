/** A straight scale: the charts of this place need no other, and do without the package for it. */
export interface Linear {
  (value: number): number;
  readonly invert: (at: number) => number;
  /** Round values within it, no more than so many. */
  readonly marks: (most: number) => readonly number[];
}

const STEPS = [1, 2, 5];

function marksIn([low, high]: readonly [number, number], most: number): readonly number[] {
  const least = (high - low) / most;
  const decade = 10 ** Math.floor(Math.log10(least));
  const step = decade * ([...STEPS, 10].find((one) => one * decade >= least * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

export function linear(domain: readonly [number, number], range: readonly [number, number]): Linear {
  const slope = (range[1] - range[0]) / (domain[1] - domain[0]);
  const scale = (value: number) => range[0] + slope * (value - domain[0]);
  return Object.assign(scale, {
    invert: (at: number) => domain[0] + (at - range[0]) / slope,
    marks: (most: number) => marksIn(domain, most),
  });
}
