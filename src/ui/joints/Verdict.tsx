import type { Assessment } from '../../core/design/assessment.ts';
import type { Result } from '../../core/result.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import type { LengthUnit } from '../text/numbers.ts';
import { type problemSaid, useProblemSaid } from '../text/problemSaid.ts';
import { plainly, type Said } from '../text/said.ts';
import { ESTIMATED } from '../text/solverText.ts';
import { chanceText, REFUSED_HEADING, verdictHeading, verdictSentences } from '../text/verdictText.ts';
import { SaidText } from './SaidText.tsx';
import { useQuietly } from './useQuietly.ts';

interface Props {
  readonly assessment: Result<Assessment>;
  /** The assessment is an estimate that the solver is about to replace. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
}

interface Words {
  readonly grade: Assessment['verdict']['grade'];
  readonly heading: string;
  readonly sentences: readonly Said[];
  readonly small: string;
}

function wordsOf(assessment: Result<Assessment>, unit: LengthUnit, say: typeof problemSaid): Words {
  if (!assessment.ok) {
    const sentences = assessment.problems.map((problem) => [say(problem, unit)]);
    return { grade: 'fail', heading: REFUSED_HEADING, sentences, small: '' };
  }
  const a = assessment.value;
  return {
    grade: a.verdict.grade,
    heading: verdictHeading(a),
    sentences: verdictSentences(a, unit),
    small: chanceText(a),
  };
}

/** Shape, word and sentence. It is announced once it stands still, so that a drag does not talk. */
export function Verdict({ assessment, isWorking, unit }: Props) {
  const { grade, heading, sentences, small } = wordsOf(assessment, unit, useProblemSaid());
  const announced = useQuietly(isWorking ? '' : [`${heading}.`, ...sentences.map(plainly)].join(' '));
  const under = isWorking ? ESTIMATED : small;
  return (
    <section className={`verdict ${grade}`} aria-label="Verdict" aria-busy={isWorking}>
      <h2>
        <VerdictShape grade={grade} />
        {heading}
      </h2>
      {sentences.map((said, at) => (
        <p key={at} className={at === 0 ? undefined : 'also'}>
          <SaidText said={said} />
        </p>
      ))}
      {under !== '' && <p className="chance">{under}</p>}
      <output className="vh">{announced}</output>
    </section>
  );
}
