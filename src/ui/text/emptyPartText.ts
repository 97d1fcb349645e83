/** Words of a part without joints. */

/** What stands in the place of the joints when the part has none. */
export function emptyText(partName: string) {
  return {
    big: `Nothing bends in “${partName}” yet.`,
    small: 'Choose what should bend. Or drop a part file here to go on with it.',
  };
}

/** After the button that opens the finder. */
export const EMPTY_FIND = 'where you know how it should move and how much room there is.';
