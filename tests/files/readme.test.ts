import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { reportPart } from '../../src/cli/report.ts';
import { readPart } from '../../src/files/partFile.ts';

/** The two examples of the README: what goes in, and what comes out, shortened and rounded. */
const [given, answer] = [
  ...readFileSync(new URL('../../README.md', import.meta.url), 'utf8').matchAll(/```json\n(.*?)```/gs),
].map(([, json]) => json ?? '');

/** Where a shortened, rounded example says something else than the whole, as short lines. */
function differences(example: unknown, whole: unknown, path: string): string[] {
  if (typeof example === 'number' && typeof whole === 'number') {
    // Half a unit in the last place that the README prints, which is three or four figures.
    const printed = String(example).replace('.', '').replace(/^0+/, '').length;
    const room = Math.abs(example) * 10 ** (1 - Math.max(printed, 3));
    return Math.abs(example - whole) <= room ? [] : [`${path}: ${example}, not ${whole}`];
  }
  if (typeof example !== 'object' || example === null) return example === whole ? [] : [`${path}: ${String(example)}`];
  const inner = (whole ?? {}) as Readonly<Record<string, unknown>>;
  return Object.entries(example).flatMap(([key, value]) => differences(value, inner[key], `${path}.${key}`));
}

describe('the examples of the README', () => {
  it('are a part that is read, and what the command says of it', () => {
    const part = readPart(given ?? '');
    expect(part.ok).toBe(true);
    if (!part.ok) return;
    const { parts } = JSON.parse(answer ?? '') as { parts: readonly unknown[] };
    const whole = { file: 'part.json', ...reportPart(part.value, []) };
    expect(differences(parts[0], JSON.parse(JSON.stringify(whole)), 'part')).toEqual([]);
  });

  it('would be missed if a figure went wrong', () => {
    expect(differences({ a: { b: 1.05 } }, { a: { b: 1.2 } }, 'x')).toHaveLength(1);
  });
});
