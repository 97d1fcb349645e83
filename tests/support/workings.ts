/** The working of an assessed joint, worked out with units. */
import type { Assessment } from '../../src/core/design/assessment.ts';
import { workingOf } from '../../src/core/working/workingOf.ts';
import { stepWords, symbolWords } from '../../src/ui/text/working/workingWords.ts';
import { workOutSteps, type WorkedStep } from '../../src/ui/lesson/working/mathBench.ts';

/** Round-off of a chain of some thirty formulas; any slip in one of them is far larger. */
const ROUND_OFF = 1e-9;
/** Roots are found to about this share. */
const OF_A_ROOT = 1e-6;

export function workedOut(assessment: Assessment): readonly WorkedStep[] {
  return workOutSteps(workingOf(assessment).sections.flatMap(({ steps }) => steps));
}

/** What is wrong with a working: units that do not agree, figures that differ from the core's, symbols that change. */
export function faultsOf(worked: readonly WorkedStep[]): readonly string[] {
  return [...worked.flatMap(faultOf), ...changedSymbols(worked)];
}

function faultOf({ step, outcome }: WorkedStep): readonly string[] {
  if (outcome.how === 'failed') return [`${step.id} (${step.symbol}): ${outcome.why}`];
  const most = step.kind === 'balance' ? OF_A_ROOT : ROUND_OFF;
  const { off = 0 } = outcome;
  // Chances and shares end at 0, where a share of the difference says nothing.
  const isNone = Math.abs(outcome.value) < 1e-12;
  return off > most && !isNone
    ? [`${step.id} (${step.symbol}): ${outcome.value} differs by ${off} of the core's figure`]
    : [];
}

/** A symbol stands for one quantity throughout a working. */
function changedSymbols(worked: readonly WorkedStep[]): readonly string[] {
  const values = new Map<string, number>();
  const faults: string[] = [];
  for (const { step, outcome } of worked) {
    for (const { symbol, value } of step.given) {
      const before = values.get(symbol);
      if (before !== undefined && before !== value) faults.push(`${step.id}: ${symbol} was ${before} and is ${value}`);
      values.set(symbol, value);
    }
    if (values.has(step.symbol)) faults.push(`${step.id}: ${step.symbol} is worked out twice`);
    if (outcome.how === 'worked') values.set(step.symbol, outcome.value);
  }
  return faults;
}

/** Steps and symbols of a working for which the page would have no words. */
export function wordlessOf(worked: readonly WorkedStep[], family: string): readonly string[] {
  const ids = worked.map(({ step }) => step.id).filter((id) => stepWords(family, id) === undefined);
  const symbols = worked.flatMap(({ step }) => [
    step.symbol,
    ...step.given.map(({ symbol }) => symbol),
    ...(step.kind === 'sum' ? [step.over.symbol] : []),
  ]);
  return [...new Set([...ids, ...symbols.filter((symbol) => symbolWords(family, symbol) === undefined)])];
}
