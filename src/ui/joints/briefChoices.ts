/** The choices of a brief: what may be chosen, and the joint that each makes. */
import { leastOf, WAYS, type Joint, type Ways } from '../../core/design/joint.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import { findDrive } from '../../core/flexures/drives.ts';
import { everyFilament } from '../../core/material/shelf.ts';
import { FIT_RULES, type FitRule, type Lying, type PrintProfile } from '../../core/print/profile.ts';
import { effortText, setAmount } from '../text/amountText.ts';
import {
  backAsFar,
  fitRuleText,
  HELD,
  STAYS,
  waysText,
  WISH,
  WISH_SAID,
  type BriefChoice,
  type NamedSize,
} from '../text/briefText.ts';
import { kindText, lyingText } from '../text/kindText.ts';
import { inHundred, setLength, unitAfter, type LengthUnit } from '../text/numbers.ts';
import { assessOnce } from './assessOnce.ts';
import { goingIn, movedBy } from '../../core/design/swing.ts';

interface Option {
  readonly value: string;
  readonly text: string;
  /** As it is said of a change, where that is more than what stands in the sentence. */
  readonly said?: string;
}

export interface BriefOptions {
  /** Path as problems name it. */
  readonly path: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly with: (value: string) => Joint;
}

/** What a choice is made of. */
export interface ChoiceOf {
  readonly joint: Joint;
  readonly family: FlexureFamily;
  readonly unit: LengthUnit;
}

const CHANCES = [0.5, 0.8, 0.9, 0.95, 0.99];

function withProfile(joint: Joint, change: Partial<PrintProfile>): Joint {
  return { ...joint, profile: { ...joint.profile, ...change } };
}

function withMovement(joint: Joint, change: Partial<Joint['movement']>): Joint {
  return { ...joint, movement: { ...joint.movement, ...change } };
}

function fitRuleOptions({ joint, family, unit }: ChoiceOf): readonly Option[] {
  const figure = (value: number) => `${setLength(value, unit)}${unitAfter(unit)}`;
  return FIT_RULES.map((value) => {
    const { count, thickness } = family.section(joint.sizes, { ...joint.profile, fitRule: value });
    const measured = joint.measuredThickness !== undefined;
    const product = `${count} × ${setLength(joint.profile.lineWidth, unit)}`;
    return { value, text: fitRuleText(value, product, measured ? undefined : figure(thickness)) };
  });
}

/** Moved in another way: as far as before where that is the same measure and possible, else as far as is usual. */
function withDrive({ joint, family }: ChoiceOf, id: string): Joint {
  const drive = findDrive(family, id);
  if (!drive) return joint;
  const { effortAtMost: _torqueOrForce, least: _end, also: _others, ...movement } = joint.movement;
  if (findDrive(family, movement.drive)?.measure !== drive.measure) {
    // An effort that was a torque says nothing of a force, nor an angle of a travel.
    return { ...joint, movement: { ...movement, drive: id, amount: drive.typical } };
  }
  const amount = Math.min(drive.max, Math.max(drive.min, joint.movement.amount));
  return withMovement(joint, { ...movedBy(joint.movement, amount, drive.step), drive: id });
}

function waysOptions({ joint, family, unit }: ChoiceOf): BriefOptions {
  const back = setAmount(leastOf(joint.movement), findDrive(family, joint.movement.drive)?.measure ?? 'turn', unit);
  return {
    path: 'movement.ways',
    value: joint.movement.ways,
    options: WAYS.map((value) => ({
      value,
      text: waysText(value, family.snaps),
      ...(value === 'between' ? { said: backAsFar(back) } : {}),
    })),
    with: (value) => ({ ...joint, movement: goingIn(joint.movement, value as Ways) }),
  };
}

/** A first wish for the effort: what it takes now, rounded up to two figures. */
function firstWish(joint: Joint): number {
  const assessed = assessOnce(joint);
  const now = assessed.ok ? Math.abs(assessed.value.effort.effort) : 10;
  const unit = 10 ** (Math.floor(Math.log10(Math.max(now, 0.1))) - 1);
  return Number((Math.ceil(now / unit) * unit).toPrecision(2));
}

