/** Two toolpaths that do the same. */
import { expect } from 'vitest';
import type { ToolpathFigures } from '../../src/core/inspect/toolpath/toolpathFigures.ts';
import { expectClose, type Allowance } from './close.ts';

const LENGTHS = [
  'printingLength',
  'travelLength',
  'filament',
  'filamentOnMoves',
  'feedForward',
  'feedNet',
] as const satisfies readonly (keyof ToolpathFigures)[];
const COUNTS = ['printingMoves', 'travelMoves', 'feedOnlyMoves', 'retractions'] as const;

const BECAUSE = 'numbers of twelve decimals, rounded once each, in sums of some thousands';

/** Lengths, filament, layers and box; counts of moves too, but where moves are split. */
export function expectSameFigures(one: ToolpathFigures, other: ToolpathFigures, isSplit = false): void {
  const room: Allowance = { abs: 1e-6, because: BECAUSE };
  if (!isSplit) for (const count of COUNTS) expect([count, one[count]]).toEqual([count, other[count]]);
  for (const length of LENGTHS) expectClose(one[length], other[length], room);
  expect(one.byTool.map(({ tool }) => tool)).toEqual(other.byTool.map(({ tool }) => tool));
  for (const [i, { filament }] of one.byTool.entries()) expectClose(filament, other.byTool[i]!.filament, room);
  expect(one.heights).toBe(other.heights);
  expect(one.layers.length).toBe(other.layers.length);
  for (const [i, layer] of one.layers.entries()) {
    const same = other.layers[i]!;
    for (const key of ['z', 'height', 'length', 'laid'] as const) expectClose(layer[key], same[key], room);
    if (!isSplit) expect(layer.pieces).toBe(same.pieces);
    for (const end of ['least', 'greatest'] as const) {
      expectClose(layer[end].x, same[end].x, room);
      expectClose(layer[end].y, same[end].y, room);
    }
  }
  for (const end of ['min', 'max'] as const) {
    for (const axis of ['x', 'y', 'z'] as const) {
      if (other.box) expectClose(one.box![end][axis], other.box[end][axis], room);
      else expect(one.box).toBeUndefined();
    }
  }
}
