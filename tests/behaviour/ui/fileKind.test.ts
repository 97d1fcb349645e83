import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isGcodeName, isMeshName, saysGcode, saysMesh } from '../../../src/ui/app/fileKind.ts';
import { sampleToolpath } from '../../../src/ui/toolpath/sampleToolpath.ts';

const text = (...lines: readonly string[]) => new Blob([lines.join('\n')]);

describe('what a file is', () => {
  it('is told by the ending of its name', () => {
    for (const name of ['a.gcode', 'A.GCO', 'clip.g', 'mill.nc', 'mill.ngc']) expect(isGcodeName(name)).toBe(true);
    for (const name of ['a.stl', 'a.json', 'gcode', 'a.ngcx']) expect(isGcodeName(name)).toBe(false);
    expect(isMeshName('a.3mf')).toBe(true);
  });

  it('is told by its first lines, however they are written', async () => {
    await expect(saysGcode(new Blob([sampleToolpath()]))).resolves.toBe(true);
    await expect(
      saysGcode(text('; remarks', '', 'G21', 'g1x1y2e.1', 'X2 Y3', 'N12 M104 S200*3', '(words) ')),
    ).resolves.toBe(true);
  });

  it('is no toolpath where most lines say something else', async () => {
    await expect(saysGcode(text('Gather', 'G1 X1', 'the', 'M3 screws', 'and', 'begin'))).resolves.toBe(false);
    await expect(saysGcode(text('{"version":3}'))).resolves.toBe(false);
    await expect(saysGcode(text('v 0 0 1', 'v 0 1 1', 'f 1 2 3'))).resolves.toBe(false);
    await expect(saysGcode(new Blob(['G1 X1\nG1 X2\0']))).resolves.toBe(false);
  });

  it('is a mesh where it is one', async () => {
    const stl = new Blob([readFileSync('tests/files/mesh/parts/syn-leaf-084x6.stl')]);
    await expect(saysMesh(stl)).resolves.toBe(true);
    await expect(saysGcode(stl)).resolves.toBe(false);
    await expect(saysMesh(text('G1 X1', 'G1 X2'))).resolves.toBe(false);
  });
});
