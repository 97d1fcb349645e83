/** The papers of strain against life and against length, where a simple formula carries the strain to other lengths. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import type { LifeDomain } from '../domains.ts';
import { everyLength, lengthDomainOf, type LengthDomain } from '../lengthCurves.ts';
import { lifeDomainOf } from '../lifeCurves.ts';
import { isByFormula } from '../strainByLength.ts';
import { lengthsByForm } from './byForm.ts';

export interface Papers {
  readonly life: LifeDomain;
  /** Absent where no formula of the kind can vary its length. */
  readonly length?: LengthDomain;
}

export function papersOf(a: Assessment, unit: LengthUnit): Papers {
  const all = everyLength(a, unit);
  const span = lengthsByForm(a, all);
  const lengths = span ? all.filter((length) => length >= span[0] && length <= span[1]) : [];
  const life = { ...lifeDomainOf(a), lengths };
  if (!span) return { life };
  const length = lengthDomainOf(a, unit);
  return { life, length: isByFormula(a) ? length : { ...length, byForm: span } };
}
