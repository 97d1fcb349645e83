import { describe, expect, it } from 'vitest';
import { checkSizes, isRefusal } from '../../../src/core/flexures/checkSizes.ts';
import type { Sizes } from '../../../src/core/flexures/family.ts';
import { roomBetweenArms } from '../../../src/core/flexures/spiral.ts';
import type { PrintProfile } from '../../../src/core/print/profile.ts';
import { radians } from '../../../src/core/units.ts';
import { problemText } from '../../../src/ui/text/problemText.ts';
import { expectClose } from '../../support/close.ts';
import { typicalSizes } from '../../support/networks.ts';
import { springKind, SPRING_KINDS } from '../../support/springKinds.ts';

const BEAD = { lineWidth: 0.42, layerHeight: 0.2 };
const PROFILE: PrintProfile = {
  ...BEAD,
  nozzle: 0.4,
  firstLayerHeight: 0.2,
  lying: 'flat',
  fitRule: 'nominal',
  filament: 'petg',
};

function said(id: string, change: Sizes) {
  const { family } = springKind(id);
  const sizes = typicalSizes(family, change);
  return checkSizes(family, sizes, family.section(sizes, PROFILE).thickness, BEAD);
}

/** What is said, but for the frame, which is spoken of whatever the sizes. */
const codes = (id: string, change: Sizes) =>
  said(id, change).flatMap(({ code, field }) => (code === 'frame-must-be-stiff' ? [] : [`${code} ${field ?? ''}`]));

describe.each(SPRING_KINDS.map(({ family }) => ({ id: family.id, family })))('$id', ({ id, family }) => {
  it('refuses nothing at typical sizes, and has the roles that it names', () => {
    expect(codes(id, {})).toEqual([]);
    expect(said(id, {}).some(isRefusal)).toBe(false);
    expect(Object.keys(family.parameters)).toEqual(expect.arrayContaining(Object.values(family.roles)));
  });

  it('asks for typical movements and sizes within their own limits', () => {
    const all = [...family.drives, ...Object.values(family.parameters)];
    expect(all.filter(({ min, typical, max }) => !(min <= typical && typical <= max))).toEqual([]);
    const known = family.drives.map((drive) => drive.id);
    expect(family.handForms.filter(({ drive }) => !known.includes(drive))).toEqual([]);
  });

  it('has a hand form to show for every drive before the solver has answered', () => {
    const sizes = typicalSizes(family);
    const { thickness } = family.section(sizes, PROFILE);
    for (const drive of family.drives) {
      const first = family.handForms.find((form) => form.drive === drive.id);
      expect(first?.peakStrain?.(sizes, thickness, drive.typical)).toBeGreaterThan(0);
      expect(first?.effort?.(sizes, thickness, drive.min)).toBeGreaterThan(0);
    }
  });

  it('has words on screen for what is hostile about sizes at either limit', () => {
    for (const [name, { min, max }] of Object.entries(family.parameters)) {
      const problems = [...said(id, { [name]: min }), ...said(id, { [name]: max })];
      for (const problem of problems) expect(problemText(problem, 'mm')).not.toMatch(/undefined|NaN|“|Infinity/);
    }
  });
});

describe('a spiral', () => {
  it.each([
    { change: { turns: 2.2 }, says: [] },
    { change: { turns: 2.3 }, says: ['nearly-touch sizes.turns'] },
    { change: { turns: 3.5 }, says: ['no-room sizes.turns'] },
    { change: { arms: 6 }, says: ['nearly-touch sizes.turns'] },
    { change: { arms: 6, hub: 2 }, says: ['no-room sizes.hub'] },
    { change: { ring: 9 }, says: ['no-room sizes.ring'] },
    { change: { hub: 1.5 }, says: ['no-room sizes.hub'] },
    { change: { arms: 1, turns: 0.9, ring: 10 }, says: [] },
    { change: { fillet: 0 }, says: ['sharp-root sizes.fillet'] },
  ])('with $change: $says', ({ change, says }) => {
    expect(codes('spiral', change)).toEqual(says);
  });

  it('has the room of a worked example between its arms', () => {
    // Hub 6, ring 23, three arms of 1.25 turns and 0.84 mm: 1.29 mm across the arms, 1.43 along the radius.
    const room = roomBetweenArms({ lines: 2, arms: 3, hub: 6, ring: 23, turns: 1.25, depth: 6, fillet: 0.6 }, 0.84);
    expectClose(room, (8.5 / 3.75) * Math.cos(Math.atan(8.5 / (2.5 * Math.PI) / 3)) - 0.84, {
      rel: 1e-12,
      because: 'the same distance along the radius times the cosine of the slant; round-off',
    });
  });

  it('is cured by the turns that are advised', () => {
    const [problem] = said('spiral', { turns: 3.5 });
    expect(codes('spiral', { turns: Number(problem?.limit) - 1e-6 })).toEqual([]);
  });
});

