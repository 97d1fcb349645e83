import type { Step } from '../../../core/working/step.ts';
import { Scrolled } from '../../tests/pages/Scrolled.tsx';
import { inHundred, percent } from '../../text/numbers.ts';
import { PLACES } from '../../text/working/figures.ts';
import { withNumbers, withSymbols } from './formulaMarkup.ts';
import type { Outcome, Scope } from './mathBench.ts';
import { element, quantityMarkup, row, sign, symbolMarkup, type Markup } from './mathMarkup.ts';
import { Maths } from './Maths.ts';

interface Props {
  readonly step: Step;
  readonly scope: Scope;
  readonly outcome: Outcome;
  /** What it gives, in words. */
  readonly label: string;
}

/** A sum runs over one quantity: its sign with that symbol under it. */
function sumOf(step: Step, inside: Markup): Markup {
  if (step.kind !== 'sum') return inside;
  return row(element('munder', sign('∑'), symbolMarkup(step.over.symbol)), inside);
}

/** Strains and shares of a movement are spoken of in per cent, chances in hundreds. */
function spoken({ symbol, unit }: Step, value: number): string | undefined {
  if (unit !== '') return undefined;
  if (/^[εψ]/.test(symbol)) return percent(value);
  return symbol === 'P' ? `${inHundred(value)} in 100` : undefined;
}

function Result({ step, value }: { readonly step: Step; readonly value: number }) {
  const also = spoken(step, value);
  return (
    <p className="result">
      <Maths of={row(symbolMarkup(step.symbol), sign('='), quantityMarkup(value, step.unit, PLACES.result))} />
      {also !== undefined && <span className="spoken">{also}</span>}
    </p>
  );
}

/** A formula with its symbols, with the numbers put in, and what comes out. */
export function StepFormula({ step, scope, outcome, label }: Props) {
  const result = outcome.how === 'worked' && <Result step={step} value={outcome.value} />;
  if (step.kind === 'balance') {
    const found = new Map(scope).set(step.symbol, { value: step.figure, unit: step.unit, isWorked: true });
    const both = (set: (expression: string) => Markup) => row(set(step.left), sign('='), set(step.right));
    return (
      <Scrolled className="formulas" label={label}>
        <Maths isBlock of={both(withSymbols)} />
        {result}
        <Maths isBlock of={both((expression) => withNumbers(expression, found))} />
      </Scrolled>
    );
  }
  const equals = (set: (expression: string) => Markup) =>
    row(symbolMarkup(step.symbol), sign('='), sumOf(step, set(step.expression)));
  return (
    <Scrolled className="formulas" label={label}>
      <Maths isBlock of={equals(withSymbols)} />
      {isWorthPuttingIn(step) && <Maths isBlock of={equals((expression) => withNumbers(expression, scope))} />}
      {result}
    </Scrolled>
  );
}

/** A bare symbol or number with its value put in is the result already. */
function isWorthPuttingIn({ expression }: Exclude<Step, { kind: 'balance' }>): boolean {
  return /[-+*/^(]/.test(expression);
}
