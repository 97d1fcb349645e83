import { afterAll } from 'vitest';

interface Residuals {
  readonly compared: number;
  readonly largest: number;
}

const seen = new Map<string, Residuals>();

/** Remembers by how much a figure is off from one that comes from outside, as a share of it; printed after the file. */
export function noteResidual(group: string, actual: number, expected: number): void {
  const { compared, largest } = seen.get(group) ?? { compared: 0, largest: 0 };
  const off = Math.abs(actual - expected) / (expected === 0 ? 1 : Math.abs(expected));
  seen.set(group, { compared: compared + 1, largest: Math.max(largest, off) });
}

afterAll(() => {
  const lines = [...seen].map(
    ([group, { compared, largest }]) => `${group} ${largest.toExponential(1)} of ${compared}`,
  );
  if (lines.length > 0) console.log(`largest residuals: ${lines.join(', ')}`);
});
