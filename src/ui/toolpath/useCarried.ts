import { useEffect, useState } from 'react';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { useChecking } from '../../store/checking.ts';
import { usePartCheck } from '../mesh/partCheck.ts';
import { useToolpathCheck } from './toolpathCheck.ts';

/** The sections of the part that stands under Mesh, where the toolpath on screen lays them. */
export interface Carried {
  /** Name of the part's file. */
  readonly part: string;
  /** None where the toolpath is not of that part; absent until that is known. */
  readonly places: readonly Place[] | undefined;
}

const NONE: readonly Place[] = [];

/** What fits one solid to another comes late: most who look at a toolpath have looked at no part. */
export function useCarried(): Carried | undefined {
  const toolpath = useToolpathCheck(({ standing }) => standing?.value);
  const part = usePartCheck(({ standing }) => standing);
  const { scale, up } = useChecking((state) => state.values.as);
  const [found, setFound] = useState<{ readonly of: readonly unknown[]; readonly places: readonly Place[] }>();
  useEffect(() => {
    if (!toolpath || !part) return undefined;
    let isWanted = true;
    const { findings, facts } = part.value;
    const put = (places: readonly Place[]) => {
      if (isWanted) setFound({ of: [toolpath, part, scale, up], places });
    };
    void import('../../core/inspect/toolpath/carriedPlaces.ts').then(
      ({ carriedPlaces }) => put(carriedPlaces({ findings, box: facts.box, stands: { scale, up } }, toolpath.plans)),
      () => put(NONE),
    );
    return () => {
      isWanted = false;
    };
  }, [toolpath, part, scale, up]);
  if (!part) return undefined;
  const now = [toolpath, part, scale, up];
  const isNow = found?.of.every((one, i) => one === now[i]) ?? false;
  return { part: part.asked.file.name, places: isNow ? found?.places : undefined };
}
