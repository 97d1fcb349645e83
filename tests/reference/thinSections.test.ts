/**
 * The finder against parts whose thin sections are known: the parts were made by a script of our own in another language, which
 * wrote down what it made (`tests/files/mesh/parts/truth.json`).
 */
import { describe, expect, it } from 'vitest';
import { checkPart, mendPart } from '../../src/core/inspect/checkPart.ts';
import { MM_IN } from '../../src/core/inspect/lengthUnit.ts';
import type { CheckedPart } from '../../src/core/inspect/checkedPart.ts';
import { scaleMesh } from '../../src/core/geometry/mesh/scaleMesh.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { ownPart } from '../support/corpus.ts';
import { placed, placedMesh, type Placing } from '../support/solids.ts';
import { expectFound, kindKnownAs, knownParts, type KnownNeck } from '../support/thinTruth.ts';

const THICKEST = 3.4;
const PARTS = knownParts();

function readPart(name: string) {
  const read = readMesh(ownPart(name.replace(/^.*\//, '')), name);
  if (!read.ok) throw new Error(read.problems[0].message);
  return read.value;
}

function check(name: string): CheckedPart {
  return checkPart(mendPart(readPart(name)), THICKEST);
}

describe('thin sections of known parts', () => {
  it('are of eighteen parts, of which two have none', () => {
    expect(PARTS.length).toBe(18);
    expect(PARTS.filter(([, { necks }]) => necks.length === 0).length).toBe(2);
  });

  it.each(PARTS)('%s: all found, none invented', (name, { necks, file_unit: unit }) => {
    const part = check(name);
    expect(part.unit.unit).toBe(unit === 'inch' ? 'inch' : 'millimetre');
    expectFound(part.findings.flexures, necks, name);
    expect(part.findings.isCut).toBe(false);
  });

  it.each(PARTS)('%s: kinds and pads', (name, { necks }) => {
    const { flexures } = check(name).findings;
    expect(flexures.map(({ kind }) => kind).toSorted()).toEqual(necks.map(kindKnownAs).toSorted());
    for (const { isCurved, kind } of flexures) if (kind === 'arch') expect(isCurved).toBe(true);
    // What hangs on one way only is cut off by it; where leaves cross or run side by side, other ways stay.
    const alone = necks.length === 1 && !name.includes('arch');
    if (alone) expect(flexures[0]!.isInLoop).toBe(false);
    if (name.includes('gripper') || name.includes('parallel')) {
      expect(flexures.every(({ isInLoop }) => isInLoop)).toBe(true);
    }
  });
});

/** Turned and moved so that no wall lies along an axis. */
const PLACINGS: readonly Placing[] = [
  { axis: [1, 2, 3], angle: 1.1, shift: [12.3, -45.6, 78.9] },
  { axis: [-2, 1, 0.5], angle: 2.7, shift: [-500, 300, 20] },
  { axis: [0.3, -0.7, 0.2], angle: 4.2, shift: [0.001, 0, 1000] },
];

function placedNeck(neck: KnownNeck, placing: Placing): KnownNeck {
  return {
    ...neck,
    centre_mm: placed(neck.centre_mm, placing),
    flex_direction: placed(neck.flex_direction, placing, true),
    thickness_direction: placed(neck.thickness_direction, placing, true),
    width_direction: placed(neck.width_direction, placing, true),
  };
}

describe.each(PLACINGS)('turned by $angle about $axis', (placing) => {
  it.each(PARTS)('%s', (name, { necks }) => {
    const source = readPart(name);
    const unit = mendPart(source).unit.unit;
    const mesh = placedMesh(scaleMesh(source.mesh, MM_IN[unit]), placing);
    const part = checkPart(mendPart({ ...source, mesh }, 'millimetre'), THICKEST);
    expectFound(
      part.findings.flexures,
      necks.map((neck) => placedNeck(neck, placing)),
      name,
    );
  });
});

describe.each(['inch', 'metre', 'centimetre'] as const)('drawn in %s and told so', (unit) => {
  it.each(PARTS)('%s', (name, { necks }) => {
    const source = readPart(name);
    const mm = scaleMesh(source.mesh, MM_IN[mendPart(source).unit.unit]);
    const mesh = scaleMesh(mm, 1 / MM_IN[unit]);
    expectFound(checkPart(mendPart({ ...source, mesh }, unit), THICKEST).findings.flexures, necks, name);
  });
});
