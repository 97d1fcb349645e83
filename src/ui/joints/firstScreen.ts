/** When the first screen stands: what nobody sees yet should not share the line with it. */
import { useSession } from '../../store/session.ts';

/** Longest wait for a drawing whose file has come; a joint that is refused has none. */
const PATIENCE_MS = 1000;

// Asked for at once, but in a file of its own: the brief and the answer must not wait for it.
export const drawingFile = import('../drawing/JointDrawing.tsx');

/** The title block tells the scale of a drawing as soon as it is laid out. */
const isDrawn = () => useSession.getState().scale !== '';

function drawn(): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(done, PATIENCE_MS);
    const stop = useSession.subscribe(() => isDrawn() && done());
    function done(): void {
      clearTimeout(timer);
      stop();
      resolve();
    }
    if (isDrawn()) done();
  });
}

let stands: Promise<void> | undefined;

/** Resolves once the brief, the verdict and the drawing stand, and for good; never rejects. */
export function firstScreenStands(): Promise<void> {
  stands ??= drawingFile.then(drawn, () => undefined);
  return stands;
}
