/** A formula as it is read by the computer algebra, set as mathematics: with symbols, or with the numbers put in. */
import { parsed, type Scope } from './mathBench.ts';
import { bracketed, element, number, quantityMarkup, row, sign, symbolMarkup, type Markup } from './mathMarkup.ts';
import { MINUS } from '../../text/numbers.ts';
import { PLACES } from '../../text/working/figures.ts';

/** The fields of the algebra's nodes that are read here. */
interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly implicit?: boolean;
  readonly args?: readonly Node[];
  readonly content?: Node;
  readonly fn?: Node;
}

/** How a symbol is set, and what stands between factors. */
interface Setting {
  readonly symbol: (name: string) => Markup;
  /** Whether a symbol needs brackets where it is raised to a power, or stands behind a sign. */
  readonly isLong: (name: string, where: 'base' | 'factor') => boolean;
  readonly times: string;
}

const CONSTANTS: Readonly<Record<string, Markup>> = { pi: symbolMarkup('π') };

const SYMBOLS: Setting = { symbol: symbolMarkup, isLong: () => false, times: '·' };

/** With numbers: what is known stands for its symbol. */
function numbersOf(scope: Scope): Setting {
  return {
    symbol: (name) => {
      const known = scope.get(name);
      return known
        ? quantityMarkup(known.value, known.unit, known.isWorked ? PLACES.result : PLACES.given)
        : symbolMarkup(name);
    },
    isLong: (name, where) => {
      const known = scope.get(name);
      if (!known) return false;
      const isPlain =
        known.unit === '' && known.value >= 0 && known.value < 1e7 && (known.value >= 1e-3 || known.value === 0);
      return where === 'base' ? !isPlain : known.value < 0;
    },
    times: '×',
  };
}

/** Without brackets that the setting makes needless: over and under a line, and above it. */
function bare(node: Node | undefined): Node | undefined {
  return node?.type === 'ParenthesisNode' && node.content ? bare(node.content) : node;
}

function symbol(node: Node, setting: Setting, where?: 'base' | 'factor'): Markup {
  const name = node.name ?? '';
  const constant = CONSTANTS[name];
  if (constant !== undefined) return constant;
  const known = setting.symbol(name);
  return where !== undefined && setting.isLong(name, where) ? bracketed(known) : known;
}

function set(node: Node | undefined, setting: Setting, where?: 'base' | 'factor'): Markup {
  if (node === undefined) return null;
  switch (node.type) {
    case 'ConstantNode':
      return number(String(node.value).replace('-', MINUS));
    case 'SymbolNode':
      return symbol(node, setting, where);
    case 'ParenthesisNode':
      return bracketed(set(node.content, setting));
    case 'OperatorNode':
      return setOperator(node, setting);
    case 'FunctionNode':
      return setFunction(node, setting);
    default:
      throw new TypeError(`no setting for ${node.type}`);
  }
}

function setOperator(node: Node, setting: Setting): Markup {
  const [left, right] = node.args ?? [];
  if (right === undefined) return row(sign(MINUS), set(left, setting, 'factor'));
  switch (node.op) {
    case '/':
      return element('mfrac', row(set(bare(left), setting)), row(set(bare(right), setting)));
    case '^':
      return element('msup', row(set(left, setting, 'base')), row(set(bare(right), setting)));
    case '*':
      return setProduct(node, setting);
    case undefined:
    default:
      return row(set(left, setting), sign(node.op === '-' ? MINUS : '+'), set(right, setting, 'factor'));
  }
}

/** `180 deg` is one quantity. */
function setProduct({ args, implicit }: Node, setting: Setting): Markup {
  const [left, right] = args ?? [];
  if (implicit === true && right?.name === 'deg') return row(set(left, setting), sign('°'));
  const factor = (node: Node | undefined) => set(isFraction(bare(node)) ? bare(node) : node, setting, 'factor');
  return row(factor(left), sign(setting.times), factor(right));
}

/** A line between over and under holds a factor together as brackets do. */
function isFraction(node: Node | undefined): boolean {
  return node?.op === '/';
}

function isSingle(node: Node | undefined): boolean {
  return node?.type === 'SymbolNode' || node?.type === 'ConstantNode';
}

function setFunction(node: Node, setting: Setting): Markup {
  const name = node.fn?.name ?? node.name ?? '';
  const args = (node.args ?? []).map((argument) => set(bare(argument), setting));
  // The faces of the page have no radical that grows, which browsers then leave out: a plain sign and brackets.
  if (name === 'sqrt') return row(sign('√'), isSingle(node.args?.[0]) ? args[0] : bracketed(args[0]));
  if (name === 'abs') return row(sign('|'), ...args, sign('|'));
  const called =
    name === 'log10' ? element('msub', symbolMarkup('log'), number('10')) : symbolMarkup(NAMES[name] ?? name);
  const listed = args.flatMap((argument, at) => (at === 0 ? [argument] : [sign(';'), argument]));
  return row(called, bracketed(row(...listed)));
}

/** As they are written in a book. */
const NAMES: Readonly<Record<string, string>> = { atan: 'arctan', asin: 'arcsin', asinh: 'arsinh', log: 'ln' };

function asNode(expression: string): Node {
  // The types of the algebra tell each kind of node apart; only these fields are read.
  return parsed(expression);
}

/** A formula with its symbols. */
export function withSymbols(expression: string): Markup {
  return set(asNode(expression), SYMBOLS);
}

/** The same with the numbers put in that are known. */
export function withNumbers(expression: string, scope: Scope): Markup {
  return set(asNode(expression), numbersOf(scope));
}
