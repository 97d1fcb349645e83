import type { Assessment } from '../../../core/design/assessment.ts';
import { kindText } from '../../text/kindText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { capital } from '../../text/said.ts';
import { profileLine, SUMMARY } from '../../text/summaryText.ts';
import { saidBrief } from './saidBrief.ts';

interface Props {
  readonly assessment: Assessment;
  readonly part: string;
  readonly unit: LengthUnit;
}

/** A line of the head: filled in, or to be filled in. */
function Line({ name, text = '' }: { readonly name: string; readonly text?: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{text}</dd>
    </div>
  );
}

/** What the page is about, and a line for the date. */
export function SummaryHead({ assessment, part, unit }: Props) {
  const { joint, filament } = assessment;
  return (
    <header>
      <div>
        <h2>{joint.name}</h2>
        <p>{saidBrief(joint, unit)}</p>
      </div>
      <dl>
        <Line name={SUMMARY.part} text={part} />
        <Line name={SUMMARY.kind} text={capital(kindText(joint.family).name)} />
        <Line name={SUMMARY.filament} text={filament.name} />
        <Line name={SUMMARY.profile} text={profileLine(assessment, unit)} />
        <Line name={SUMMARY.date} />
      </dl>
    </header>
  );
}
