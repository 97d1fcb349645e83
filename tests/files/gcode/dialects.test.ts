/** One print, however it is written: the same figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FiguresSink } from '../../../src/core/inspect/toolpath/figuresSink.ts';
import { bytesSource } from '../../../src/files/gcode/byteSource.ts';
import { scanGcode } from '../../../src/files/gcode/scanGcode.ts';
import { gcodeBytes, gcodeCorpus } from '../../support/gcodeCorpus.ts';
import { stepsOf, wide, withChecksum, written, type Dialect, type Step } from '../../support/gcodeDialects.ts';
import { bytesOfText, readGcode } from '../../support/readGcode.ts';
import { expectSameFigures } from '../../support/sameFigures.ts';

const DIALECTS: readonly (readonly [string, Dialect])[] = [
  ['in plain words', {}],
  ['tight, in small letters', { tight: true, lower: true }],
  ['in inches', { inch: true }],
  ['filament in volumes', { volumetric: 1.75 }],
  ['in inches, filament in volumes', { inch: true, volumetric: 1.75 }],
  ['axes by how far they go', { relative: true }],
  ['axes by how far they go, in inches', { relative: true, inch: true }],
  ['filament by how far it goes', { relativeFeed: true }],
  ['without words for how, where it is as before', { modal: true }],
  ['tight, without words for how', { modal: true, tight: true }],
  ['with comments of all kinds', { commented: true }],
  ['numbered, with checksums', { numbered: true }],
  ['numbered, tight, in small letters', { numbered: true, tight: true, lower: true }],
  ['with signs and zeros', { ornate: true }],
  ['places called anew now and then', { resets: 7 }],
  ['lines that end in two characters', { lineEnd: '\r\n' }],
];

const CUBE = 'gcode/cube15-old.gcode';
const FILES = gcodeCorpus();

describe.skipIf(FILES.length === 0)('a cube of 15 mm', () => {
  const bytes = FILES.length === 0 ? new Uint8Array(0) : gcodeBytes(CUBE);
  const { figures } = readGcode(bytes);
  const steps = stepsOf(new TextDecoder().decode(bytes));

  it.each(['crlf-bom', 'numbered-checksum', 'relative-e'])('of the collection, %s', (name) => {
    const read = readGcode(gcodeBytes(`gcode/cube15--${name}.gcode`));
    expectSameFigures(read.figures, figures);
    expect([read.text.bad, read.text.badChecksums]).toEqual([0, 0]);
  });

  it.each(DIALECTS)('%s', (_, dialect) => {
    const { text, figures: same } = readGcode(written(steps, dialect));
    expectSameFigures(same, figures);
    expect([text.bad, text.badChecksums]).toEqual([0, 0]);
  });

  it.each([
    ['low byte first', true],
    ['high byte first', false],
  ])('in characters of two bytes, %s', async (_, isLowFirst) => {
    const sink = new FiguresSink();
    const text = wide(`${new TextDecoder().decode(bytes)}; Ċ ਊ ¦\n`, isLowFirst);
    const result = await scanGcode(bytesSource(text), { filamentDiameter: 1.75 }, sink);
    expect(result).toMatchObject({ ok: true, value: { bytes: text.length, lines: 4477, bad: 0 } });
    expectSameFigures(sink.end(), figures);
  });
});

/** Places on a grid of 10 µm, layers of 0.2 mm, filament on a grid of 10 µm. */
const place = fc.integer({ min: 0, max: 20_000 }).map((n) => 100 * n);
const filament = fc.integer({ min: 1, max: 500 }).map((n) => 1000 * n);
const laying = fc.record({ x: place, y: place, e: filament });
const travelling = fc.record({ x: place, y: place, isRapid: fc.boolean() });
const feeding = fc.record({
  e: fc.oneof(
    filament,
    filament.map((e) => -e),
  ),
});
const lifting = fc.record({ z: fc.integer({ min: 0, max: 200 }).map((n) => 2000 * n) });
const tool = fc.record({ tool: fc.nat({ max: 3 }) });
const wiping = fc.record({ x: place, y: place, e: filament.map((e) => -e) });
const steps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof({ arbitrary: laying, weight: 6 }, travelling, feeding, lifting, tool, wiping),
  { minLength: 1, maxLength: 60 },
);

describe('any print', () => {
  it.each(DIALECTS.slice(1))('is the same %s', (_, dialect) => {
    fc.assert(
      fc.property(steps, (print) => {
        const [plain, other] = [readGcode(written(print)), readGcode(written(print, dialect))];
        expectSameFigures(other.figures, plain.figures);
        expect([other.text.bad, other.text.badChecksums]).toEqual([0, 0]);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same in all ways at once', () => {
    const dialect = fc.record({
      inch: fc.boolean(),
      relative: fc.boolean(),
      relativeFeed: fc.boolean(),
      volumetric: fc.constantFrom(0, 1.75),
      modal: fc.boolean(),
      tight: fc.boolean(),
      lower: fc.boolean(),
      numbered: fc.boolean(),
      ornate: fc.boolean(),
      resets: fc.constantFrom(0, 1, 5),
    });
    fc.assert(
      fc.property(steps, dialect, (print, how) => {
        expectSameFigures(readGcode(written(print, how)).figures, readGcode(written(print)).figures);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same with its moves split', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 2, max: 5 }), (print, split) => {
        expectSameFigures(readGcode(written(print, { split })).figures, readGcode(written(print)).figures, true);
      }),
      { numRuns: 200 },
    );
  });

  it('is the same renumbered, wherever numbers begin', () => {
    fc.assert(
      fc.property(steps, fc.nat({ max: 1e6 }), (print, first) => {
        const text = written(print);
        const numbered = text
          .split('\n')
          .map((line, i) => (line === '' ? line : withChecksum(`N${first + i} ${line}`)));
        const read = readGcode(numbered.join('\n'));
        expect(read.moves).toEqual(readGcode(text).moves);
        expect(read.text).toMatchObject({
          badChecksums: 0,
          numbered: numbered.length - 1,
          checksums: numbered.length - 1,
        });
      }),
      { numRuns: 100 },
    );
  });

  it('of another diameter is as long in filament as its volume tells', () => {
    fc.assert(
      fc.property(steps, (print) => {
        const text = written(print, { volumetric: 1.75 });
        const [thin, thick] = [readGcode(text), readGcode(text, { diameter: 2.85 })];
        const share = (1.75 / 2.85) ** 2;
        expect(thick.figures.filament).toBeCloseTo(thin.figures.filament * share, 6);
        expect(thick.figures.printingLength).toBe(thin.figures.printingLength);
      }),
      { numRuns: 50 },
    );
  });

  it('is the same cut into any pieces', () => {
    const pieces = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(steps, pieces, fc.boolean(), (print, sizes, numbered) => {
        const bytes = bytesOfText(written(print, { numbered }));
        expect(readGcode(bytes, { pieces: sizes })).toEqual(readGcode(bytes));
      }),
      { numRuns: 200 },
    );
  });
});
