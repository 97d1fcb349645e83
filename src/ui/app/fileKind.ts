/** Whether a file is a mesh, a toolpath or a table of tallies, before anyone reads it. */

/** By the ending of its name. */
export function isMeshName(name: string): boolean {
  return /\.(?:stl|3mf|obj)$/i.test(name);
}

/** A table of tallies, by the ending of its name. */
export function isTalliesName(name: string): boolean {
  return /\.csv$/i.test(name);
}

/** A file of moves for a printer, by the ending of its name. */
export function isGcodeName(name: string): boolean {
  return /\.(?:gcode|bgcode|gco|gc|g|ngc|nc|cnc|tap)$/i.test(name);
}

/** A head of 80 bytes and a count; then 50 bytes a triangle: a binary STL. */
const HEAD = 84;
const A_TRIANGLE = 50;

/** Text enough to tell moves by: some files begin with a picture of the part in comments. */
const LOOK_BYTES = 65_536;
/** A command, with a number of its line before it or without; words may follow at once. */
const COMMAND = /^(?:n\d+\s*)?[gmt]\d+(?:\.\d+)?(?=[\s;(*a-z]|$)/i;
/** Or words alone, which go on as the line before did. */
const WORDS = /^(?:[a-z][-+]?\.?\d[\d.]*\s*)+(?=[;(*]|$)/i;
/** What says nothing: blanks, comments, the percent sign that begins a tape. */
const SILENT = /^(?:$|[;(%])/;
/** Of the lines that say something so many are of this kind, and so many are commands at least. */
const MOST = 0.8;
const LEAST = 2;

async function firstBytes(file: Blob, count: number): Promise<Uint8Array> {
  const bytes = await file
    .slice(0, count)
    .arrayBuffer()
    .catch(() => new ArrayBuffer(0));
  return new Uint8Array(bytes);
}

/** By its first bytes, for a file whose name does not tell: a zip, a solid in words, or as many triangles as it counts. */
export async function saysMesh(file: Blob): Promise<boolean> {
  const bytes = await firstBytes(file, HEAD);
  const begins = String.fromCharCode(...bytes.slice(0, 6));
  if (begins.startsWith('PK\u0003\u0004') || /^solid\s/.test(begins)) return true;
  return bytes.length === HEAD && file.size === HEAD + A_TRIANGLE * new DataView(bytes.buffer).getUint32(80, true);
}

/** By its first lines: nearly all that are no comments are commands or words. */
export async function saysGcode(file: Blob): Promise<boolean> {
  const bytes = await firstBytes(file, LOOK_BYTES);
  if (bytes.includes(0)) return false;
  const lines = new TextDecoder().decode(bytes).split(/[\r\n]+/);
  // The last one may have been cut off.
  const whole = file.size > LOOK_BYTES ? lines.slice(0, -1) : lines;
  const saying = whole.map((line) => line.trim()).filter((line) => !SILENT.test(line));
  const commands = saying.filter((line) => COMMAND.test(line)).length;
  const alike = saying.filter((line) => COMMAND.test(line) || WORDS.test(line)).length;
  return commands >= LEAST && alike >= MOST * saying.length;
}
