/** How the numbers of thin sections that are alike are told in one balloon. */

/** More runs than this are told by the first two and the last. */
const MOST = 3;

/** “1–4, 7”, “1, 6 … 36”. */
export function numbersText(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  const said = runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}–${b}`));
  return said.length <= MOST ? said.join(', ') : `${said[0]}, ${said[1]} … ${said.at(-1)}`;
}
