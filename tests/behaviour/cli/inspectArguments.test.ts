import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INSPECT_USAGE, readInspectArguments } from '../../../src/cli/inspectArguments.ts';
import { LENGTH_UNITS } from '../../../src/core/inspect/lengthUnit.ts';

const USUAL = { lineWidth: 0.42, layerHeight: 0.2, nozzle: 0.4, unit: undefined, thickest: 6 * 0.42 };

describe('arguments of inspect', () => {
  it('name files, the rest as is usual', () => {
    expect(readInspectArguments(['a.stl'])).toEqual({ ...USUAL, files: ['a.stl'] });
    expect(readInspectArguments(['a.stl', '-', 'b.3mf'])).toEqual({ ...USUAL, files: ['a.stl', '-', 'b.3mf'] });
    expect(readInspectArguments(['--', '--odd.stl'])).toMatchObject({ files: ['--odd.stl'] });
  });

  it('set lines, layers and nozzle, and what is thin follows the line', () => {
    const given = ['--line-width', '0.56', 'a.stl', '--layer-height=0.25', '--nozzle', '0.6'];
    expect(readInspectArguments(given)).toEqual({
      ...USUAL,
      files: ['a.stl'],
      lineWidth: 0.56,
      layerHeight: 0.25,
      nozzle: 0.6,
      thickest: 6 * 0.56,
    });
    expect(readInspectArguments(['a.stl', '--line-width', '0.56', '--thickest', '2'])).toMatchObject({
      lineWidth: 0.56,
      thickest: 2,
    });
  });

  it.each(LENGTH_UNITS)('take %s for the unit of the file', (unit) => {
    expect(readInspectArguments(['a.stl', '--unit', unit])).toEqual({ ...USUAL, files: ['a.stl'], unit });
  });

  const LENGTHS = ['--line-width', '--layer-height', '--nozzle', '--thickest'];
  const BAD = ['0', '0.0', '-1', '1e2', '0x10', '.4', '4.', '0,4', '', ' 3', '3 ', 'NaN', 'Infinity', '1000', '٣'];
  it.each([
    [[]],
    [['']],
    [['a.stl', '']],
    [['--help']],
    [['-h']],
    [['--loud', 'a.stl']],
    [['--line-width', '0.4']],
    [['a.stl', '--line-width']],
    [['a.stl', '--line-width', '0.4', '--line-width', '0.5']],
    [['a.stl', '--unit', 'inch', '--unit=inch']],
    ...['mm', 'inches', 'Inch', '', 'constructor', 'toString'].map((unit) => [['a.stl', `--unit=${unit}`]]),
    ...LENGTHS.flatMap((option) => BAD.map((value) => [[`${option}=${value}`, 'a.stl']])),
    [['--__proto__', 'a.stl']],
  ])('%j are wrong use', (given) => {
    expect(readInspectArguments(given)).toBeUndefined();
  });

  it('of any kind are understood or wrong use, and never throw', () => {
    const said = [...LENGTHS, '--unit', '--', '-', '0.4', 'inch', 'a.stl', '--line-width=0.5', '--unit=foot'];
    const word = fc.oneof(fc.string(), fc.constantFrom(...said));
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), (given) => {
        const asked = readInspectArguments(given);
        if (!asked) return;
        expect(asked.files.length).toBeGreaterThan(0);
        for (const value of [asked.lineWidth, asked.layerHeight, asked.nozzle, asked.thickest]) {
          expect(value > 0 && Number.isFinite(value)).toBe(true);
        }
      }),
    );
  });

  it('are all told in the usage', () => {
    for (const option of [...LENGTHS, '--unit', ...LENGTH_UNITS]) expect(INSPECT_USAGE).toContain(option);
  });
});
