import type { Assessment } from '../../core/design/assessment.ts';
import { Mark } from '../app/Mark.tsx';
import { manyCycles } from '../text/countText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { swingText } from '../text/useText.ts';
import {
  CYCLES,
  FROM_REST,
  HOW_ANY_SWING,
  HOW_BOTH_WAYS,
  RULE_CAPTION,
  ruleLife,
  RULES_SAY,
  swingsAbout,
  USED_HERE,
} from '../text/wearText.ts';
import { decadesOf, ratioRulesOf, type RatioRules } from './ratioRules.ts';
import { swingOfWear } from './swings.ts';

/** How much the life depends on what the other end of a swing counts for: a dot a rule, on one axis of cycles. */
export function RatioFigure({ assessment: a, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const found = ratioRulesOf(a);
  if (!found) return <p className="small">{FROM_REST}</p>;
  const swing = swingOfWear(a.joint, found.at);
  return (
    <>
      <h3 className="h rules-head">
        <span>
          {found.wear.ratio < 0 ? HOW_BOTH_WAYS : HOW_ANY_SWING}
          <Mark kind={a.provenance.life} about="ratio" />
        </span>
        <span className="aside">{swingText(swing, a.drive.measure, unit)}</span>
      </h3>
      <RulesTable {...found} a={a} />
      <p className="small">
        {swingsAbout(found.lives.mean, found.lives.amplitude)} {RULES_SAY}
      </p>
    </>
  );
}

function RulesTable({ rules, a: { life } }: RatioRules & { readonly a: Assessment }) {
  const { maxReportableCycles: counted } = life;
  const [from, to] = decadesOf(rules, counted);
  const place = (power: number) => `${(100 * (power - from)) / (to - from)}%`;
  const between = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return (
    <>
      <table className="rules">
        <caption className="vh">{RULE_CAPTION}</caption>
        <tbody>
          {rules.map(({ name, median, used }) => (
            <tr key={name} className={used ? 'used' : undefined}>
              <th scope="row">
                {name}
                {used && `, ${USED_HERE}`}
              </th>
              <td className="on" aria-hidden="true">
                <span className="rule">
                  {between.map((power) => (
                    <i key={power} style={{ left: place(power) }} />
                  ))}
                  {median !== undefined && median >= 1 && median <= counted && (
                    <b style={{ left: place(Math.log10(median)) }} />
                  )}
                </span>
              </td>
              <td className="r">{ruleLife(median, life)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="rules-axis" aria-hidden="true">
        <span>{manyCycles(10 ** from)}</span>
        <span>{manyCycles(10 ** to)}</span>
        <span>{CYCLES}</span>
      </p>
    </>
  );
}
