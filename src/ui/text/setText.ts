/** Words of “After one bend”: what stays, and what springs back. */
import type { Assessment } from '../../core/design/assessment.ts';
import { asRad, radians } from '../../core/units.ts';
import { setAmount } from './amountText.ts';
import { angle, length, type LengthUnit } from './numbers.ts';
import { figure, type Said } from './said.ts';

export const AFTER_BEND = 'After one bend';
export const AFTER_BEND_AID = 'let go at once';

/** From here on an angle that is only known roughly is told in whole degrees. */
const WHOLE_DEGREES = radians(3);

/** What stays, which is only known roughly: “2.4°”, “14°”, “0.3 mm”. */
export function leftText(amount: number, { measure }: Assessment['drive'], unit: LengthUnit): string {
  if (measure === 'turn') return angle(asRad(amount), amount < WHOLE_DEGREES ? 1 : 0);
  return length(amount, unit, unit === 'mm' ? 2 : 3);
}

/** Less than this share of the movement is told as nothing. */
const NOTHING = 0.001;

export function afterBendSaid(
  { set, drive, joint, filament, provenance }: Assessment,
  unit: LengthUnit,
): readonly Said[] {
  const say = (amount: number) => leftText(amount, drive, unit);
  const { amount: wanted } = joint.movement;
  if (set.high < NOTHING * wanted) {
    return [[`Nothing stays bent: even by the least yield stress of ${filament.name} it springs back all the way.`]];
  }
  const most = figure(say(set.high), provenance.effort, 'set');
  if (set.amount < NOTHING * wanted) {
    return [[`By usual figures of ${filament.name} nothing stays bent; by the worst of them up to `, most, ' do.']];
  }
  return [
    [
      'About ',
      figure(say(set.amount), provenance.effort, 'set'),
      `, between ${say(set.low)} and ${say(set.high)}, stay bent at once; plastics creep back further.`,
    ],
    [`It springs back ${say(wanted - set.amount)} of the ${setAmount(wanted, drive.measure, unit)}.`],
  ];
}

export const SET_HOW =
  'The skin is taken to flow at its yield stress and to spring back by its modulus; most plastics keep less. Being held leaves more.';

/** Named on the rule of what stays. */
export const SET_RULE = { rest: 'as printed', stays: 'stays' } as const;
