/**
 * Works formulas out with units: numbers go in with theirs, and what comes out must have the unit that the step says, or
 * nothing comes out. Only the formulas of `core/working` are worked out here, never what a user typed.
 */
import {
  absDependencies,
  addDependencies,
  asinDependencies,
  asinhDependencies,
  atanDependencies,
  cosDependencies,
  coshDependencies,
  create,
  divideDependencies,
  erfDependencies,
  expDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sinDependencies,
  sinhDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  tanhDependencies,
  unaryMinusDependencies,
  unitDependencies,
  type FactoryFunctionMap,
  type MathNode,
  type Unit,
} from 'mathjs';
import type { Given, Step, WorkingUnit } from '../../../core/working/step.ts';

/** What the formulas use. The types of this entry say that each may be undefined; they are plain exports. */
const PARTS = {
  absDependencies,
  addDependencies,
  asinDependencies,
  asinhDependencies,
  atanDependencies,
  cosDependencies,
  coshDependencies,
  divideDependencies,
  erfDependencies,
  expDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sinDependencies,
  sinhDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  tanhDependencies,
  unaryMinusDependencies,
  unitDependencies,
};

const math = create(PARTS as Required<typeof PARTS> as FactoryFunctionMap);

/** A quantity as the algebra holds it: a plain number, or one with a unit. */
type Quantity = number | Unit;

/** One step worked out; `value` is in the step's unit. */
export type Outcome =
  | {
      readonly how: 'worked';
      readonly value: number;
      /** By how much the core's own figure differs, as a share; absent where the core gives none. */
      readonly off?: number;
      /** Of a balance: both sides, in whatever unit they share. */
      readonly sides?: { readonly left: number; readonly right: number };
    }
  /** The units do not agree, or something was not given. */
  | { readonly how: 'failed'; readonly why: string };

/** A quantity that is known, and whether a step gave it or it was put in. */
interface Held {
  readonly value: number;
  readonly unit: WorkingUnit;
  readonly isWorked: boolean;
}

/** Quantities by symbol. */
export type Scope = ReadonlyMap<string, Held>;

export interface WorkedStep {
  readonly step: Step;
  readonly outcome: Outcome;
  /** All that was known when it was worked out, its own inputs included. */
  readonly scope: Scope;
}

function withUnit(value: number, unit: WorkingUnit): Quantity {
  return unit === '' ? value : math.unit(value, unit);
}

/** The algebra reads “1/mm” as a quantity, and reads no other in it. */
const READ_IN: Partial<Record<WorkingUnit, string>> = {
  '1/mm': 'mm^-1',
  '1/mm^2': 'mm^-2',
  '1/mm^3': 'mm^-3',
  '1/(N mm)': 'N^-1 mm^-1',
};

/** The number of a result in its unit; throws where it is of another kind. */
function inUnit(result: unknown, unit: WorkingUnit): number {
  if (unit === '') {
    if (typeof result === 'number') return result;
    throw new TypeError(`a plain number was expected, not ${String(result)}`);
  }
  if (typeof result === 'number') throw new TypeError(`a quantity in ${unit} was expected, not the number ${result}`);
  return (result as Unit).toNumber(READ_IN[unit] ?? unit);
}

/** Formulas stand in the program, so that each is read once. */
const read = new Map<string, MathNode>();

export function parsed(expression: string): MathNode {
  const known = read.get(expression);
  if (known) return known;
  const node = math.parse(expression);
  read.set(expression, node);
  return node;
}

type Known = Map<string, Quantity>;

function evaluated(expression: string, known: Known): unknown {
  return parsed(expression).evaluate(known);
}

/** How far apart two figures are, as a share of the larger. */
function apart(a: number, b: number): number {
  return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

function summed(step: Extract<Step, { kind: 'sum' }>, known: Known): unknown {
  const { symbol, values, unit } = step.over;
  const terms = values.map((value) => evaluated(step.expression, new Map(known).set(symbol, withUnit(value, unit))));
  return terms.reduce((total, term) => math.add(total as Quantity, term as Quantity));
}

function outcomeOf(step: Step, known: Known): Outcome {
  try {
    if (step.kind === 'balance') {
      known.set(step.symbol, withUnit(step.figure, step.unit));
      return balanced(step, known);
    }
    const value = inUnit(step.kind === 'sum' ? summed(step, known) : evaluated(step.expression, known), step.unit);
    known.set(step.symbol, withUnit(value, step.unit));
    if (!Number.isFinite(value)) return { how: 'failed', why: `it comes out as ${value}` };
    return { how: 'worked', value, ...(step.figure === undefined ? {} : { off: apart(value, step.figure) }) };
  } catch (error) {
    return { how: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
}

/** Both sides must be alike in kind: the left one is read in the unit of the right one. */
function balanced(step: Extract<Step, { kind: 'balance' }>, known: Known): Outcome {
  const [left, right] = [evaluated(step.left, known), evaluated(step.right, known)];
  const quotient = math.divide(left as Quantity, right as Quantity);
  const ratio = inUnit(quotient, '');
  const size = typeof right === 'number' ? right : ((right as Unit).toNumeric((right as Unit).formatUnits()) as number);
  return { how: 'worked', value: step.figure, off: apart(ratio, 1), sides: { left: ratio * size, right: size } };
}

/** All steps one after the other, each on what those before it gave. */
export function workOutSteps(steps: readonly Step[]): readonly WorkedStep[] {
  const known: Known = new Map();
  const scope = new Map<string, Held>();
  const take = ({ symbol, value, unit }: Pick<Given, 'symbol' | 'value' | 'unit'>) => {
    known.set(symbol, withUnit(value, unit));
    scope.set(symbol, { value, unit, isWorked: false });
  };
  return steps.map((step) => {
    step.given.forEach(take);
    const before = new Map(scope);
    const outcome = outcomeOf(step, known);
    if (outcome.how === 'worked') scope.set(step.symbol, { value: outcome.value, unit: step.unit, isWorked: true });
    return { step, outcome, scope: before };
  });
}
