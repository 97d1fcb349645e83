/** Laws of joints of every family as the solver answers them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import type { Solved, SolvedPoint } from '../../src/core/design/solved.ts';
import { bendingModulus } from '../../src/core/material/choose.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { expectClose } from '../support/close.ts';
import { DRIVEN, jointOf, KINDS, solvedOf } from '../support/families.ts';
import { changed } from '../support/joints.ts';
import type { Kind } from '../support/networks.ts';

/** As far as is asked for, without what is beyond. */
const WAY = { beyond: false, parts: 12 } as const;
const PANELS = { cells: 4, rows: 6 };
/** Panels are as long as they are wide: a few cells or rows obey the same laws. */
const small = ({ family }: Kind) =>
  Object.fromEntries(Object.entries(PANELS).filter(([name]) => name in family.parameters));

const endOf = ({ forward }: Solved): SolvedPoint => forward.points.at(-1)!;
const felt = (point: SolvedPoint) => Math.max(point.peakWithin, point.peakAtEnds);

/** A joint with all its lengths so many times as large, its lines and layers with them. */
function scaled({ family }: Kind, joint: Joint, k: number): Joint {
  const drive = family.drives.find(({ id }) => id === joint.movement.drive);
  const sizes = Object.entries(joint.sizes).map(
    ([name, value]) => [name, family.parameters[name]?.kind === 'length' ? value * k : value] as const,
  );
  const { nozzle, lineWidth, layerHeight, firstLayerHeight } = joint.profile;
  return changed(joint, {
    sizes: Object.fromEntries(sizes),
    movement: { amount: joint.movement.amount * (drive?.measure === 'travel' ? k : 1) },
    profile: {
      nozzle: nozzle * k,
      lineWidth: lineWidth * k,
      layerHeight: layerHeight * k,
      firstLayerHeight: firstLayerHeight * k,
    },
  });
}

const SAME = {
  rel: 1e-5,
  because: 'the solver aims at 1e-6 of the largest effort and place, and ends of paths are near it',
};

/** What stands on the spring leaf of a toggle is 1 mm wider than the leaf with its fillets, at any scale. */
const BESIDE = { rel: 3e-3, because: 'a millimetre of the end pad stays a millimetre' };

describe.each(DRIVEN)('$id', ({ kind, drive }) => {
  const { family } = kind;
  const joint = jointOf(kind, drive, small(kind), smallAmount());

  /** Panels are asked for as much less as they have fewer cells. */
  function smallAmount(): number {
    return family.id.endsWith('Panel') ? drive.typical / 4 : drive.typical;
  }

  it('k times as large strains the same, with k³ times the moment or k² times the force', () => {
    for (const k of [0.75, 1.6]) {
      const [one, large] = [solvedOf(joint, WAY), solvedOf(scaled(kind, joint, k), WAY)];
      const same = family.id === 'toggle' ? BESIDE : SAME;
      expectClose(large.strain.nominal, one.strain.nominal, same);
      const times = drive.measure === 'turn' ? k ** 3 : k ** 2;
      expectClose(large.effort.effort, times * one.effort.effort, same);
      expectClose(endOf(large.solved).energy, k ** 3 * endOf(one.solved).energy, same);
    }
  });

  it('in another filament strains nearly the same and pushes back with its modulus', () => {
    const one = solvedOf(joint, WAY);
    for (const filament of FILAMENTS.filter(({ printable }) => printable).slice(-2)) {
      const other = solvedOf(changed(joint, { profile: { filament: filament.id } }), WAY);
      // Poisson's ratio moves shear and the width ratio, both by a few per cent at most.
      const poisson = { rel: 0.05, because: 'shear and width depend on Poisson’s ratio, 0.34 to 0.49' };
      expectClose(other.strain.nominal, one.strain.nominal, poisson);
      const twists = family.id === 'slitPanel';
      // Strips that twist know nothing of the factor on bending, but all of the shear modulus.
      const per = (a: typeof one) => endOf(a.solved).effort / (twists ? 1 : a.solved.widthRatio);
      const shear = twists ? { ...poisson, rel: 0.11 } : poisson;
      expectClose(per(other), per(one), shear);
      expectClose(
        other.effort.modulus / one.effort.modulus,
        bendingModulus(filament, false).typical / bendingModulus(one.filament, false).typical,
        { rel: 1e-12, because: 'round-off' },
      );
    }
  });

  const many = family.roles.sideBySide;
  it.runIf(many !== undefined && many !== 'arms')(
    'so many side by side push so many times as hard, strained alike',
    () => {
      const [one, five] = [1, 5].map((count) => solvedOf(changed(joint, { sizes: { [many ?? '']: count } }), WAY));
      expectClose(five!.effort.effort, 5 * one!.effort.effort, { rel: 1e-9, because: 'round-off' });
      expect(five!.strain.nominal).toBe(one!.strain.nominal);
    },
  );

  it('stores the work that its effort does on the way, whatever it passes', () => {
    const { solved } = solvedOf(joint, { beyond: false, parts: 100 });
    const { points } = solved.forward;
    const least = points[0]!.energy;
    const work = points.slice(1).reduce((sum, point, i) => {
      const before = points[i]!;
      return sum + ((before.effort + point.effort) / 2) * (point.amount - before.amount);
    }, 0);
    const stored = endOf(solved).energy - least;
    const most = Math.max(...points.map(({ energy }) => energy));
    // What leans aside gives some of its energy away where the imperfection of its path is.
    expectClose(work, stored, { abs: 2e-3 * most, because: 'trapezia between 100 points, and entering a second path' });
  });

  it('is answered at points that follow each other to the wanted amount, where a hand form or the solver said', () => {
    const { solved, strain } = solvedOf(joint, WAY);
    const { points } = solved.forward;
    expect(points[0]?.amount).toBe(0);
    // What rounding leaves of nothing.
    expect(points[0]?.energy).toBeLessThan(1e-20);
    expect(Math.abs(points[0]?.effort ?? NaN)).toBeLessThan(1e-12);
    expectClose(endOf(solved).amount, joint.movement.amount, { rel: 1e-9, because: 'round-off' });
    points.slice(1).forEach((point, i) => expect(point.amount).toBeGreaterThan(points[i]!.amount));
    // At rest the largest force is itself round-off.
    expect(Math.max(...points.slice(1).map(({ residual }) => residual))).toBeLessThan(1e-6);
    expect(strain.nominal).toBeGreaterThanOrEqual(Math.max(...points.map(felt)) * (1 - 1e-9));
  });
});

