import { bench, describe } from 'vitest';
import { peakStrainFor } from '../../src/core/design/curves.ts';
import { assess } from '../../src/core/design/assess.ts';
import { waysOut } from '../../src/core/design/waysOut.ts';
import { radians } from '../../src/core/units.ts';
import { readPart } from '../../src/files/partFile.ts';
import { writePart } from '../../src/files/partText.ts';
import { assessed, changed, CREASE, LEAF } from '../support/joints.ts';

const severe = changed(LEAF, {
  sizes: { length: 2 },
  movement: { amount: radians(40) },
  profile: { filament: 'pla' },
});
const leaf = assessed(LEAF);
const severeNow = assessed(severe);
const part = { name: 'Bench', invented: true, joints: [LEAF, CREASE, severe] };
const text = writePart(part);

describe('what happens on each change', () => {
  bench('assess a leaf', () => void assess(LEAF));
  bench('assess a crease', () => void assess(CREASE));
  bench('one point of the length curve', () => void peakStrainFor(leaf, { length: 15, count: 4 }));
  bench('ways out, single changes', () => void waysOut(leaf));
  bench('ways out, pairs of changes', () => void waysOut(severeNow));
});

describe('files', () => {
  bench('write and read a part of three joints', () => void readPart(writePart(part)));
  bench('read a part of three joints', () => void readPart(text));
});
