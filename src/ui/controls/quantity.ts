/**
 * Reads what a user typed into a value field. A plain number, with or without one unit, is read here at once;
 * a sum is worked out by a part of the program that is only loaded for it.
 */
import { ok, type Result } from '../../core/result.ts';
import { MM_PER_INCH, type LengthUnit } from '../text/numbers.ts';
import { EXAMPLES, readTokens, refuse, type QuantityKind, type Token } from './quantityText.ts';

export type { QuantityKind } from './quantityText.ts';

/** The value in mm, rad or as a plain number; or what is wrong with the text, worded for the screen. */
export type QuantityReading = Result<number>;

const NAMES: Readonly<Record<QuantityKind, string>> = {
  length: 'The length',
  angle: 'The angle',
  count: 'The count',
  number: 'The number',
  scale: 'The scale',
  share: 'The share',
  force: 'The force',
  torque: 'The torque',
};

/** What a number without a unit is worth. */
function bareFactor(kind: QuantityKind, unit: LengthUnit): number {
  if (kind === 'length') return unit === 'mm' ? 1 : MM_PER_INCH;
  if (kind === 'share') return 0.01;
  return kind === 'angle' ? Math.PI / 180 : 1;
}

/** [sign] number [unit] and nothing else. */
function readPlain(tokens: readonly Token[], bare: number): number | undefined {
  const [first, ...others] = tokens;
  const signed = first?.is === 'sign' && (first.sign === '+' || first.sign === '-');
  const [number, unit, ...more] = signed ? others : tokens;
  if (number?.is !== 'number' || more.length > 0) return undefined;
  if (unit !== undefined && unit.is !== 'unit') return undefined;
  const size = number.value * (unit === undefined ? bare : unit.factor);
  return signed && first.sign === '-' ? -size : size;
}

function checkResult(value: number, kind: QuantityKind, name: string, text: string): QuantityReading {
  if (!Number.isFinite(value)) return refuse(name, `comes to no finite number; write ${EXAMPLES[kind]}`, text);
  if (kind !== 'count') return ok(value);
  // 30 × 0.1 is a hair off 3 in binary, and still means 3.
  const whole = Math.round(value);
  if (Math.abs(value - whole) <= 1e-9 * Math.max(1, Math.abs(value))) return ok(whole);
  const near = value > 1 ? `${Math.floor(value)} or ${Math.ceil(value)}` : '1';
  return refuse(name, `must be whole, not ${Number(value.toFixed(4))}; write ${near}`, text, 'not-whole');
}

async function readSum(
  tokens: readonly Token[],
  bare: number,
  kind: QuantityKind,
  name: string,
  text: string,
): Promise<QuantityReading> {
  const engine = await loadEngine().catch(() => undefined);
  if (engine === undefined) {
    return refuse(name, 'cannot be a sum, because the part that works out sums did not load; write one number', text);
  }
  const size = engine.workOut(tokens, bare, kind);
  return typeof size === 'string' ? refuse(name, size, text) : checkResult(size, kind, name, text);
}

let engine: Promise<typeof import('./mathEngine.ts')> | undefined;

function loadEngine(): Promise<typeof import('./mathEngine.ts')> {
  engine ??= import('./mathEngine.ts').catch((error: unknown) => {
    // A failed load is tried again with the next sum: the network may be back.
    engine = undefined;
    throw error;
  });
  return engine;
}

function loadQuietly(): void {
  void loadEngine().catch(() => undefined);
}

/** Loads the part that works out sums while nothing else is going on, so that the first sum does not wait. */
export function prepareSums(): void {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(loadQuietly);
  else setTimeout(loadQuietly, 2000);
}

/**
 * Reads `12`, `0,5`, `5 000`, `3/8 in`, `1 3/8"`, `2 × 0.42` and the like. A number without a unit is in the chosen
 * unit (degrees for angles, per cent for shares), inside a sum too: `3/8 in + 2` is 11.525 mm. A whole number before a fraction is a
 * mixed fraction. Any text gives a value or a message.
 */
export function readQuantity(
  text: string,
  kind: QuantityKind,
  unit: LengthUnit,
  name = NAMES[kind],
): QuantityReading | Promise<QuantityReading> {
  const tokens = readTokens(text, kind, name);
  if (!tokens.ok) return tokens;
  const bare = bareFactor(kind, unit);
  const plain = readPlain(tokens.value, bare);
  if (plain !== undefined) return checkResult(plain, kind, name, text);
  return readSum(tokens.value, bare, kind, name, text);
}
