import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Part } from '../../../src/core/design/joint.ts';
import { createSaver, type Kept } from '../../../src/store/saver.ts';
import { partOf } from '../../support/storeJoints.ts';

const A = partOf('a');
const B = partOf('b');

function bench(write: (part: Part) => Promise<void> = () => Promise.resolve()) {
  const written: Part[] = [];
  const told: Kept[] = [];
  const saver = createSaver(
    async (part) => {
      await write(part);
      written.push(part);
    },
    (kept) => told.push(kept),
    400,
  );
  return { written, told, saver };
}

function refusal(name: string): () => Promise<void> {
  return () => Promise.reject(new DOMException('refused', name));
}

/** A write that ends only when it is let go. */
function gate() {
  let letGo: (() => void) | undefined;
  const passed = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  return { passed, open: () => letGo?.() };
}

describe('the saver', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('writes a run of changes once, the newest', async () => {
    const { written, told, saver } = bench();
    saver.save(A);
    await vi.advanceTimersByTimeAsync(399);
    saver.save(B);
    await vi.advanceTimersByTimeAsync(399);
    expect(written).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(written).toEqual([B]);
    expect(told.at(-1)).toBe('saved');
  });

  it('writes at once when flushed, and once only', async () => {
    const { written, saver } = bench();
    saver.save(A);
    await saver.flush();
    expect(written).toEqual([A]);
    await vi.advanceTimersByTimeAsync(1000);
    await saver.flush();
    expect(written).toEqual([A]);
  });

  it('never lets an older part land after a newer one', async () => {
    const slow = gate();
    const { written, told, saver } = bench((part) => (part === A ? slow.passed : Promise.resolve()));
    saver.save(A);
    void saver.flush();
    await vi.advanceTimersByTimeAsync(0);
    saver.save(B);
    const all = saver.flush();
    expect(told).not.toContain('saved');
    slow.open();
    await all;
    expect(written).toEqual([A, B]);
    expect(told.filter((kept) => kept === 'saved')).toHaveLength(1);
  });

  it.each([
    ['QuotaExceededError', 'full'],
    ['InvalidStateError', 'unavailable'],
  ])('tells when the storage refuses with %s', async (name, kept) => {
    const { told, saver } = bench(refusal(name));
    saver.save(A);
    await saver.flush();
    expect(told.at(-1)).toBe(kept);
  });

  it('tries again with the next change', async () => {
    let refuses = true;
    const { written, told, saver } = bench(() => (refuses ? refusal('QuotaExceededError')() : Promise.resolve()));
    saver.save(A);
    await saver.flush();
    refuses = false;
    saver.save(B);
    await saver.flush();
    expect(written).toEqual([B]);
    expect(told.at(-1)).toBe('saved');
  });
});
