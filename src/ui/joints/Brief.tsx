import { useId, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import { withCount } from '../../core/design/withCount.ts';
import { findFamily } from '../../core/flexures/known.ts';
import type { Result } from '../../core/result.ts';
import { settled } from '../controls/settle.ts';
import { measuredSaid, MEASURE_IT, sizedSaid, sizeIt } from '../text/briefText.ts';
import { kindText } from '../text/kindText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { problemSaid } from '../text/problemSaid.ts';
import { CHOOSE } from '../text/shellText.ts';
import './brief.css';
import { BriefSentence } from './BriefSentence.tsx';
import type { BriefOf } from './briefSpecs.ts';
import { useChoosing } from './choosing.ts';
import { putting } from './putting.ts';

interface Props {
  readonly joint: Joint;
  readonly assessment: Result<Assessment>;
  readonly unit: LengthUnit;
  /** `said` is in the past tense with the old value; changes with the same `run` are one step to undo. */
  readonly onChange: (next: Joint, said: string, run?: string) => void;
}

const OPENER = 'another-kind';

/** The joint in the other way of saying its thickness: measured on a part, or as whole lines. */
function otherWay(joint: Joint, a: Assessment, unit: LengthUnit): { readonly next: Joint; readonly said: string } {
  if (joint.measuredThickness !== undefined) {
    return { next: withCount(joint, a.fit.nearest), said: sizedSaid(a, unit) };
  }
  const measuredThickness = settled(a.section.thickness, 'length', unit);
  return { next: { ...joint, measuredThickness }, said: measuredSaid(a, unit) };
}

/** What is wanted of the joint, as a sentence with every value live in it, and a second one for the rest. */
export function Brief({ joint, assessment, unit, onChange }: Props) {
  const [open, setOpen] = useState(false);
  const [refusal, setRefusal] = useState<string>();
  const detailsId = useId();
  const choose = useChoosing((state) => state.open);
  const family = findFamily(joint.family);
  if (!family)
    return <section className="brief">{assessment.ok ? null : problemSaid(assessment.problems[0], unit)}</section>;

  const put = putting(joint, family, unit, (next, said, run) => {
    setRefusal(undefined);
    onChange(next, said, run);
  });
  const of: BriefOf = { joint, family, unit, put };
  const text = kindText(joint.family);
  const measured = joint.measuredThickness !== undefined;

  function switchWay(): void {
    if (!assessment.ok) return;
    const { next, said } = otherWay(joint, assessment.value, unit);
    setRefusal(put(next, said, 'measuredThickness', MEASURE_IT));
  }

  const actions = (
    <>
      {' '}
      <button
        className="b quiet"
        type="button"
        aria-expanded={open}
        aria-controls={detailsId}
        onClick={() => setOpen(!open)}
      >
        {open ? 'Less' : 'More'}
      </button>{' '}
      <button id={OPENER} className="b quiet" type="button" onClick={() => choose('the open joint', OPENER)}>
        {CHOOSE.another}
      </button>{' '}
      {assessment.ok && (
        <button className="b quiet" type="button" onClick={switchWay}>
          {measured ? sizeIt(family.countOf) : MEASURE_IT}
        </button>
      )}
    </>
  );

  return (
    <section className="brief" aria-label="What is wanted">
      <BriefSentence className="wanted" template={measured ? text.measuredBrief : text.brief} of={of}>
        {actions}
      </BriefSentence>
      {refusal !== undefined && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
      <div id={detailsId}>
        {open && (
          <BriefSentence className="details" template={text.details(joint.movement.drive, joint.sizes)} of={of} />
        )}
      </div>
    </section>
  );
}
