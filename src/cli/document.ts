/** The one document on standard output, piece by piece: with every middle line in it, it may be longer than a string can be. */

/** Lists of figures stand on one line, or a middle line would fill a page. */
function isFigures(value: readonly unknown[]): boolean {
  return value.length > 0 && value.every((item) => typeof item === 'number' || item === null);
}

/**
 * JSON as `JSON.stringify(value, null, 2)` writes it, but for lists of figures, in pieces.
 *
 * @param value - plain data
 * @param indent - before each line but the first
 */
export function* jsonPieces(value: unknown, indent = ''): Generator<string> {
  if (typeof value !== 'object' || value === null) {
    yield JSON.stringify(value) ?? 'null';
    return;
  }
  if (Array.isArray(value) && isFigures(value)) {
    yield JSON.stringify(value).replaceAll(',', ', ');
    return;
  }
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  const inner = `${indent}  `;
  let isFirst = true;
  for (const [key, item] of Object.entries(value as Readonly<Record<string, unknown>>)) {
    if (item === undefined && !Array.isArray(value)) continue;
    yield `${isFirst ? open : ','}\n${inner}${Array.isArray(value) ? '' : `${JSON.stringify(key)}: `}`;
    yield* jsonPieces(item, inner);
    isFirst = false;
  }
  yield isFirst ? `${open}${close}` : `\n${indent}${close}`;
}

/** Pieces put together to writes of a size that a pipe takes well, and the end of the last line. */
export function* inBlocks(pieces: Iterable<string>, size = 65_536): Generator<string> {
  let block = '';
  for (const piece of pieces) {
    block += piece;
    if (block.length < size) continue;
    yield block;
    block = '';
  }
  yield `${block}\n`;
}
