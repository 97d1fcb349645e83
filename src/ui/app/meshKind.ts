/** Whether a file is a mesh, before anyone reads it. */

/** By the ending of its name. */
export function isMeshName(name: string): boolean {
  return /\.(?:stl|3mf|obj)$/i.test(name);
}

/** A file of moves for a printer; nothing here reads one. */
export function isGcodeName(name: string): boolean {
  return /\.(?:gcode|gco|g|bgcode)$/i.test(name);
}

/** A head of 80 bytes and a count; then 50 bytes a triangle: a binary STL. */
const HEAD = 84;
const A_TRIANGLE = 50;

/** By its first bytes, for a file whose name does not tell: a zip, a solid in words, or as many triangles as it counts. */
export async function saysMesh(file: Blob): Promise<boolean> {
  const bytes = await file
    .slice(0, HEAD)
    .arrayBuffer()
    .catch(() => new ArrayBuffer(0));
  const begins = String.fromCharCode(...new Uint8Array(bytes).slice(0, 6));
  if (begins.startsWith('PK\u0003\u0004') || /^solid\s/.test(begins)) return true;
  return bytes.byteLength === HEAD && file.size === HEAD + A_TRIANGLE * new DataView(bytes).getUint32(80, true);
}
