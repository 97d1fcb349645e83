/** How much of a part file is read, and why no more. All were chosen by what a worker of one browser tab holds with ease. */

/** Four million triangles in binary STL, which spends fifty bytes on each. The file, its mesh and the check of it must fit in one tab. */
export const MAX_FILE_BYTES = 200_000_000;

/** A mesh of as many takes 100 MB, and 300 MB beside its file while it is read; part files seldom hold a tenth of them. */
export const MAX_TRIANGLES = 4_000_000;

/** Three to a triangle, where none is shared. */
export const MAX_VERTICES = 3 * MAX_TRIANGLES;

/** Past a kilometre in the smallest unit, and squares and cubes of it are still far from overflowing. */
export const MAX_COORDINATE = 1e9;

/** Names are shown in a list; nobody reads a longer one, and files made to be hostile hold millions. */
export const MAX_SOLIDS = 10_000;

/** Of all that an archive holds; XML of four million triangles takes about 300 MB. */
export const MAX_UNPACKED_BYTES = 600_000_000;

/** A list of relationships takes a hundredth. */
export const MAX_LIST_BYTES = 1_000_000;

/** Meshes in XML shrink to an eighth, the most regular ones to a fortieth; what shrinks further was made to burst. */
export const MAX_RATIO = 200;
/** Under this size no ratio says anything: a picture of one colour shrinks as far. */
export const RATIO_FROM_BYTES = 1_000_000;

/** A project with one file for each of a thousand parts and their pictures stays below it. */
export const MAX_ENTRIES = 10_000;

/** Objects, and placings of objects, those within objects too. The triangle limit holds beside it; this one bounds empty ones. */
export const MAX_PLACINGS = 100_000;

/** Objects in objects; parts put together from parts go four or five deep. */
export const MAX_NESTING = 32;

/** Elements in elements; a 3MF model goes seven deep. */
export const MAX_XML_DEPTH = 100;

/** Between two tags; whatever is longer (a picture written as text) is no mesh, and would have to be held in one piece. */
export const MAX_XML_PIECE = 16_000_000;

/** Steps between two calls of the progress: under 20 ms of work in every reader. */
export const STEPS_PER_CALL = 16_384;
