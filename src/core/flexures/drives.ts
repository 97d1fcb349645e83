import type { Drive, FlexureFamily, Parameter, Sizes } from './family.ts';

/**
 * The drive of a family with an id.
 *
 * @param family - the kind of flexure, as far as its drives go [-]
 * @param id - id of a drive [-]
 * @returns the drive [-], or undefined when it cannot be moved in that way
 */
export function findDrive(family: Pick<FlexureFamily, 'drives'>, id: string): Drive | undefined {
  return family.drives.find((drive) => drive.id === id);
}

/**
 * The drive of a movement that has been checked; one that the family has not is a mistake of the caller.
 *
 * @param family - the kind of flexure, as far as its drives go [-]
 * @param id - id of a drive [-]
 * @returns the drive [-]
 */
export function driveOf(family: Pick<FlexureFamily, 'drives' | 'id'>, id: string): Drive {
  const drive = findDrive(family, id);
  if (!drive) throw new RangeError(`${family.id} has no drive called ${id}`);
  return drive;
}

/**
 * Whether a size means anything where a joint is moved in a certain way.
 *
 * @param parameter - a size of a family [-]
 * @param drive - id of a drive [-]
 * @returns true when it is asked for [-]
 */
export function isAsked(parameter: Parameter, drive: string): boolean {
  return parameter.drives === undefined || parameter.drives.includes(drive);
}

/**
 * The sizes as they act: what the drive does not ask for is at its typical value, whatever was left in it while the
 * joint was moved in another way.
 *
 * @param family - the kind of flexure, as far as its sizes go [-]
 * @param sizes - its sizes by name [mm], counts, ratios [-] or angles [rad]
 * @param drive - id of the drive in force [-]
 * @returns sizes by name [mm], counts, ratios [-] or angles [rad]
 */
export function sizesInForce(family: Pick<FlexureFamily, 'parameters'>, sizes: Sizes, drive: string): Sizes {
  const idle = Object.entries(family.parameters).filter(([, parameter]) => !isAsked(parameter, drive));
  return { ...sizes, ...Object.fromEntries(idle.map(([name, { typical }]) => [name, typical])) };
}
