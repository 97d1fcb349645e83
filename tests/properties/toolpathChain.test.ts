/** How a toolpath is written changes nothing of what is found in it, and no text breaks the chain. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bytesSource } from '../../src/files/gcode/byteSource.ts';
import { checkGcode } from '../../src/files/gcode/checkGcode.ts';
import { checkText, judgeFound } from '../support/checkedToolpaths.ts';
import { expectClose } from '../support/close.ts';
import { leafPart, type LeafLayer } from '../support/laidParts.ts';
import { carried, gcodeOf, turned, type Toolpath, type Writing } from '../support/toolpaths.ts';

const ROUNDED = { abs: 2e-4, because: 'six printed places of lengths, eight of filament' } as const;

/** A leaf with faults of all kinds, turned and moved. */
const anyLeaf: fc.Arbitrary<Toolpath> = fc
  .record({
    width: fc.integer({ min: 38, max: 60 }).map((n) => n / 100),
    starts: fc.array(fc.integer({ min: 0, max: 11 }), { maxLength: 4 }),
    gap: fc.constantFrom(0, 0.16, 0.21),
    middle: fc.boolean(),
    turn: fc.integer({ min: 0, max: 62 }).map((n) => n / 10),
    x: fc.integer({ min: -150, max: 150 }),
  })
  .map(({ width, starts, gap, middle, turn, x }) => {
    const layers = Array.from({ length: 12 }, (_, i): LeafLayer => ({
      contours: [width],
      ...(starts.includes(i) && { start: 3 + 0.4 * i }),
      ...(middle && gap > 0 && i % 3 === 0 && { middle: [[1, 7, gap] as const] }),
    }));
    const part = leafPart({ length: 12, thickness: 2 * width + gap, height: 0.2, layers });
    return carried(part.toolpath, turned(turn, x, 90));
  });

const anyWriting: fc.Arbitrary<Writing> = fc.record({
  inch: fc.boolean(),
  relativeFeed: fc.boolean(),
  volumetric: fc.boolean(),
  pieces: fc.integer({ min: 1, max: 4 }),
  numbered: fc.boolean(),
});

/** What is told, without what depends on the text itself. */
async function told(toolpath: Toolpath, writing: Writing = {}) {
  const checked = await checkText(gcodeOf(toolpath, writing));
  return { checked, judged: judgeFound(checked) };
}

describe('ways to write one toolpath', () => {
  it('tell the same sections, lines, widths, starts and findings', async () => {
    await fc.assert(
      fc.asyncProperty(anyLeaf, anyWriting, async (toolpath, writing) => {
        const plain = await told(toolpath);
        const other = await told(toolpath, writing);
        expect(other.judged.length).toBe(plain.judged.length);
        expectClose(other.checked.figures.filament, plain.checked.figures.filament, {
          rel: 1e-5,
          because: 'rounding of each piece',
        });
        expectClose(other.checked.figures.printingLength, plain.checked.figures.printingLength, {
          rel: 1e-6,
          because: 'rounding',
        });
        for (const [i, one] of plain.judged.entries()) {
          const two = other.judged[i]!;
          expect(two.findings.map(({ kind, grade, layers }) => [kind, grade, layers])).toEqual(
            one.findings.map(({ kind, grade, layers }) => [kind, grade, layers]),
          );
          for (const [k, layer] of one.audit.layers.entries()) {
            const same = two.audit.layers[k]!;
            expect(same.lines).toEqual(layer.lines);
            expect(same.starts.length).toBe(layer.starts.length);
            if (layer.widths) expectClose(same.widths!.mean, layer.widths.mean, ROUNDED);
          }
        }
      }),
      { numRuns: 12 },
    );
  }, 120_000);
});

const LINES = gcodeOf(
  leafPart({ length: 12, thickness: 0.84, height: 0.2, layers: [{ contours: [0.42] }, { contours: [0.42] }] }).toolpath,
).split('\n');

/** Lines of a good toolpath, cut up, shuffled, doubled, with nonsense among them. */
const anyText = fc
  .array(
    fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom(...LINES) },
      fc.constantFrom(
        'G2 X5 Y5 I1 J1 E1',
        'G3 X0 Y0 R-3 E2',
        'G91',
        'G90',
        'G20',
        'G92 X0 Y0 Z0',
        'M221 S50',
        'T3',
        'G28',
        'G1 Z-5',
        'G18',
        'M200 D1.75',
        'G1 X1e9 E1',
        'G1 E-3',
        'G1 E99999',
      ),
      fc.string({ maxLength: 30 }),
    ),
    { maxLength: 200 },
  )
  .map((lines) => `G1 X0 Y0\n${lines.join('\n')}`);

describe('any text', () => {
  it('is checked without breaking, and no figure is no number', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, async (text) => {
        const source = bytesSource(new TextEncoder().encode(text));
        const checked = await checkGcode(source, { thickest: 2.6 }, { alive: () => undefined, say: () => undefined });
        if (!checked.ok) {
          expect(checked.problems[0].message.length).toBeGreaterThan(10);
          return;
        }
        expect(JSON.stringify(checked.value)).not.toContain('null');
        for (const { findings } of judgeFound(checked.value)) expect(JSON.stringify(findings)).not.toContain('null');
      }),
      { numRuns: 200 },
    );
  }, 120_000);
});
