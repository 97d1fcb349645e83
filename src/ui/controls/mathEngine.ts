/**
 * Works out sums with units. The parsing is mathjs's; its evaluator is never run on what a user typed. The parse
 * tree is walked here instead, and only numbers, + − × ÷ ^, signs, brackets and units come through.
 */
import { create, parseDependencies } from 'mathjs/number';
import { EXAMPLES, type QuantityKind, type Token } from './quantityText.ts';

// The types of this entry say that a list may be undefined; it is a plain export.
const { parse } = create(parseDependencies ?? {});

/** Deeper than any sum that a person writes. */
const DEEPEST = 40;
const LARGEST_EXPONENT = 12;

/** A number with the power of its unit: 0 for a bare number, 1 for a length, 2 for an area. */
interface Measure {
  readonly size: number;
  readonly power: number;
}
/** A measure, or what is wrong, to be said after the name of the field. */
type Worked = Measure | string;

/** The fields of mathjs's nodes that are read here; anything else is refused by its `type`. */
interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly implicit?: boolean;
  readonly args?: readonly Node[];
  readonly content?: Node;
}

interface Walk {
  readonly units: ReadonlyMap<string, number>;
  readonly bare: number;
  readonly unreadable: string;
}

function isUnit(node: Node | undefined, walk: Walk): boolean {
  return node?.type === 'SymbolNode' && walk.units.has(node.name ?? '');
}

function walkNode(node: Node, walk: Walk, depth: number): Worked {
  if (depth > DEEPEST) return 'cannot be read: too many brackets or signs inside each other';
  if (node.type === 'ConstantNode' && typeof node.value === 'number') return { size: node.value, power: 0 };
  if (node.type === 'ParenthesisNode' && node.content) return walkNode(node.content, walk, depth + 1);
  if (isUnit(node, walk)) return { size: walk.units.get(node.name ?? '') ?? Number.NaN, power: 1 };
  if (node.type === 'OperatorNode') return walkOperator(node, walk, depth);
  return walk.unreadable;
}

function walkOperator(node: Node, walk: Walk, depth: number): Worked {
  const [left, right] = node.args ?? [];
  if (left === undefined) return walk.unreadable;
  // `2 mm 3` and `2(3)` are read by mathjs as products; only a number before its unit is one here.
  if (
    node.implicit &&
    (!isUnit(right, walk) || !['ConstantNode', 'ParenthesisNode', 'OperatorNode'].includes(left.type))
  ) {
    return 'cannot be read: two values side by side; put a sign such as + or * between them';
  }
  const a = walkNode(left, walk, depth + 1);
  if (typeof a === 'string') return a;
  if (right === undefined) return applySign(node.op, a, walk);
  const b = walkNode(right, walk, depth + 1);
  return typeof b === 'string' ? b : combine(node.op ?? '', a, b, walk);
}

function applySign(op: string | undefined, a: Measure, walk: Walk): Worked {
  if (op === '-') return { size: -a.size, power: a.power };
  return op === '+' ? a : walk.unreadable;
}

function combine(op: string, a: Measure, b: Measure, walk: Walk): Worked {
  switch (op) {
    case '*':
      return { size: a.size * b.size, power: a.power + b.power };
    case '/':
      if (b.size === 0) return 'cannot be divided by nothing';
      return { size: a.size / b.size, power: a.power - b.power };
    case '+':
      return add(a, b, 1, walk);
    case '-':
      return add(a, b, -1, walk);
    case '^':
      return raise(a, b);
    default:
      return walk.unreadable;
  }
}

/** A bare number beside one with a unit is in the chosen unit. */
function add(a: Measure, b: Measure, sign: 1 | -1, walk: Walk): Worked {
  if (a.power === b.power) return { size: a.size + sign * b.size, power: a.power };
  const [left, right] = [inChosen(a, walk), inChosen(b, walk)];
  if (left.power !== right.power) return 'cannot add values of different units';
  return { size: left.size + sign * right.size, power: left.power };
}

function inChosen(a: Measure, walk: Walk): Measure {
  return a.power === 0 ? { size: a.size * walk.bare, power: 1 } : a;
}

function raise(a: Measure, b: Measure): Worked {
  if (b.power !== 0) return 'cannot be raised to a power that has a unit';
  if (!(Math.abs(b.size) <= LARGEST_EXPONENT)) return `cannot be raised to a power over ${LARGEST_EXPONENT}`;
  if (a.power !== 0 && !Number.isInteger(b.size)) return 'cannot be raised to a broken power with its unit';
  return { size: a.size ** b.size, power: a.power * b.size };
}

/** `1 3/8` is one and three eighths: a whole number, then a fraction below one. */
function isMixed(tokens: readonly Token[], at: number): boolean {
  const [whole, top, sign, bottom] = tokens.slice(at, at + 4);
  if (whole?.is !== 'number' || top?.is !== 'number' || bottom?.is !== 'number') return false;
  if (sign?.is !== 'sign' || sign.sign !== '/') return false;
  return [whole, top, bottom].every((token) => Number.isInteger(token.value)) && top.value < bottom.value;
}

/** The tokens as text for the parser; `in` is written `inch`, because mathjs has `in` as an operator. */
function asExpression(tokens: readonly Token[]): string {
  const words: string[] = [];
  let closeAfter = -1;
  for (const [at, token] of tokens.entries()) {
    if (isMixed(tokens, at)) {
      words.push('(');
      closeAfter = at + 3;
    }
    words.push(token.is === 'number' ? String(token.value) : token.is === 'sign' ? token.sign : symbolOf(token.name));
    if (closeAfter === at + 3) words.push('+');
    if (closeAfter === at) words.push(')');
  }
  return words.join(' ');
}

function symbolOf(unit: string): string {
  return unit === 'in' ? 'inch' : unit;
}

function parseSafely(expression: string): Node | undefined {
  try {
    return parse(expression);
  } catch {
    return undefined;
  }
}

/** What a square of a unit would be a square of. */
const A_MEASURE: Readonly<Record<QuantityKind, string>> = {
  length: 'a length',
  angle: 'an angle',
  count: 'a count',
  number: 'a number',
  scale: 'a scale',
  share: 'a share',
  force: 'a force',
  torque: 'a torque',
};

/**
 * The value of a sum, in mm, rad or as a plain number; or what is wrong with it.
 * `bare` is what a number without a unit is worth.
 */
export function workOut(tokens: readonly Token[], bare: number, kind: QuantityKind): number | string {
  const unreadable = `cannot be read as a sum; write one such as ${EXAMPLES[kind]}`;
  const node = parseSafely(asExpression(tokens));
  if (node === undefined) return unreadable;
  const units = new Map(tokens.flatMap((token) => (token.is === 'unit' ? [[symbolOf(token.name), token.factor]] : [])));
  const worked = walkNode(node, { units, bare, unreadable }, 0);
  if (typeof worked === 'string') return worked;
  if (worked.power === 0) return worked.size * bare;
  if (worked.power === 1) return worked.size;
  const what = A_MEASURE[kind];
  return `comes out as ${worked.power === 2 ? 'a square' : 'a power'} of ${what}, not as ${what}; write ${EXAMPLES[kind]}`;
}
