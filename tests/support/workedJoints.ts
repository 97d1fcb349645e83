/** Random joints for the working: any kind, moved in any way, printed and used in any way that is not refused. */
import fc from 'fast-check';
import { assess } from '../../src/core/design/assess.ts';
import type { Joint, Movement, Swing, Ways } from '../../src/core/design/joint.ts';
import type { Drive } from '../../src/core/flexures/family.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { withOnShelf } from '../../src/core/material/shelf.ts';
import { DRIVEN, jointOf, sizesNear } from './families.ts';
import { length } from './generators.ts';
import { measuredPetg } from './ownFilaments.ts';
import { faultsOf, wordlessOf, workedOut } from './workings.ts';

type Driven = (typeof DRIVEN)[number];

/** A row that a ladder of tests has corrected, beside those of the table. */
const TAUGHT = measuredPetg();
const FILAMENT_IDS: readonly string[] = [...FILAMENTS.map(({ id }) => id), TAUGHT.id];

/** Twentieths of what is whole. */
const share = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => n / 20);

/** Half of them about as far as is usual, the others anywhere in the range of the drive. */
function amountOf({ min, max, typical }: Drive): fc.Arbitrary<number> {
  const usual = share(5, 40).map((k) => Math.min(max, Math.max(min, typical * k)));
  const any = share(0, 20).map((k) => Number((min * (max / min) ** k).toPrecision(4)));
  return fc.oneof(usual, any);
}

/** A swing within the whole one: no farther to either side, and likewise from rest, to both sides or between. */
function within(ways: Ways, amount: number, back: number): fc.Arbitrary<Swing> {
  return fc.record({ part: share(1, 19), cycles: fc.constantFrom(10, 1000, 100_000) }).map(({ part, cycles }) => {
    if (ways !== 'between') return { amount: amount * part, ways, cycles };
    const least = amount * back;
    return { amount: least + (amount - least) * part, ways, least, cycles };
  });
}

function movementOf(drive: Drive): fc.Arbitrary<Movement> {
  return fc
    .record({
      amount: amountOf(drive),
      ways: fc.constantFrom<Ways>('one way', 'both ways', 'between'),
      back: share(-19, 19),
      cycles: fc.constantFrom(1, 200, 5000, 1_000_000),
      held: fc.boolean(),
      chance: share(10, 19),
      others: fc.integer({ min: 0, max: 2 }),
    })
    .chain(({ amount, ways, back, cycles, held, chance, others }) =>
      fc.array(within(ways, amount, back), { minLength: others, maxLength: others }).map((also) => ({
        drive: drive.id,
        amount,
        ways,
        cycles,
        held,
        chance,
        ...(ways === 'between' ? { least: amount * back } : {}),
        ...(also.length > 0 ? { also } : {}),
      })),
    );
}

/** A joint of a kind moved in one way; it may be refused. */
export function anyJoint({ kind, drive }: Driven): fc.Arbitrary<Joint> {
  const usual = jointOf(kind, drive);
  return fc
    .record({
      sizes: sizesNear(kind.family),
      movement: movementOf(drive),
      lying: fc.constantFrom(...kind.family.lyings),
      fitRule: fc.constantFrom('nominal' as const, 'overlapped' as const),
      filament: fc.constantFrom(...FILAMENT_IDS),
      measured: fc.option(length(0.1, 2), { nil: undefined, freq: 3 }),
    })
    .map(({ sizes, movement, lying, fitRule, filament, measured }) => ({
      ...usual,
      sizes,
      movement,
      profile: { ...usual.profile, lying, fitRule, filament },
      ...(measured === undefined ? {} : { measuredThickness: measured }),
    }));
}

/**
 * What is wrong with the working of a joint by its hand forms, and what it has no words for; undefined for a joint that
 * is refused.
 */
export function workingFaults(joint: Joint): readonly string[] | undefined {
  return withOnShelf([TAUGHT], () => {
    const result = assess(joint);
    if (!result.ok) return undefined;
    const worked = workedOut(result.value);
    return [...faultsOf(worked), ...wordlessOf(worked, joint.family)];
  });
}
