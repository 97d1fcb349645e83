import fc from 'fast-check';
import type { Bend, Tally, Tests } from '../../src/core/material/tally.ts';
import { LYINGS } from '../../src/core/print/profile.ts';
import { checkTests } from '../../src/core/tallies/checkTally.ts';
import { stiffnessOfSag } from '../../src/core/tallies/modulusOfSag.ts';
import { asRad } from '../../src/core/units.ts';
import { words } from '../../src/files/names.ts';

/** Of a desktop printer's test pieces: thicknesses, radii and lengths in mm. */
const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const angle = (min: number, max: number) => figure(min, max).map(asRad);

/** One line that any list can show, of any script. */
const line = fc.string({ unit: 'binary', maxLength: 60 }).map(words);

const lying = fc.constantFrom(...LYINGS);
const thickness = figure(0.1, 5);
const radius = figure(0.5, 60);

const bend: fc.Arbitrary<Bend> = fc.oneof(
  fc.record({ way: fc.constant('over' as const), radius }),
  fc.record({ way: fc.constant('to' as const), turn: angle(0.1, 6), length: figure(5, 80) }),
);

const flexes = fc.record({
  kind: fc.constant('flexes' as const),
  bend,
  thickness,
  lying,
  ways: fc.constantFrom('one way' as const, 'both ways' as const),
  cycles: fc.integer({ min: 1, max: 1e9 }),
  ended: fc.constantFrom('broke' as const, 'whole' as const),
});

const ladder = fc
  .record({
    kind: fc.constant('thickness' as const),
    countOf: fc.constantFrom('lines' as const, 'layers' as const),
    count: fc.integer({ min: 1, max: 200 }),
    set: figure(0.1, 20),
    share: figure(0.6, 1.8),
  })
  .map(({ share, ...kept }) => ({ ...kept, measured: share * kept.set }));

const mark = fc.record({
  kind: fc.constant('mark' as const),
  radius,
  thickness,
  lying,
  looks: fc.constantFrom('unmarked' as const, 'whitened' as const, 'cracked' as const),
});

/** The weight that makes a stiffness of some plastic of the other figures. */
const sag = fc
  .record({
    kind: fc.constant('sag' as const),
    lying,
    stiffness: figure(20, 15_000),
    share: figure(0.05, 0.85),
    length: figure(20, 150),
    thickness: figure(0.4, 3),
    depth: figure(3, 20),
  })
  .map(({ stiffness, share, ...kept }) => {
    const hung = { ...kept, sag: share * kept.length };
    return { ...hung, force: stiffness / stiffnessOfSag({ ...hung, force: 1 }) };
  })
  .filter(({ force }) => force > 0.001 && force < 1000);

const hold = fc
  .record({
    kind: fc.constant('hold' as const),
    radius,
    thickness,
    hours: figure(0.1, 1000),
    held: angle(0.1, 6),
    share: figure(0, 1),
  })
  .map(({ share, ...kept }) => ({ ...kept, left: asRad(share * kept.held) }));

const pull = fc.record(
  {
    kind: fc.constant('pull' as const),
    direction: fc.constantFrom('along lines' as const, 'across layers' as const),
    strength: figure(0.5, 200),
    modulus: figure(2, 15_000),
  },
  { requiredKeys: ['kind', 'direction', 'strength'] },
);

const two = (value: number) => String(value).padStart(2, '0');
const day = fc
  .tuple(fc.integer({ min: 1980, max: 2200 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map(([year, month, date]) => `${year}-${two(month)}-${two(date)}`);

const common = fc.record({ date: day, seen: line, leftOut: fc.boolean() });

/** Any tally that something can be learned from. */
export const anyTally: fc.Arbitrary<Tally> = fc
  .tuple(fc.oneof(flexes, ladder, mark, sag, hold, pull), common, fc.stringMatching(/^t-[a-z0-9]{1,12}$/))
  .map(([kind, { leftOut, ...said }, id]) => ({ ...kind, ...said, id, ...(leftOut ? { leftOut } : {}) }));

/** What tests have been written down on a row. */
export const anyTests: fc.Arbitrary<Tests> = fc
  .record({
    printer: line,
    spool: line,
    like: fc.constantFrom('petg', 'pla', 'own-petg'),
    tallies: fc.uniqueArray(anyTally, { selector: ({ id }) => id, maxLength: 8 }),
  })
  .filter((tests) => checkTests(tests).length === 0);
