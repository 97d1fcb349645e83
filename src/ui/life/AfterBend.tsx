import type { Assessment } from '../../core/design/assessment.ts';
import { SaidText } from '../joints/SaidText.tsx';
import { setAmount } from '../text/amountText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { AFTER_BEND, AFTER_BEND_AID, afterBendSaid, SET_HOW, SET_RULE } from '../text/setText.ts';

/** What stays after one bend to the wanted amount, between what it lies, and what springs back. */
export function AfterBend({ assessment: a, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  return (
    <>
      <h3 className="h">
        {AFTER_BEND}
        <span className="aside">{AFTER_BEND_AID}</span>
      </h3>
      {afterBendSaid(a, unit).map((said, at) => (
        <p key={at} className="says-so">
          <SaidText said={said} />
        </p>
      ))}
      <SetRule a={a} unit={unit} />
      <p className="small">{SET_HOW}</p>
    </>
  );
}

/** The whole movement as a rule: the place where it comes to rest, with its low and high. */
function SetRule({ a: { set, joint, drive }, unit }: { readonly a: Assessment; readonly unit: LengthUnit }) {
  const { amount: wanted } = joint.movement;
  const place = (amount: number) => `${(100 * Math.min(amount, wanted)) / wanted}%`;
  const width = `${(100 * (Math.min(set.high, wanted) - set.low)) / wanted}%`;
  return (
    <div className="set-rule" aria-hidden="true">
      <span className="rule">
        <s style={{ left: place(set.low), width }} />
        {[0, 0.25, 0.5, 0.75, 1].map((share) => (
          <i key={share} style={{ left: `${100 * share}%` }} />
        ))}
        <b style={{ left: place(set.amount) }} />
      </span>
      <span className="span">
        <span>{SET_RULE.rest}</span>
        <span>{setAmount(wanted, drive.measure, unit)}</span>
      </span>
    </div>
  );
}
