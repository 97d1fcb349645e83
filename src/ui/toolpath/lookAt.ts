/** Looks at a thin section where there is most to see. */
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import { choosePlace } from './shown.ts';

/** The first layer of what is worst; the lowest where nothing is amiss in single layers. */
function faultLayer({ findings }: JudgedPlace): number {
  return findings.find(({ grade, layers }) => grade !== 'pass' && layers.length > 0)?.layers[0]?.[0] ?? 1;
}

export function lookAt(judged: readonly JudgedPlace[], number: number): void {
  const one = judged.find(({ place }) => place.number === number);
  choosePlace(number, one ? faultLayer(one) : 1);
}

/** The file that was looked at last. */
let last: File | undefined;

/** Looks at the first section of another file; of the same one what was looked at stays. */
export function lookAtFile(file: File, judged: readonly JudgedPlace[]): void {
  const [first] = judged;
  if (file === last || !first) return;
  last = file;
  lookAt(judged, first.place.number);
}
