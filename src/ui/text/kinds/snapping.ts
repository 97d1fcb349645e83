/** Words that all kinds which snap have in common. */

/** For kinds whose brief asks for the effort and what happens after a flex already. */
export const USE_OF_SNAP = 'It is moved {ways} and {held}, and {chance} should get there.';

/** What snaps lets go at once. */
export const SNAP_EYES = 'It stores energy and lets it go at once: eye protection, and fingers clear of what moves.';
/** Frames of kinds that push their ends outwards. */
export const STIFF_FRAME =
  'Print the frame round it in one piece and much thicker than what bends; a frame that gives loses the snap.';