function effortOptions({ joint, family }: ChoiceOf): BriefOptions {
  const { effortAtMost, ...movement } = joint.movement;
  const most = effortAtMost ?? firstWish(joint);
  const measure = findDrive(family, movement.drive)?.measure ?? 'turn';
  const words = kindText(family.id).wish ?? WISH;
  return {
    path: 'movement.effortAtMost',
    value: effortAtMost === undefined ? 'any' : 'most',
    options: [
      { value: 'any', text: words.any, said: WISH_SAID.any },
      { value: 'most', text: words.most, said: WISH_SAID.most(effortText(most, measure)) },
    ],
    with: (value) => ({ ...joint, movement: value === 'any' ? movement : { ...movement, effortAtMost: most } }),
  };
}

/** A size that is chosen in words. */
function sizeOptions(name: NamedSize, { joint, family }: ChoiceOf): BriefOptions {
  const size = name.slice('sizes.'.length);
  const words = kindText(family.id).choices?.[size] ?? {};
  return {
    path: name,
    value: String(joint.sizes[size]),
    options: Object.entries(words).map(([value, text]) => ({ value, text })),
    with: (value) => ({ ...joint, sizes: { ...joint.sizes, [size]: Number(value) } }),
  };
}

const CHOICES: Readonly<Record<Exclude<BriefChoice, NamedSize>, (of: ChoiceOf) => BriefOptions>> = {
  drive: (of) => ({
    path: 'movement.drive',
    value: of.joint.movement.drive,
    options: of.family.drives.map(({ id }) => ({ value: id, text: kindText(of.family.id).drives[id] ?? id })),
    with: (value) => withDrive(of, value),
  }),
  ways: waysOptions,
  filament: ({ joint }) => ({
    path: 'profile.filament',
    value: joint.profile.filament,
    // The moulded row is there to compare with; it is offered only where it stands already.
    options: everyFilament()
      .filter(({ id, printable }) => printable || id === joint.profile.filament)
      .map(({ id, name }) => ({ value: id, text: name })),
    with: (value) => withProfile(joint, { filament: value }),
  }),
  lying: ({ joint, family }) => ({
    path: 'profile.lying',
    value: joint.profile.lying,
    options: family.lyings.map((value) => ({ value, text: lyingText(family.id, value) })),
    with: (value) => withProfile(joint, { lying: value as Lying }),
  }),
  held: ({ joint }) => ({
    path: 'movement.held',
    value: joint.movement.held ? 'held' : 'released',
    options: [
      { value: 'released', text: HELD.released },
      { value: 'held', text: HELD.held },
    ],
    with: (value) => withMovement(joint, { held: value === 'held' }),
  }),
  stays: ({ joint }) => ({
    path: 'movement.stays',
    value: joint.movement.stays === undefined ? 'either' : joint.movement.stays ? 'stays' : 'back',
    options: (['stays', 'back', 'either'] as const).map((value) => ({ value, text: STAYS[value] })),
    with: (value) => {
      const { stays: _wish, ...movement } = joint.movement;
      return { ...joint, movement: value === 'either' ? movement : { ...movement, stays: value === 'stays' } };
    },
  }),
  effort: effortOptions,
  chance: ({ joint }) => ({
    path: 'movement.chance',
    value: String(joint.movement.chance),
    options: [...new Set([...CHANCES, joint.movement.chance])]
      .toSorted((a, b) => a - b)
      .map((chance) => ({ value: String(chance), text: `${inHundred(chance)} in 100` })),
    with: (value) => withMovement(joint, { chance: Number(value) }),
  }),
  fitRule: (of) => ({
    path: 'profile.fitRule',
    value: of.joint.profile.fitRule,
    options: fitRuleOptions(of),
    with: (value) => withProfile(of.joint, { fitRule: value as FitRule }),
  }),
};

const isNamed = (name: BriefChoice): name is NamedSize => name.startsWith('sizes.');

export function briefOptions(name: BriefChoice, of: ChoiceOf): BriefOptions {
  return isNamed(name) ? sizeOptions(name, of) : CHOICES[name](of);
}
