/**
 * How fast toolpaths are read, against a loop that does nothing but count the ends of lines in the same bytes; and how much memory a
 * long one takes. Both sides of the ratio run by turns in one process, a stretch of 2 MB each, and the best of each is taken, so that
 * whatever else the machine does weighs as little as can be. The reader is bundled first, as in the page: in a test every name that
 * is imported is looked up anew each time.
 */
import { build, type Rollup } from 'vite';
import { bench, describe } from 'vitest';
import type { ByteSource } from '../../src/files/gcode/byteSource.ts';
import { gcodeBytes, gcodeCorpus } from '../support/gcodeCorpus.ts';

const STRETCH = 2 << 20;
const ROUNDS = 8;

async function bundled(): Promise<typeof import('./toolpathReading.ts')> {
  const entry = new URL('toolpathReading.ts', import.meta.url).pathname;
  const lib = { entry, formats: ['es' as const] };
  const result = await build({ configFile: false, logLevel: 'silent', build: { write: false, target: 'es2022', lib } });
  const [{ output }] = result as Rollup.RollupOutput[] as [Rollup.RollupOutput];
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
}

const { FiguresSink, GcodeReader, scanGcode } = await bundled();
const OPTIONS = { filamentDiameter: 1.75 };

/** Numbers that look like chance and are the same each time. */
function drawn(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fff_ffff;
    return state / 0x7fff_ffff;
  };
}

/** Layers of lines with filament told in all, as most files are. */
function plainText(bytes: number, seed = 1): Uint8Array {
  const next = drawn(seed);
  const lines: string[] = [];
  let [size, e, z] = [0, 0, 0.2];
  for (let i = 0; size < bytes; i += 1) {
    if (i % 2000 === 0) {
      lines.push('G92 E0', `G0 Z${z.toFixed(2)}`);
      z += 0.2;
      e = 0;
    }
    e += next() * 0.5;
    lines.push(`G1 X${(100 + 20 * next()).toFixed(3)} Y${(100 + 20 * next()).toFixed(3)} E${e.toFixed(5)}`);
    size += lines.at(-1)!.length + 1;
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
}

function repeated(bytes: Uint8Array, size: number): Uint8Array {
  const times = Math.ceil(size / bytes.length);
  const all = new Uint8Array(times * bytes.length);
  for (let i = 0; i < times; i += 1) all.set(bytes, i * bytes.length);
  return all;
}

function ends(bytes: Uint8Array): number {
  let count = 0;
  for (let i = 0; i < bytes.length; i += 1) if (bytes[i] === 10) count += 1;
  return count;
}

function readAll(bytes: Uint8Array): number {
  const sink = new FiguresSink();
  const reader = new GcodeReader(OPTIONS, sink);
  for (let at = 0; at < bytes.length; at += STRETCH) reader.feed(bytes.subarray(at, at + STRETCH));
  reader.end();
  return sink.end().printingLength;
}

const taken = (step: () => void): number => {
  const start = performance.now();
  step();
  return performance.now() - start;
};

/** Best speeds [MB/s] of counting ends, of reading, and of reading with the figures. */
function speeds(bytes: Uint8Array): readonly [bare: number, read: number, figures: number] {
  const best = [Infinity, Infinity, Infinity] as [number, number, number];
  for (let round = 0; round < ROUNDS; round += 1) {
    const alone = new GcodeReader(OPTIONS, { take: () => undefined });
    const whole = new GcodeReader(OPTIONS, new FiguresSink());
    for (let at = 0; at + STRETCH <= bytes.length; at += STRETCH) {
      const stretch = bytes.subarray(at, at + STRETCH);
      best[0] = Math.min(
        best[0],
        taken(() => void ends(stretch)),
      );
      best[1] = Math.min(
        best[1],
        taken(() => alone.feed(stretch)),
      );
      best[2] = Math.min(
        best[2],
        taken(() => whole.feed(stretch)),
      );
    }
  }
  return best.map((ms) => STRETCH / ms / 1e3) as [number, number, number];
}

const TEXTS: readonly (readonly [string, Uint8Array])[] = [
  ['plain lines', plainText(24e6)],
  ...gcodeCorpus()
    .filter(({ file }) => /boat|puzzle|cube15-old/.test(file))
    .map(({ file }) => [file, repeated(gcodeBytes(file), 24e6)] as const),
];

describe.each(TEXTS)('%s', (name, bytes) => {
  const [bare, read, figures] = speeds(bytes);
  const against = (speed: number) => `${speed.toFixed(0)} MB/s, ${(speed / bare).toFixed(2)} of the bare scan`;
  console.log(
    `${name}: ends of lines ${bare.toFixed(0)} MB/s; read ${against(read)}; with figures ${against(figures)}`,
  );
  bench('count ends of lines', () => void ends(bytes), { time: 300 });
  bench(`read with figures (${against(figures)})`, () => void readAll(bytes), { time: 300 });
});

/** As many bytes as one likes: the same ones again and again, so that nothing is held but what the reader holds. */
function madeSource(size: number): ByteSource {
  const text = plainText((4 << 20) + 100);
  return {
    size,
    read: (from, to) => Promise.resolve(text.subarray(0, to - from)),
  };
}

interface Held {
  readonly heap: number;
  readonly buffers: number;
  readonly all: number;
}

/** The most that is held while so many bytes are read [MB]. */
async function held(size: number): Promise<Held> {
  let [heap, buffers, all] = [0, 0, 0];
  const look = () => {
    const now = process.memoryUsage();
    heap = Math.max(heap, now.heapUsed / 1e6);
    buffers = Math.max(buffers, now.arrayBuffers / 1e6);
    all = Math.max(all, now.rss / 1e6);
  };
  await scanGcode(madeSource(size), OPTIONS, new FiguresSink(), look);
  return { heap, buffers, all };
}

const say = ({ heap, buffers, all }: Held) =>
  `heap ${heap.toFixed(0)}, buffers ${buffers.toFixed(0)}, in all ${all.toFixed(0)} MB`;

describe('memory', async () => {
  await held(10e6);
  const [short, long] = [await held(10e6), await held(500e6)];
  console.log(`10 MB: ${say(short)}; 500 MB: ${say(long)}`);
  bench(`read 10 MB (${say(short)}; of 500 MB: ${say(long)})`, async () => void (await held(10e6)), { time: 300 });
});
