/** Fetches the kinds that the first screen does without: after it, or before it where the open joint is one of them. */
import { useKindsCome } from './kindsCome.ts';

let fetching: Promise<void> | undefined;

/** Never rejects: what came of it is told by `useKindsCome`, and after a failure it may be called again. */
export function fetchKinds(): Promise<void> {
  fetching ??= import('./everyKind.ts').then(
    () => undefined,
    () => {
      fetching = undefined;
      useKindsCome.setState({ come: 'failed' });
    },
  );
  return fetching;
}
