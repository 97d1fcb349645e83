/** One quantity of a working by its symbol, as the computer algebra gives it. */
import { assess } from '../../src/core/design/assess.ts';
import { findDrive } from '../../src/core/flexures/drives.ts';
import { familyOf } from '../../src/core/flexures/known.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { workedOut } from './workings.ts';

interface Moved {
  readonly drive: string;
  readonly amount: number;
  readonly thickness: number;
}

/** The quantities of the working of a joint of a kind, by symbol, as the algebra gives them. */
export function workedOf(kind: string, sizes: Readonly<Record<string, number>>, { drive, amount, thickness }: Moved) {
  const family = familyOf({ family: kind });
  const usual = newJoint(family, kind, undefined, findDrive(family, drive));
  const result = assess({
    ...usual,
    sizes: { ...usual.sizes, ...sizes },
    movement: { ...usual.movement, amount },
    measuredThickness: thickness,
  });
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  const worked = workedOut(result.value);
  return (symbol: string): number => {
    const step = worked.findLast((one) => one.step.symbol === symbol);
    const put = worked.flatMap((one) => one.step.given).find((one) => one.symbol === symbol);
    if (step?.outcome.how === 'worked') return step.outcome.value;
    if (!put) throw new Error(`the working of ${kind} has no ${symbol}`);
    return put.value;
  };
}
