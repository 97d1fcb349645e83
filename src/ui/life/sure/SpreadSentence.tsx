import type { Assessment } from '../../../core/design/assessment.ts';
import { SPREAD_LIMITS, type PrinterSpread, type SpreadName } from '../../../core/print/spread.ts';
import { useSpread } from '../../../store/spread.ts';
import { Mark } from '../../app/Mark.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { settled, stepIn } from '../../controls/settle.ts';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { MM_PER_INCH, NO_BREAK, setLength, unitAfter, type LengthUnit } from '../../text/numbers.ts';
import { notWithin, SPREAD } from '../../text/sureText.ts';

type Choose = (change: { readonly spread: PrinterSpread }) => void;

function spreadSpec(name: SpreadName, spread: PrinterSpread, choose: Choose, unit: LengthUnit): ValueSpec {
  const isShare = name === 'lineWidth';
  const kind = isShare ? 'share' : 'length';
  const { min, max, step } = SPREAD_LIMITS[name];
  const say = (value: number) => (isShare ? String(Number((100 * value).toFixed(1))) : setLength(value, unit));
  const suffix = isShare ? `${NO_BREAK}%` : unitAfter(unit);
  const value = spread[name];
  return {
    key: name,
    label: SPREAD.labels[name],
    kind,
    unit,
    value,
    say,
    shownNumber: isShare ? 100 * value : unit === 'mm' ? value : value / MM_PER_INCH,
    figure: say(value),
    suffix,
    hint: SPREAD.hint,
    step: () => (isShare ? step : stepIn(unit, step)),
    min,
    max,
    take: (asked) => {
      const next = settled(asked, kind, unit);
      if (!(next >= min && next <= max)) return notWithin(name, `${say(min)}${suffix}`, `${say(max)}${suffix}`);
      choose({ spread: { ...spread, [name]: next } });
      return undefined;
    },
  };
}

/** What matters to this joint: a thickness that was measured rests on no printer. */
function namesFor({ joint, section }: Assessment): readonly SpreadName[] {
  if (joint.measuredThickness !== undefined) return ['lengths'];
  return [section.countOf === 'lines' ? 'lineWidth' : 'layers', 'lengths'];
}

/** How closely the printer keeps its sizes, in a sentence with live values; it holds for every joint. */
export function SpreadSentence({ assessment, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const { spread, choose } = useSpread();
  const names = namesFor(assessment);
  return (
    <Sentence className="use">
      {SPREAD.begins}
      {names.map((name, at) => (
        <span key={name}>
          {at > 0 && ' and '}
          {SPREAD.names[name]} within{' '}
          <span className="nw">
            ±{NO_BREAK}
            <ValueField spec={spreadSpec(name, spread, choose, unit)} />
            <Mark kind="memory" about="printer" />
          </span>
        </span>
      ))}
      {SPREAD.ends}
    </Sentence>
  );
}