/** Kinds that are their own mirror image in the way in which they move, so that ± is the same. */
const EVEN = [
  'straightLeaf turned',
  'straightLeaf pushed',
  'straightLeaf centred',
  'crease turned',
  'neck turned',
  'neck centred',
  'crossedLeaves turned',
  'crossedLeaves centred',
  'parallelLeaves shifted',
  'parallelLeaves guided',
  'parallelLeaves held',
  'foldedLeaf turned',
  'cellPanel wrapped',
  'slitPanel wrapped',
];

describe('both ways', () => {
  it.each(DRIVEN.filter(({ id }) => EVEN.includes(id)))('$id: is the same there and back', ({ kind, drive }) => {
    const amount = kind.family.id.endsWith('Panel') ? drive.typical / 4 : drive.typical;
    const joint = changed(jointOf(kind, drive, small(kind), amount), { movement: { ways: 'both ways' } });
    const { solved } = solvedOf(joint, WAY);
    const [there, back] = [solved.forward, solved.back];
    expect(back?.points.length).toBe(there.points.length);
    const largest = Math.max(...there.points.map(({ effort }) => Math.abs(effort)));
    there.points.forEach((point, i) => {
      const other = back!.points[i]!;
      expectClose(other.amount, -point.amount, { abs: 1e-9, because: 'round-off' });
      expectClose(other.effort, -point.effort, { abs: 1e-5 * largest, because: 'aim of the solver' });
      expectClose(felt(other), felt(point), { abs: 1e-5 * felt(endOf(solved)) + 1e-12, because: 'aim of the solver' });
    });
  });
});

describe('strain rises with lines and falls with length', () => {
  /** Movements of an amount, of kinds where a longer flexure bends less for it. */
  const MONOTONE = [
    'straightLeaf pushed',
    'straightLeaf centred',
    'crossedLeaves turned',
    'parallelLeaves guided',
    'parallelLeaves shifted',
    'parallelLeaves held',
    'foldedLeaf pulled',
    'neck centred',
    'spiral centred',
  ];
  it.each(DRIVEN.filter(({ id }) => MONOTONE.includes(id)))('$id', ({ kind, drive }) => {
    const { count, length } = kind.family.roles;
    const strainAt = (change: Record<string, number>) =>
      solvedOf(jointOf(kind, drive, change, drive.typical / 2), WAY).strain.nominal;
    const lengths = [1, 1.2, 1.5].map((k) => strainAt({ [length]: k * kind.family.parameters[length]!.typical }));
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    const counts = [1, 2, 3].map((lines) => strainAt({ [count]: lines }));
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(new Set([...lengths, ...counts]).size).toBeGreaterThanOrEqual(5);
  });
});

/** Every number in an answer, apart from shapes. */
function figuresOf(joint: Joint): readonly number[] {
  const answered = assess(joint, bySolver({ beyond: false, parts: 6 }));
  if (!answered.ok) {
    for (const { message } of answered.problems) expect(message).not.toMatch(/NaN|undefined|\.$/);
    return answered.problems.flatMap(({ limit }) => (typeof limit === 'number' ? [limit] : []));
  }
  const { strain, effort, solved } = answered.value;
  const paths = solved ? [solved.forward, ...(solved.back ? [solved.back] : [])] : [];
  const ofPath = paths.flatMap(({ points, events }) => [
    ...points.flatMap((p) => [p.amount, p.effort, p.energy, p.peakWithin, p.peakAtEnds, p.residual, p.gap?.gap ?? 0]),
    ...events.flatMap((event) => [event.amount, event.effort, event.energy]),
  ]);
  return [strain.nominal, strain.peak, effort.effort, effort.stiffness, ...ofPath];
}

/** Any two sizes at either of their limits, and the least or a usual amount. */
function hostile({ family }: Kind): fc.Arbitrary<Record<string, number>> {
  const ends = Object.entries(family.parameters).flatMap(([name, { min, max }]) => [{ [name]: min }, { [name]: max }]);
  return fc.tuple(fc.constantFrom(...ends), fc.constantFrom(...ends)).map(([a, b]) => ({ ...a, ...b }));
}

describe('sizes at the limits of what may be asked for', () => {
  it.each(KINDS.map((kind) => ({ id: kind.family.id, kind })))(
    '$id: are refused or answered, in finite numbers',
    ({ kind }) => {
      const { family } = kind;
      const asked = fc.record({
        sizes: hostile(kind),
        drive: fc.constantFrom(...family.drives),
        amount: fc.constantFrom('min', 'typical'),
        ways: fc.constantFrom('one way', 'both ways'),
      } as const);
      fc.assert(
        fc.property(asked, ({ sizes, drive, amount, ways }) => {
          const joint = changed(jointOf(kind, drive, sizes, drive[amount]), { movement: { ways } });
          expect(figuresOf(joint).filter((figure) => !Number.isFinite(figure))).toEqual([]);
        }),
        { numRuns: 8, endOnFailure: true },
      );
    },
    120_000,
  );
});
