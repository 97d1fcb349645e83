import { useKeeping } from '../../store/keeping.ts';
import { fetchKinds } from './fetchKinds.ts';
import { useKindsCome } from './kindsCome.ts';

/** Whether loading the page again would bring the part back. */
export function useIsKept(): boolean {
  return useKeeping(({ kept }) => kept === 'saved' || kept === 'nothing to keep');
}

function isReachable(): Promise<boolean> {
  return fetch(location.href, { cache: 'no-store' }).then(
    ({ ok }) => ok,
    () => false,
  );
}

/**
 * Fetches the kinds once more. Many a browser remembers that a file did not come and never asks for it again: there the
 * page is loaded again, unless that would lose the part or the page.
 */
export async function tryKindsAgain(isKept: boolean): Promise<void> {
  await fetchKinds();
  const hasFailed = useKindsCome.getState().come === 'failed';
  if (hasFailed && isKept && (await isReachable())) location.reload();
}
