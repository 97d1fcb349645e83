/** What every document of the terminal must keep to, whatever is in it. */

/** Figures that are no number of a unit: counts, shares, ratios and strains. */
const PLAIN = new Set(
  `lines count exact nearest in_row side_by_side value nominal root_factor fraction p10 p50 p90 equivalent_strain
  counted_up_to reach_wanted scatter_only wanted limit strain margin cycles chance ratio ratio_to_next effort position
  elements residual part parts share leaves_at_share guided free strain_within strain_at_roots iterations strain_left
  strain_right version peak_strain mean_strain alone_p50 share_low share_high`.split(/\s+/),
);
const UNIT = /_(mm|rad|deg|N|Nmm|MPa|N_per_mm|Nmm_per_rad|h|C)$/;

/** Every figure with the key under which it stands; those of a list stand under the key of the list. */
export function figuresIn(value: unknown, key = ''): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return [[key, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, item]) => figuresIn(item, Array.isArray(value) ? key : name));
}

/** Keys of figures that say no unit and are known to have none; sizes and notes have their own. */
export function keysWithoutUnit(document: object, alsoPlain: readonly string[] = []): readonly string[] {
  const keys = new Set(figuresIn(document).map(([key]) => key));
  return [...keys].filter((key) => !UNIT.test(key) && !PLAIN.has(key) && !alsoPlain.includes(key));
}

/** A value inside a document, as one who reads the document has it. */
export function at(document: unknown, ...keys: readonly (string | number)[]) {
  const value = keys.reduce<unknown>(
    (inner, key) => (inner as Readonly<Record<string | number, unknown>>)[key],
    document,
  );
  return JSON.parse(JSON.stringify(value));
}
