/**
 * What a user typed into a value field, cut into numbers, units and signs.
 * Everything that is not one of those is refused here, before any sum is worked out.
 */
import { fail, ok, type Result } from '../../core/result.ts';

/** A `share` is shown in per cent, a `scale` as so many times but may be typed in per cent, a `force` in N, a `torque` in N·mm. */
export type QuantityKind = 'length' | 'angle' | 'count' | 'number' | 'scale' | 'share' | 'force' | 'torque';

export type Token =
  | { readonly is: 'number'; readonly value: number }
  | { readonly is: 'unit'; readonly name: string; readonly factor: number }
  | { readonly is: 'sign'; readonly sign: string };

/** Longest text that is looked at: the longest sensible sum is far shorter. */
const MOST_CHARACTERS = 120;

const DEGREE = Math.PI / 180;

/** What one of each unit is worth in mm, rad, a fraction, N or N·mm. */
const LENGTHS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  ft: 304.8,
  foot: 304.8,
  feet: 304.8,
};
const ANGLES: Readonly<Record<string, number>> = { deg: DEGREE, degree: DEGREE, degrees: DEGREE, rad: 1 };
/** A pound-force and an inch of it by their definitions. */
const FORCES: Readonly<Record<string, number>> = { n: 1, mn: 0.001, kn: 1000, lbf: 4.4482216152605 };
const TORQUES: Readonly<Record<string, number>> = { nmm: 1, ncm: 10, nm: 1000, lbfin: 4.4482216152605 * 25.4 };
const UNITS: Readonly<Record<QuantityKind, Readonly<Record<string, number>>>> = {
  length: LENGTHS,
  angle: ANGLES,
  count: {},
  number: {},
  scale: { percent: 0.01 },
  share: { percent: 0.01 },
  force: FORCES,
  torque: TORQUES,
};

export const EXAMPLES: Readonly<Record<QuantityKind, string>> = {
  length: '12, 2*0.42 or 3/8 in',
  angle: '35, 70/2 or 0.6 rad',
  count: '2 or 5 000',
  number: '0.5 or 1/2',
  scale: '1.5, 4/3 or 133 %',
  share: '50 or 100/3',
  force: '20 or 15 + 5',
  torque: '30 or 2*15',
};
const UNITS_SAID: Readonly<Record<QuantityKind, string>> = {
  length: 'mm, cm, m, in or ft',
  angle: 'deg or rad',
  count: 'no unit',
  number: 'no unit',
  scale: '%',
  share: '%',
  force: 'N, kN or lbf',
  torque: 'N·mm, N·cm, N·m or lbf·in',
};

/** What the units of a kind measure. */
const OF_WHAT: readonly (readonly [QuantityKind, string])[] = [
  ['length', 'length'],
  ['angle', 'angle'],
  ['force', 'force'],
  ['torque', 'torque'],
];

