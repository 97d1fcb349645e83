/** How findings are numbered: beside their layers in the stave, and before their sentences. */
import type { LaidFinding } from '../../core/inspect/toolpath/judgedPlace.ts';

/** Those that stand in layers and are no praise, from 1 in the order told. */
export function bracketNumbers(findings: readonly LaidFinding[]): ReadonlyMap<LaidFinding, number> {
  const told = findings.filter(({ grade, layers }) => grade !== 'pass' && layers.length > 0);
  return new Map(told.map((finding, i) => [finding, i + 1]));
}
