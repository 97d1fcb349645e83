import { useEffect, useState } from 'react';
import type { Cure } from '../../core/inspect/cure.ts';
import { cures } from '../../core/inspect/cures.ts';
import { useSession } from '../../store/session.ts';
import { useChecked } from './checked.ts';

/** Many filaments times many sections take some tenths of a second: looked for once the keys rest [ms]. */
const QUIET_MS = 150;

interface Found {
  readonly key: readonly unknown[];
  readonly cures: readonly Cure[];
}

const isSame = (a: readonly unknown[], b: readonly unknown[]) => a.every((one, i) => Object.is(one, b[i]));

/** What would help the whole part; of the values before while those in force are looked at. */
export function useCures(): { readonly cures: readonly Cure[] | undefined; readonly isOld: boolean } {
  const { part, values, name } = useChecked();
  const own = useSession((state) => state.own);
  const [found, setFound] = useState<Found>();
  const { as, asked } = values;
  const key = [part, as, asked, name, own];
  const isOld = found !== undefined && !isSame(found.key, key);
  useEffect(() => {
    const timer = setTimeout(() => {
      const { findings, facts } = part;
      setFound({ key: [part, as, asked, name, own], cures: cures(findings.flexures, facts.box, as, asked, name) });
    }, QUIET_MS);
    return () => clearTimeout(timer);
  }, [part, as, asked, name, own]);
  // Those of another part are nobody's business.
  const isOther = found?.key[0] !== part;
  return { cures: isOther ? undefined : found?.cures, isOld };
}