/** A refusal of what was typed, worded for the screen: the field, what is wrong, and what to write instead. */
export function refuse<T>(
  name: string,
  wrong: string,
  value: string,
  code: 'not-a-number' | 'not-whole' = 'not-a-number',
) {
  return fail<T>({ code, message: `${name} ${wrong}`, value: value.slice(0, 40) });
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** The sign between the two halves of a unit of torque, which is no product of two values. */
const TORQUE_SIGN = /\b(n|lbf)\s*[×⋅·∙*-]\s*(mm|cm|m|in)\b/gi;

/** Characters that people type or paste for the ones that are read. */
function tidy(text: string, kind: QuantityKind): string {
  return (
    (kind === 'share' || kind === 'scale' ? text.replaceAll('%', ' percent ') : text)
      // Marks of writing direction and joining come along with pasted text and show nothing.
      .replaceAll(/[\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g, '')
      .replaceAll(/[½¼¾⅛⅜⅝⅞]/g, (sign, at: number, whole: string) =>
        /\d\s*$/.test(whole.slice(0, at)) ? ` ${FRACTIONS[sign]}` : `(${FRACTIONS[sign]})`,
      )
      .replaceAll(TORQUE_SIGN, '$1$2')
      .replaceAll(/[×⋅·∙]/g, '*')
      .replaceAll(/[÷⁄∕]/g, '/')
      .replaceAll(/[−–‒]/g, '-')
      .replaceAll(/''|["″“”]/g, ' in ')
      .replaceAll(/['′’‘]/g, ' ft ')
      .replaceAll(/[°º˚]/g, ' deg ')
      .toLowerCase()
      .trim()
  );
}

const SPACED_NUMBER = /\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?/y;
const NUMBER = /(?:\d[\d.,]*|[.,]\d+)(?:e[+-]?\d+(?![\d.,]))?/y;
const WORD = /\p{L}+/uy;
const SPACE = /\s+/y;
const SIGN = /[-+*/^()]/y;
const ANY = /./suy;

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

/** Digits with a decimal point or comma, and with thousands parted by spaces, commas or points. */
function readDigits(literal: string, kind: QuantityKind): number | undefined {
  const [digits = '', exponent] = literal.replaceAll(/[ \u00a0\u2009\u202f]/g, '').split('e');
  // In a count a separator before three digits parts thousands; “5,000 mm” is a decimal, as lengths are never that large.
  const grouped =
    kind === 'count' ? /^[1-9]\d{0,2}(?:([.,])\d{3})(?:\1\d{3})*$/ : /^[1-9]\d{0,2}([.,])\d{3}(?:\1\d{3})+$/;
  const mixed = /^[1-9]\d{0,2}(?:,\d{3})+\.\d*$|^[1-9]\d{0,2}(?:\.\d{3})+,\d*$/;
  let plain = digits.replace(',', '.');
  if (grouped.test(digits)) plain = digits.replaceAll(/[.,]/g, '');
  else if (mixed.test(digits)) plain = digits.replaceAll(/[.,](?=.*[.,])/g, '').replace(',', '.');
  if (!/^(?:\d+\.?\d*|\.\d+)$/.test(plain)) return undefined;
  return Number(exponent === undefined ? plain : `${plain}e${exponent}`);
}

function unitToken(word: string, kind: QuantityKind, name: string): Result<Token> {
  if (word === 'x') return ok({ is: 'sign', sign: '*' });
  const wanted = UNITS[kind];
  if (Object.hasOwn(wanted, word)) return ok({ is: 'unit', name: word, factor: wanted[word] ?? 1 });
  const other = OF_WHAT.find(([of]) => Object.hasOwn(UNITS[of], word));
  const wrong = other
    ? `cannot be in “${word}”, which is a unit of ${other[1]}; use ${UNITS_SAID[kind]}`
    : `cannot be read: “${word.slice(0, 20)}” is not a unit here; write a number or a sum, such as ${EXAMPLES[kind]}`;
  return refuse(name, wrong, word);
}

/** Cuts what was typed into numbers, units and signs, or says what cannot be read. */
export function readTokens(typed: string, kind: QuantityKind, name: string): Result<readonly Token[]> {
  if (typed.length > MOST_CHARACTERS) {
    return refuse(name, `cannot be read from more than ${MOST_CHARACTERS} characters; write ${EXAMPLES[kind]}`, typed);
  }
  const text = tidy(typed, kind);
  const tokens: Token[] = [];
  for (let at = 0; at < text.length;) {
    const space = matchAt(SPACE, text, at);
    const literal = matchAt(SPACED_NUMBER, text, at) ?? matchAt(NUMBER, text, at);
    const word = matchAt(WORD, text, at);
    const sign = matchAt(SIGN, text, at);
    const taken = space ?? literal ?? word ?? sign ?? matchAt(ANY, text, at) ?? '';
    if (literal !== undefined) {
      const value = readDigits(literal, kind);
      if (value === undefined) return refuse(name, `cannot be read: “${literal}” is not one number`, typed);
      if (!Number.isFinite(value)) return refuse(name, `cannot be as large as ${literal}`, typed);
      tokens.push({ is: 'number', value });
    } else if (word !== undefined) {
      const unit = unitToken(word, kind, name);
      if (!unit.ok) return unit;
      tokens.push(unit.value);
    } else if (sign !== undefined) {
      tokens.push({ is: 'sign', sign });
    } else if (space === undefined) {
      return refuse(
        name,
        `cannot be read: “${taken}” has no meaning here; write a number or a sum, such as ${EXAMPLES[kind]}`,
        typed,
      );
    }
    at += taken.length;
  }
  if (!tokens.some((token) => token.is === 'number'))
    return refuse(name, `needs a number, such as ${EXAMPLES[kind]}`, typed);
  return ok(tokens);
}
