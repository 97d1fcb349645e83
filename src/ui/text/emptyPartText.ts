/** In a part without joints: after the button that opens the finder. */
export const EMPTY_FIND = 'where you know how it should move and how much room there is.';
