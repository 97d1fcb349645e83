/** Sizes that a search does not vary but lets follow from those that it tries. */
import type { Mm } from '../units.ts';
import type { FlexureFamily, Parameter } from './family.ts';

/**
 * Sizes of a family as tried, everything else at its typical value.
 *
 * @param family - the kind of flexure, as far as its sizes go [-]
 * @param tried - some of its sizes by name [mm], counts, ratios [-] or angles [rad]
 * @returns all of its sizes [mm], counts, ratios [-] or angles [rad]
 */
export function typicalBut<P extends Record<keyof P, number>>(
  family: Pick<FlexureFamily<P>, 'parameters'>,
  tried: Readonly<Record<string, number>>,
): P {
  const known = Object.entries<Parameter>(family.parameters);
  return Object.fromEntries(known.map(([name, { typical }]) => [name, tried[name] ?? typical])) as P;
}

/** Steps in which lengths that follow are told. */
const STEP: Mm = 0.5;
/** Products such as 2·0.42 + 2·0.8 may miss 2.44 by the last digit. */
const ROUND_OFF = 1e-9;

/**
 * A length rounded up to a half of a millimetre, so that what follows is as readable as what is typed.
 *
 * @param least - at least so long [mm], ≥ 0
 * @returns length [mm]
 *
 * @example roundedUp(2.44) // → 2.5
 */
export function roundedUp(least: Mm): Mm {
  return Math.ceil(least / STEP - ROUND_OFF) * STEP;
}

/**
 * Thickness of a pad that carries its root: typical, or as thick as the root asks for. From twice the thickness of what
 * bends on it is eight times as stiff.
 *
 * @param typical - usual thickness of a pad [mm], > 0
 * @param thickness - of what bends [mm], > 0
 * @param fillets - of all root fillets beside each other [mm], ≥ 0
 * @returns thickness [mm]
 *
 * @example padFor(4, 2.52, 1.6) // → 5.5
 */
export function padFor(typical: Mm, thickness: Mm, fillets: Mm): Mm {
  return Math.max(typical, roundedUp(Math.max(2 * thickness, thickness + fillets)));
}
