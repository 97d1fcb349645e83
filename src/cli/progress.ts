/** A line on a terminal that says what is being worked on; nothing where nobody is looking. */
const isWatched = process.stderr.isTTY;
/** Back to the start of the line, and empty it. */
const CLEAR = '\r\u001B[K';

export function showProgress(doing: string): void {
  if (isWatched) process.stderr.write(`${CLEAR}${doing} …`);
}

export function clearProgress(): void {
  if (isWatched) process.stderr.write(CLEAR);
}
