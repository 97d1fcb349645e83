import type { FlexureFamily, Section, Sizes } from '../flexures/family.ts';
import type { Filament } from '../material/types.ts';
import type { PrintProfile } from '../print/profile.ts';

/** A ladder says little of what is much thinner than its rungs: nothing comes out at less than this share of what is set. */
const LEAST_SHARE = 0.2;

/**
 * The thin section of a kind as it comes out: as the sizes and the profile make it, or as the ladder of a printer says that
 * lines and layers come out.
 *
 *     t = offset + factor·t_set
 *
 * @param family - kind of flexure [-]
 * @param sizes - its sizes [mm], counts, ratios [-] or angles [rad]
 * @param profile - print profile [mm]
 * @param filament - row that it is printed in; only what its tests say of lines and layers is asked [-]
 * @returns thickness and width [mm], and what the thickness is a count of
 *
 * Source: linear-regression.
 */
export function sectionOf(
  family: FlexureFamily,
  sizes: Sizes,
  profile: PrintProfile,
  { laid }: Pick<Filament, 'laid'>,
): Section {
  const section = family.section(sizes, profile);
  const as = laid?.[section.countOf];
  if (!as) return section;
  const { thickness } = section;
  return { ...section, thickness: Math.max(LEAST_SHARE * thickness, as.offset + as.factor * thickness) };
}
