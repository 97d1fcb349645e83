import { doubtSigma } from '../../core/life/scatter.ts';
import type { StrainLifeCurve } from '../../core/material/types.ts';
import { cycles } from './numbers.ts';

/** Nine times in ten, as a factor from a standard deviation in powers of ten. */
const asFactor = (sigma: number) => Number((10 ** (sigma * (1 / doubtSigma(10)))).toPrecision(2));

/**
 * How doubtful a curve is: “10, nine times in ten”; of one that tests have moved also where it is surest, and how the doubt
 * grows a hundred times away from there.
 */
export function curveDoubt({ doubtFactor, surestLife, doubtPerDecade }: StrainLifeCurve): string {
  const least = Number(doubtFactor.toPrecision(2));
  if (surestLife === undefined || doubtPerDecade === undefined) return `${least}, nine times in ten`;
  const far = asFactor(Math.hypot(doubtSigma(doubtFactor), 2 * doubtPerDecade));
  return `${least} about ${cycles(surestLife)} cycles, where your tests tell most, and of ${far} a hundred times away from there, nine times in ten`;
}