describe('a snap arch', () => {
  it('speaks of its frame, which nothing here sizes', () => {
    expect(said('snapArch', {}).map(({ code }) => code)).toEqual(['frame-must-be-stiff']);
  });

  it.each([
    // 2.31 times 0.84 mm is 1.94 mm, 5.65 times it 4.74 mm: the thresholds of joined and of single arches.
    { change: { rise: 1.95 }, says: [] },
    { change: { rise: 1.93 }, says: ['no-second-rest sizes.rise'] },
    { change: { arches: 1, rise: 4.8 }, says: [] },
    { change: { arches: 1, rise: 4.7 }, says: ['no-second-rest sizes.rise'] },
    { change: { apart: 0.84 }, says: ['no-room sizes.apart'] },
    { change: { apart: 1.2, fillet: 0.1, block: 1 }, says: ['nearly-touch sizes.apart'] },
    { change: { apart: 2 }, says: ['roots-merge sizes.apart'] },
    { change: { block: 58 }, says: ['no-room sizes.span'] },
    { change: { block: 1 }, says: ['no-room sizes.block'] },
    { change: { block: 0 }, says: [] },
    { change: { rise: 40, span: 30 }, says: ['no-room sizes.rise'] },
    { change: { arches: 1, rise: 4.8, apart: 0.5 }, says: [] },
  ])('with $change: $says', ({ change, says }) => {
    expect(codes('snapArch', change)).toEqual(says);
  });

  it('that would not stay is cautioned, not refused, and told what would help', () => {
    const [problem] = said('snapArch', { arches: 1 });
    expect(problem && isRefusal(problem)).toBe(false);
    expect(problem?.message).toContain('join two by a block');
  });
});

describe('a toggle', () => {
  it.each([
    { change: { lines: 3 }, says: ['no-second-rest '] },
    { change: { springLines: 2 }, says: ['no-second-rest '] },
    { change: { link: 5 }, says: ['no-room sizes.link', 'no-room sizes.hinge'] },
    { change: { spring: 5 }, says: ['no-room sizes.spring'] },
    { change: { hinge: 0.5, pad: 10 }, says: ['no-room sizes.hinge'] },
    { change: { pad: 1.5 }, says: ['pad-thinner-than-leaf sizes.pad'] },
    { change: { incline: radians(2) }, says: ['below-minimum sizes.incline'] },
  ])('with $change: says at least $says', ({ change, says }) => {
    expect(codes('toggle', change)).toEqual(expect.arrayContaining(says.slice(0, 1)));
  });
});

describe('a cell panel', () => {
  it.each([
    { change: { cell: 6.9 }, says: ['no-room sizes.cell'] },
    { change: { cell: 7 }, says: [] },
    { change: { pad: 2.4 }, says: ['pad-thinner-than-leaf sizes.pad'] },
    { change: { leaf: 4 }, says: ['leaf-too-thick-for-length sizes.leaf'] },
    { change: { fillet: 0 }, says: ['sharp-root sizes.fillet'] },
  ])('with $change: $says', ({ change, says }) => {
    expect(codes('cellPanel', change)).toEqual(says);
  });
});

describe('a slit panel', () => {
  it.each([
    { change: { slit: 3.9 }, says: ['slits-must-overlap sizes.slit'] },
    { change: { slit: 15.1 }, says: ['strip-too-short sizes.slit'] },
    { change: { pitch: 1.6 }, says: ['no-room sizes.pitch'] },
    { change: { bridge: 0.8 }, says: ['no-room sizes.bridge'] },
    { change: { depth: 21 }, says: ['no-room sizes.depth'] },
    { change: { slitWidth: 0.3 }, says: ['nearly-touch sizes.slitWidth'] },
    { change: { slitWidth: 0.3, slit: 18.1 }, says: ['nearly-touch sizes.slitWidth', 'strip-too-short sizes.slit'] },
  ])('with $change: $says', ({ change, says }) => {
    expect(codes('slitPanel', change)).toEqual(says);
  });
});
