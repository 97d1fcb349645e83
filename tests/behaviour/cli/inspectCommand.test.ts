import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../../support/command.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const PARTS = 'tests/files/mesh/parts';
const LEAF = `${PARTS}/syn-leaf-084x6.stl`;
const INCHES = `${PARTS}/syn-leaf-084x6-in-inches.stl`;
const TWO = `${PARTS}/syn-two-objects.3mf`;

/** Two lines of half a millimetre and less, in a file whose name says something else. */
const JOB = 'G28\nG1 X10 Y10 Z0.2 E1\nG1 X20 Y10 E2\n';

const run = (args: readonly string[], input?: string | Uint8Array) => runCommand('inspect', ROOT, args, input);

describe('the command', { timeout: 60_000 }, () => {
  let folder = '';
  const file = (name: string) => join(folder, name);
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'bendbook-'));
    // A part file that ends in the middle of its triangles, and one of another kind.
    writeFileSync(file('cut.stl'), readFileSync(join(ROOT, LEAF)).subarray(0, 5000));
    writeFileSync(file('notes.stl'), 'what is to be bought: screws, filament\n');
    writeFileSync(file('job.stl'), JOB);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('prints one JSON document for several files, in their order, and nothing else', () => {
    const { code, out, err } = run([LEAF, file('cut.stl'), TWO, file('absent.stl'), '--line-width', '0.56']);
    const document = JSON.parse(out);
    expect(document).toMatchObject({
      format: 'bendbook-inspection',
      version: 1,
      units: { length: 'mm', area: 'mm²', volume: 'mm³', angle: '°' },
      print: { line_width_mm: 0.56, layer_height_mm: 0.2, nozzle_mm: 0.4, notes: [] },
      files: [
        { file: LEAF, format: 'STL, binary', suggested_scale: 1.3333, flexures: [{ lines_across: 1.5 }] },
        { file: TWO, format: '3MF', unit: { read_as: 'millimetre', by: 'stated' }, flexures: [{}, {}, {}] },
      ],
      problems: [
        { file: file('cut.stl'), code: 'file-damaged' },
        { file: file('absent.stl'), code: 'unreadable' },
      ],
    });
    expect([code, err]).toEqual([1, '']);
  });

  it('reads standard input, in the unit that it is told, and ends with 0', () => {
    const inches = readFileSync(join(ROOT, INCHES));
    const { code, out, err } = run(['-', '--unit', 'inch', '--line-width', '0.42'], inches);
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({
      files: [
        {
          file: '-',
          unit: { read_as: 'inch', by: 'told', or_else: [] },
          flexures: [{ lines_across: 2, lands: 'whole' }],
        },
      ],
      problems: [],
    });
  });

  it('refuses what is no part and says what it is, and ends with 1', () => {
    const { code, out, err } = run([file('notes.stl')]);
    expect([code, err]).toEqual([1, '']);
    expect(JSON.parse(out)).toMatchObject({ files: [], problems: [{ file: file('notes.stl'), code: 'not-our-file' }] });
  });

  it('takes toolpaths, whatever their name, from the disk and from standard input', () => {
    const told = {
      format: 'G-code',
      text: { lines: 3, moves: { g0: 0, g1: 2, g2: 0, g3: 0 }, lines_not_understood: 0 },
      figures: { printing_moves: 2, filament_mm: 2, layers: 1 },
      filament_diameter: { read_as_mm: 2.85, by: 'told' },
      flexures: [],
    };
    const fromDisk = run([file('job.stl'), LEAF, '--filament', '2.85']);
    expect([fromDisk.code, fromDisk.err]).toEqual([0, '']);
    expect(JSON.parse(fromDisk.out)).toMatchObject({ files: [told, { format: 'STL, binary' }], problems: [] });
    const piped = run(['-', '--filament', '2.85'], JOB);
    expect(JSON.parse(piped.out)).toMatchObject({ files: [{ file: '-', ...told }], problems: [] });
  });

  it('looks at no file where the lines cannot be printed, and ends with 1', () => {
    const { code, out, err } = run([LEAF, '--layer-height', '0.5']);
    expect([code, err]).toEqual([1, '']);
    const { files, problems } = JSON.parse(out);
    expect(files).toEqual([]);
    expect(problems.map((problem: { readonly code: string }) => problem.code)).toContain('layer-above-line-width');
  });

  it.each([[[]], [['--help']], [['--loud', LEAF]], [['--line-width', '0', LEAF]], [['--unit', 'ell', LEAF]]])(
    'says how it is used when given %j, and ends with 2',
    (args) => {
      const { code, out, err } = run(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain('npm run -s inspect -- part.stl');
    },
  );
});
