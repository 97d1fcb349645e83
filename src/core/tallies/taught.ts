import type { Provenance } from '../material/types.ts';

/** What begins the origin of every value that tests have taught, so that it goes again with its tallies. */
const BEGINS = 'test prints: ';

/** Where a value comes from that so many tests have taught. */
export function taughtBy(count: number, one: string, several: string): Provenance {
  return taughtSo(`${count} ${count === 1 ? one : several}`);
}

/** The same in words of one's own. */
export function taughtSo(what: string): Provenance {
  return { kind: 'measured', what: `${BEGINS}${what}` };
}

/** Whether a value was taught by tests, rather than set by hand or copied. */
export function isTaught(provenance: Provenance | undefined): boolean {
  return provenance?.kind === 'measured' && provenance.what.startsWith(BEGINS);
}
