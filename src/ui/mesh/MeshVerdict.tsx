import { gradeOf } from '../../core/inspect/verdicts.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { SaidText } from '../joints/SaidText.tsx';
import { partHeading } from '../text/inspectText.ts';
import { chosenText, partSentences } from '../text/partVerdictText.ts';
import { useChecked } from './checked.ts';
import { worstOf } from './worst.ts';

/** How the thin sections come out, in one sentence or two; and of the one that is looked at, one more. */
export function MeshVerdict() {
  const { judged, groups, values, unit, chosen } = useChecked();
  const grade = worstOf(judged.map(gradeOf));
  const one = judged.find(({ flexure }) => flexure.number === chosen);
  return (
    <section className={`verdict ${grade}`} aria-label="Verdict" aria-live="polite">
      <h2>
        <VerdictShape grade={grade} />
        {partHeading(judged)}
      </h2>
      <p>
        <SaidText said={partSentences(judged, groups.length, values, unit)} />
      </p>
      {one && judged.length > 1 && (
        <p className="also">
          <SaidText said={chosenText(one, values, unit)} />
        </p>
      )}
    </section>
  );
}
