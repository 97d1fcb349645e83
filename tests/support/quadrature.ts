/** Integral by Simpson's rule on so many even steps: plain enough to check a closed form by, and independent of the core. */
export function integral(f: (x: number) => number, from: number, to: number, steps: number): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}
