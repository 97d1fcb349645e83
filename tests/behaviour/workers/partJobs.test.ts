import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runRequest } from '../../../src/workers/jobs.ts';
import type { Input, JobName, News, Output, PartNews } from '../../../src/workers/protocol.ts';
import { expectClose } from '../../support/close.ts';

const PARTS = 'tests/files/mesh/parts';
let ids = 0;

/** Through the door of all jobs, with what is told on the way. */
async function run<K extends 'checkPart' | 'drawPart'>(job: K, input: Input<K>) {
  const told: PartNews[] = [];
  const shares: number[] = [];
  ids += 1;
  const tell = (news: News<JobName>) => {
    if ('doing' in news) told.push(news as PartNews);
  };
  const alive = (share?: number) => shares.push(share ?? Number.NaN);
  const output = (await runRequest({ id: ids, job, input, own: [] }, alive, tell)) as Output<K>;
  return { output, told, shares };
}

function part(name: string) {
  return { file: new Blob([readFileSync(`${PARTS}/${name}`)]), name, key: name, thickest: 2.6 };
}

describe('the check of a part', () => {
  it('finds what truth.json beside the file says, and tells what it does on the way', async () => {
    const { output, told } = await run('checkPart', part('syn-leaves-042-084-126.stl'));
    if (!output.ok) throw new Error(output.problems[0].message);
    const thick = output.value.findings.flexures.map(({ thickness }) => thickness.least);
    expect(thick).toHaveLength(3);
    for (const [i, expected] of [0.42, 0.84, 1.26].entries()) {
      expectClose(thick[i] ?? Number.NaN, expected, { abs: 1e-3, because: 'the search measures to a micron' });
    }
    expect([...new Set(told.map(({ doing }) => doing))]).toEqual(['reading', 'mending', 'looking']);
    expect(told.at(-1)?.found).toBe(3);
  });

  it('tells how far it is, and never goes back', async () => {
    const { shares } = await run('checkPart', { ...part('syn-leaves-042-084-126.stl'), key: 'shares' });
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares[0]).toBeLessThanOrEqual(0.35);
    // Looking begins half way and is told to near its end.
    expect(shares.filter((share) => share > 0.5).length).toBeGreaterThan(0);
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });

  it('is plain data, as a worker has to send it', async () => {
    const { output } = await run('checkPart', part('syn-arch-126.stl'));
    expect(structuredClone(output)).toEqual(output);
  });

  it('takes the unit that is told, of a part that it remembers as well', async () => {
    const inches = part('syn-leaf-084x6-in-inches.stl');
    const guessed = await run('checkPart', inches);
    expect(guessed.output.ok && guessed.output.value.unit).toMatchObject({ unit: 'inch', by: 'sized' });
    const kept = await run('checkPart', { ...inches, unit: 'inch' });
    expect(kept.output.ok && kept.output.value.unit).toEqual({ unit: 'inch', by: 'told', orElse: [] });
    // Nothing had to be read again.
    expect(kept.told.map(({ doing }) => doing)).not.toContain('reading');
    const other = await run('checkPart', { ...inches, unit: 'centimetre' });
    expect(other.output.ok && other.output.value.unit.unit).toBe('centimetre');
  });

  it('refuses what is no part with the words of the readers', async () => {
    const { output } = await run('checkPart', { ...part('syn-arch-126.stl'), file: new Blob(['PK no']), key: 'bad' });
    expect(output.ok).toBe(false);
  });
});

describe('the picture of a part', () => {
  it('is drawn of one that has not been read before as well', async () => {
    const options = { room: { width: 120, height: 60 }, marks: [{ at: { x: 14.5, y: 5, z: 3 }, within: 6 }] };
    const { output } = await run('drawPart', { ...part('syn-leaves-042-084-126.stl'), up: '+z', options });
    if (!output.ok) throw new Error(output.problems[0].message);
    const { lines, marks, placing } = output.value;
    expect(lines.filter(({ kind }) => kind === 'silhouette').length).toBeGreaterThan(0);
    expect(marks).toHaveLength(1);
    expect(placing.width).toBeLessThanOrEqual(120);
  });
});
