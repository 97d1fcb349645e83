import { describe, expect, it } from 'vitest';
import type { Damage } from '../../../src/core/geometry/mesh/damage.ts';
import { cures } from '../../../src/core/inspect/cures.ts';
import type { Flexure } from '../../../src/core/inspect/flexure.ts';
import { judgeAll } from '../../../src/core/inspect/judge.ts';
import { radians } from '../../../src/core/units.ts';
import { cureCosts, cureDoes, cureHeading, curesHeading } from '../../../src/ui/text/cureText.ts';
import {
  bendingFault,
  chanceCell,
  cornersText,
  damageText,
  flexureKindText,
  judgedHeading,
  judgedNotes,
  landingText,
  lyingText,
  numbersSaid,
  partHeading,
  passedOverText,
  sectionName,
  sizeText,
  unitChoice,
  unitDoubt,
  unitReadText,
} from '../../../src/ui/text/inspectText.ts';
import {
  archOf,
  AS_DROPPED,
  ASKED,
  BOX,
  creaseOf,
  curved,
  spiralRunOf,
  straight,
  THREE_LEAVES,
  THREE_LEAVES_BOX,
  THREE_LEAVES_FILE,
  X,
  Y,
  Z,
} from '../../support/flexures.ts';

/** Spaces that do not break, and thin ones, as plain spaces. */
const plainly = (said: string) => said.replaceAll(/[\u00A0\u2009]/g, ' ');
const judge = (flexure: Flexure, asked = ASKED, as = AS_DROPPED) => judgeAll([flexure], BOX, as, asked, 'part.stl')[0]!;
const DAMAGE: readonly Damage[] = [
  { kind: 'open-edges', count: 9, mended: 0, at: { x: 0, y: 0, z: 0 } },
  { kind: 'inside-out', count: 1, mended: 1, at: { x: 0, y: 0, z: 0 } },
  { kind: 'duplicate', count: 12, mended: 10, at: { x: 0, y: 0, z: 0 } },
];
const three = judgeAll(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, ASKED, THREE_LEAVES_FILE);

