/** What is wrong with a row of the user's own: each problem names the value, its limit and what would help. */
import type { Problem, Range } from '../problems.ts';
import {
  CURVE_FIGURES,
  CURVE_LIMITS,
  LAID_LIMITS,
  NEEDED,
  OWN_ID,
  PROPERTY_LIMITS,
  PROPERTY_NAMES,
  SUREST_LIMITS,
  type Limits,
} from './ownLimits.ts';
import type { LaidThickness, OwnFilament, PropertyName, Quantity, StrainLifeCurve } from './types.ts';

const ENDS = ['typical', 'low', 'high'] as const;

/** A figure as messages say it: strains in per cent, four figures at most. */
export function said(value: number, { isShare, units }: Pick<Limits, 'isShare' | 'units'>): string {
  const figure = String(Number((isShare ? value * 100 : value).toPrecision(4)));
  const unit = isShare ? '%' : units[0];
  return unit === '' ? figure : `${figure} ${unit}`;
}

/**
 * What is wrong with a figure that has to lie within limits.
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`.
 *
 * @param field - path of the field [-]
 * @param value - the figure [in the first unit of its limits]
 * @param limits - what it is, and how far it may go [-]
 * @param range - narrower limits, where others apply [in the same unit]
 * @returns the problem [-], or `undefined` where there is none
 */
export function outside(field: string, value: number, limits: Limits, range: Range = limits): Problem | undefined {
  const { what } = limits;
  const say = (figure: number) => said(figure, limits);
  if (!Number.isFinite(value)) {
    const message = `${what}: ${value} is not a number; give one from ${say(range.min)} to ${say(range.max)}`;
    return { code: 'not-a-number', message, field, value: String(value) };
  }
  if (value < range.min) {
    const message = `${what}: ${say(value)} is below ${say(range.min)} (${range.because}); raise it`;
    return { code: 'below-minimum', message, field, value, limit: range.min };
  }
  if (value > range.max) {
    const message = `${what}: ${say(value)} is above ${say(range.max)} (${range.because}); lower it`;
    return { code: 'above-maximum', message, field, value, limit: range.max };
  }
  return undefined;
}

/** Low and high lie on their sides of the typical value. */
function disordered(field: string, { typical, low, high }: Quantity, limits: Limits): Problem[] {
  const say = (figure: number) => said(figure, limits);
  const problems: Problem[] = [];
  if (low !== undefined && low > typical) {
    const message = `${limits.what}: its low ${say(low)} is above its usual ${say(typical)}; lower the low or raise the usual`;
    problems.push({ code: 'above-maximum', message, field: `${field}.low`, value: low, limit: typical });
  }
  if (high !== undefined && high < typical) {
    const message = `${limits.what}: its high ${say(high)} is below its usual ${say(typical)}; raise the high or lower the usual`;
    problems.push({ code: 'below-minimum', message, field: `${field}.high`, value: high, limit: typical });
  }
  return problems;
}

function checkQuantity(name: PropertyName, quantity: Quantity): readonly Problem[] {
  const limits = PROPERTY_LIMITS[name];
  const field = `properties.${name}`;
  const problems = ENDS.flatMap((end) => {
    const value = quantity[end];
    return value === undefined ? [] : (outside(`${field}.${end}`, value, limits) ?? []);
  });
  if (!limits.units.includes(quantity.unit)) {
    const expected = limits.units.map((unit) => (unit === '' ? 'no unit, as a fraction' : unit)).join(' or ');
    const message = `${limits.what} is in “${quantity.unit}”; give it in ${expected}`;
    problems.push({
      code: 'not-one-of',
      message,
      field: `${field}.unit`,
      value: quantity.unit,
      limit: limits.units.join(' or '),
    });
  }
  return problems.length > 0 ? problems : disordered(field, quantity, limits);
}

function missing(name: PropertyName): Problem {
  const message = `${PROPERTY_LIMITS[name].what} is missing; every row needs it`;
  return { code: 'missing-field', message, field: `properties.${name}` };
}

