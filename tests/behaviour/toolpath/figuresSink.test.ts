/** Figures of whole toolpaths: layers, spirals, more heights than are told apart. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close.ts';
import { readGcode } from '../../support/readGcode.ts';

/** A wall that climbs all along: so many turns of a circle cut into corners. */
function spiral(turns: number, pitch: number, corners: number, radius: number): string {
  const lines = ['M83', `G0 X${radius} Y0 Z0.2`];
  for (let i = 1; i <= turns * corners; i += 1) {
    const angle = (2 * Math.PI * i) / corners;
    const [x, y, z] = [radius * Math.cos(angle), radius * Math.sin(angle), 0.2 + (pitch * i) / corners];
    lines.push(`G1 X${x.toFixed(5)} Y${y.toFixed(5)} Z${z.toFixed(5)} E0.01`);
  }
  return `${lines.join('\n')}\n`;
}

/** Two layers, from there on. */
const part = (x: number) => `G0 Z0.2\nG0 X${x}\nG1 X${x + 5} E1\nG0 Z0.4\nG1 X${x} E1\n`;

describe('layers', () => {
  it('are the heights at which something is laid, whatever the nozzle does between', () => {
    const text = 'M83\nG1 Z0.3\nG1 X10 E1\nG0 Z5\nG0 X0 Y5\nG0 Z0.3\nG1 X10 E1\nG0 Z0.5\nG1 X0 E1\nG0 Z9\n';
    const { figures } = readGcode(text);
    expect(figures.layers.map(({ z, pieces, length, laid }) => [z, pieces, length, laid])).toEqual([
      [0.3, 2, 20, 2],
      [0.5, 1, 10, 1],
    ]);
    expectClose(figures.layers[0]!.height, 0.3, { rel: 1e-12, because: 'round-off' });
    expectClose(figures.layers[1]!.height, 0.2, { rel: 1e-12, because: 'round-off' });
    expect(figures.box).toEqual({ min: { x: 0, y: 0, z: 0.3 }, max: { x: 10, y: 5, z: 0.5 } });
    expect(figures.layers[1]).toMatchObject({ least: { x: 0, y: 5 }, greatest: { x: 10, y: 5 } });
  });

  it('of parts printed one after the other are joined by height', () => {
    const { figures } = readGcode(`M83\n${part(0)}G0 Z9\n${part(50)}`);
    expect(figures.layers.map(({ z, pieces }) => [z, pieces])).toEqual([
      [0.2, 2],
      [0.4, 2],
    ]);
  });

  it('are none where filament only wells up, or the nozzle only rises', () => {
    const { figures } = readGcode('M83\nG1 E5\nG1 Z5 E1\n');
    expect(figures).toMatchObject({ heights: 0, layers: [], printingMoves: 1, filament: 6 });
    expect(figures.box).toBeUndefined();
  });
});

describe('a spiral', () => {
  it('is told turn by turn', () => {
    const { figures } = readGcode(spiral(50, 0.3, 90, 20));
    expectClose(figures.pitch!, 0.3, { rel: 0.02, because: 'where it comes round is told to half a piece, of ninety' });
    expect(Math.abs(figures.layers.length - 50)).toBeLessThanOrEqual(1);
    expect([figures.heights, figures.isCut]).toEqual([4500, false]);
    const chord = 2 * 20 * Math.sin(Math.PI / 90);
    expectClose(figures.printingLength, 4500 * Math.hypot(chord, 0.3 / 90), { rel: 1e-6, because: 'five decimals' });
  });

  it('of more heights than are told apart loses nothing but how finely they are', () => {
    const { figures } = readGcode(spiral(1000, 0.25, 144, 15));
    expect(figures.isCut).toBe(true);
    expect(figures.heights).toBeLessThanOrEqual(100_000);
    expectClose(figures.pitch!, 0.25, { rel: 0.01, because: 'where it comes round is told to half a piece' });
    expectClose(figures.box!.min.z, 0.2 + 0.25 / 144, { printedTo: 5 });
    expectClose(figures.box!.max.z, 250.2, { printedTo: 5 });
    const ofTurns = figures.layers.reduce((sum, { length }) => sum + length, 0);
    expectClose(ofTurns, figures.printingLength, { rel: 1e-9, because: 'round-off of some hundred thousand sums' });
    expect(figures.layers.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(144_000);
  });

  it('is none where only little rises', () => {
    const { figures } = readGcode('M83\nG1 X10 E1\nG1 X20 Z0.2 E1\nG1 X0 E3\n');
    expect([figures.pitch, figures.heights]).toEqual([undefined, 2]);
  });

  it('is none where each layer begins with a ramp that comes by the one before', () => {
    const layers = Array.from({ length: 20 }, (_, i) => {
      const [low, z] = [(0.2 * i).toFixed(1), (0.2 * (i + 1)).toFixed(1)];
      const ramp = `G1 X5 Z${(0.2 * i + 0.1).toFixed(1)} E0.1\nG1 X10 Z${z} E0.1\n`;
      return `G0 X0 Y0 Z${low}\n${ramp}G1 Y10 E0.1\nG1 X0 E0.1\nG1 Y0 E0.1\n`;
    });
    const { figures } = readGcode(`M83\n${layers.join('')}`);
    // A quarter of the way rises.
    expect(figures.pitch).toBeUndefined();
    expect(figures.layers.length).toBe(figures.heights);
  });
});