describe('the words of the three leaves of the look notes', () => {
  it('say how each lands', () => {
    expect(three.map(({ landing }) => landingText(landing, 'mm'))).toEqual([
      '0.75 lines: may not be laid at all',
      '1.50 lines: dropped or squeezed',
      '2.25 lines: 0.14 gap, or a squeezed line',
    ]);
  });

  it('join both judgements, and say a chance only if it is laid', () => {
    const heads = three.map(judgedHeading);
    expect(heads[0]).toMatch(/^Fail: may not be laid/);
    expect(heads[1]).toMatch(/^Fail: not whole; /);
    expect(chanceCell(three[0]!)).toMatch(/^if laid, \d+ in 100$/);
    expect(chanceCell(three[2]!)).toMatch(/^\d+ in 100$/);
    expect(partHeading(three)).toBe('Fail: none of three is laid whole');
  });

  it('say what each cure sets, does and costs', () => {
    const found = cures(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, ASKED, THREE_LEAVES_FILE);
    const said = found.map((cure) => plainly(cureHeading(cure, 'mm')));
    expect(said.slice(0, 2)).toEqual(['Set lines to 0.42 mm', 'Scale the part 1.333 times']);
    expect(said).toContain('Scale the part 2.667 times');
    const scale = found.find(({ as }) => as.scale === 1.333)!;
    expect(plainly(cureDoes(scale))).toBe('1, 2 and 3 lines across, whole, 2 of 3 odd; strain as it is.');
    expect(plainly(cureCosts(scale, THREE_LEAVES_BOX, 'mm'))).toBe(
      'Costs room (84 × 13 × 8 mm) and effort 2.4 times; screws, shafts and mating parts no longer fit.',
    );
    const stop = found.find(({ change }) => change.kind === 'turn')!;
    expect(plainly(cureHeading(stop, 'mm'))).toMatch(/^Stop the bending at \d+(\.\d)?°$/);
    expect(plainly(cureDoes(stop))).toMatch(
      /^Strain [\d.% ,and]+; \d+ in 100 or more of each reach 5 000, once lines are whole\.$/,
    );
    expect(plainly(cureCosts(stop, THREE_LEAVES_BOX, 'mm'))).toMatch(/^Costs [\d.]+° of movement\.$/);
    for (const cure of found) {
      const all = [cureHeading(cure, 'mm'), cureDoes(cure), cureCosts(cure, THREE_LEAVES_BOX, 'mm')].join(' ');
      expect(all).not.toMatch(/undefined|NaN|Infinity|\[object|; ;|\.\./);
    }
    expect(curesHeading(found, three)).toBe('Cures for the whole part');
  });
});

describe('the words of other sections', () => {
  it('say whole ones', () => {
    const said = [0.56, 1.12, 1.68].map((thickness) => landingText(judge(straight({ thickness })).landing, 'mm'));
    expect(said).toEqual([
      '1 line: whole; one line alone',
      '2 lines: whole and even',
      '3 lines: whole; middle line laid alone',
    ]);
  });

  it('say layers', () => {
    const said = [0.15, 0.2, 0.4, 0.45, 0.55].map((thickness) =>
      landingText(judge(creaseOf({ thickness })).landing, 'mm'),
    );
    expect(said).toEqual([
      '0.75 layers: may not be laid, or comes out as a whole layer',
      '1 layer: whole; one layer alone',
      '2 layers: whole',
      '2.25 layers: comes out as 2, thinner than drawn',
      '2.75 layers: comes out as 3, thicker than drawn',
    ]);
  });

  it('say what passes, and what is past the data, in one word', () => {
    expect(judgedHeading(judge(straight({ thickness: 1.12, length: 40 })))).toBe('Pass');
    const long = judge(straight({ thickness: 1.12, length: 150 }), { ...ASKED, cycles: 1e9 });
    expect(judgedHeading(long)).toBe('Beyond the data');
    expect(chanceCell(long)).toBe('past the data');
    expect(partHeading([judge(straight({ thickness: 1.12, length: 40 }))])).toBe('Pass: it is whole and lasts');
    expect(partHeading([])).toBe('Nothing thin found');
  });

  it('say that a section stays bent, and one that cannot be worked out', () => {
    const hard = judge(straight({ thickness: 1.12, length: 20 }), { ...ASKED, turn: radians(90), cycles: 1 });
    expect(judgedHeading(hard)).toBe(`Caution: ${bendingFault(hard)}`);
    expect(bendingFault(hard)).toContain('stays bent');
    const block = judge(straight({ thickness: 3, length: 1, fillet: 0 }));
    expect(judgedHeading(block)).toContain('cannot be worked out as it stands');
    expect(judgedNotes(block, 'mm').first[0]).toContain('thicker than long');
    expect(chanceCell(block)).toBe('');
  });

  it('say kinds, lyings, places and runs of numbers', () => {
    const kinds = [straight(), curved(80), archOf(), spiralRunOf()].map(flexureKindText);
    expect(kinds).toEqual(['leaf', 'curved leaf', 'arch', 'spiral run']);
    expect(lyingText(judge(straight()))).toBe('flat');
    const tilt = radians(12);
    const axis = { x: 0, y: -Math.sin(tilt), z: Math.cos(tilt) };
    const across = { x: 0, y: Math.cos(tilt), z: Math.sin(tilt) };
    expect(lyingText(judge(straight({ axis, across })))).toBe('flat, 12° aslant');
    expect(lyingText(judge(straight({ along: Z, across: X, axis: Y })))).toBe('upright');
    expect(numbersSaid([1, 2, 3, 4, 7, 9, 10])).toBe('1 to 4, 7, 9 and 10');
    expect([0, 25, 26].map(sectionName)).toEqual(['A', 'Z', '27']);
  });

  it('say what a joint that stands in does not tell', () => {
    const notes = judgedNotes(judge(archOf()), 'mm').first.join(' ');
    expect(notes).toContain('stands for the arch');
    expect(notes).not.toMatch(/undefined|NaN/);
  });
});

/** A section with these fillets at its two roots. */
const rooted = ([one, other]: readonly [number, number]) => {
  const { roots } = straight();
  return {
    roots: [
      { ...roots[0], fillet: one },
      { ...roots[1], fillet: other },
    ] as const,
  };
};

const corners = (...fillets: readonly [number, number]) => cornersText(rooted(fillets), 2, 'mm');

describe('the words of its corners', () => {
  it('say both ends, at the scale of the print', () => {
    expect(corners(0.3, 0.3)).toBe('R 0.60 fillets');
    expect(corners(0, 0.01)).toBe('sharp corners');
    expect(corners(0.5, 0)).toBe('R 1.00 fillets at one end, sharp at the other');
    expect(corners(0.5, 0.25)).toBe('R 0.50 fillets at one end, R 1.00 at the other');
  });
});

describe('the words of a file', () => {
  it('say damage and what was done about it', () => {
    expect(DAMAGE.map(damageText)).toEqual([
      '9 open edges: the surface has a hole there; not mended',
      '1 body: inside out as a whole; mended',
      '12 triangles: there more than once; 10 of them mended',
    ]);
  });

  it('say why something thin was passed over, and where', () => {
    const said = passedOverText({ why: 'free-end', thickness: 0.8, at: { x: 1, y: -2.25, z: 3 } }, 'mm');
    expect(plainly(said)).toBe('0.80 mm thick at x 1.0, y \u22122.2, z 3.0; one end is free: a fin or a rib');
  });

  it('say the unit, and ask where it is in doubt', () => {
    const read = { unit: 'millimetre', by: 'sized', orElse: ['inch', 'centimetre'] } as const;
    expect(unitReadText(read)).toContain('states no unit');
    expect(unitDoubt(read)).toBe('It may as well be in inches or centimetres.');
    expect(plainly(unitChoice('inch', read, THREE_LEAVES_BOX, 'mm'))).toBe('inches: 1 600 × 254 × 152 mm');
    expect(unitReadText({ unit: 'inch', by: 'told', orElse: [] })).toBe('Read in inches, as you say.');
    expect(unitDoubt({ unit: 'inch', by: 'told', orElse: [] })).toBe('');
    expect(plainly(sizeText(THREE_LEAVES_BOX, 'inch'))).toBe('2.48 × 0.39 × 0.24 in');
  });
});