/** What breaks has yielded before, or at the same moment. */
function yieldsFirst({ yieldStrain, strainAtBreak }: OwnFilament['properties']): Problem | undefined {
  if (!(yieldStrain.typical > strainAtBreak.typical)) return undefined;
  const [yields, breaks] = [yieldStrain, strainAtBreak].map(({ typical }) =>
    said(typical, PROPERTY_LIMITS.yieldStrain),
  );
  return {
    code: 'above-maximum',
    message: `it would break at ${breaks} before it stays bent at ${yields}; lower the one or raise the other`,
    field: 'properties.yieldStrain.typical',
    value: yieldStrain.typical,
    limit: strainAtBreak.typical,
  };
}

/**
 * What is wrong with a strain–life curve; empty where it falls and its figures can be.
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`, with fields under `life`.
 *
 * @param life - curve of any figures [-]
 * @returns refusals [-]
 */
export function checkCurve(life: StrainLifeCurve): readonly Problem[] {
  const problems = [
    ...CURVE_FIGURES.flatMap((name) => outside(`life.${name}`, life[name], CURVE_LIMITS[name]) ?? []),
    ...(['surestLife', 'doubtPerDecade'] as const).flatMap((name) => {
      const figure = life[name];
      return figure === undefined ? [] : (outside(`life.${name}`, figure, SUREST_LIMITS[name]) ?? []);
    }),
  ];
  if (problems.length > 0) return problems;
  if (!(life.b > life.c)) {
    const message = `exponent of the flat part ${life.b} is not above that of the steep part ${life.c}; the steep part must fall faster`;
    return [{ code: 'below-minimum', message, field: 'life.b', value: life.b, limit: life.c }];
  }
  const { maxReportableCycles: counted } = life;
  if (Number.isInteger(counted)) return [];
  const message = `flexes counted at most ${counted} is not whole; give a count`;
  return [{ code: 'not-whole', message, field: 'life.maxReportableCycles', value: counted }];
}

function checkThickness(field: string, laid: LaidThickness | undefined): readonly Problem[] {
  if (laid === undefined) return [];
  const names = ['factor', 'offset', 'sigma'] as const;
  return names.flatMap((name) => outside(`${field}.${name}`, laid[name], LAID_LIMITS[name]) ?? []);
}

function checkLaid({ laid }: OwnFilament): readonly Problem[] {
  return (['lines', 'layers'] as const).flatMap((name) => checkThickness(`laid.${name}`, laid?.[name]));
}

function checkNames({ id, name, fullName }: OwnFilament): readonly Problem[] {
  const problems: Problem[] = [];
  if (!OWN_ID.test(id)) {
    const message = `key “${id.slice(0, 60)}” is not one of an own filament; write own- and up to 40 small letters, digits and dashes`;
    problems.push({ code: 'not-one-of', message, field: 'id', value: id.slice(0, 60), limit: 'own-…' });
  }
  for (const [field, text] of Object.entries({ name, fullName })) {
    if (text.trim() === '')
      problems.push({ code: 'missing-field', message: 'a filament needs a name; type one', field });
  }
  return problems;
}

/**
 * Everything that is wrong with the figures of a row of the user's own; empty when it can be used. Its tallies, on which no
 * answer rests by itself, are judged where they are entered and read (`tallies/checkTally.ts`).
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`, `not-one-of`, `missing-field`; fields are
 * `id`, `name`, `properties.….typical` (or `low`, `high`, `unit`), `life.…` and `laid.…`.
 *
 * @param filament - a row of the right shape, with any figures [-]
 * @returns refusals [-]
 */
export function checkFilament(filament: OwnFilament): readonly Problem[] {
  const { properties, life } = filament;
  const absent = NEEDED.filter((name) => properties[name] === undefined).map(missing);
  const figures = PROPERTY_NAMES.flatMap((name) => {
    const quantity = properties[name];
    return quantity === undefined ? [] : checkQuantity(name, quantity);
  });
  const problems = [...checkNames(filament), ...absent, ...figures, ...checkCurve(life), ...checkLaid(filament)];
  return problems.length > 0 ? problems : [yieldsFirst(properties)].filter((problem) => problem !== undefined);
}
