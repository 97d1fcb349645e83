import { findFamily } from '../../../core/flexures/known.ts';
import type { Joint } from '../../../core/design/joint.ts';
import { briefParts, type BriefPart } from '../../joints/briefSpecs.ts';
import { kindText } from '../../text/kindText.ts';
import type { LengthUnit } from '../../text/numbers.ts';

function saidPart(part: BriefPart): string {
  if (part.is === 'text') return part.text;
  if (part.is === 'value') return `${part.spec.figure}${part.spec.suffix}${part.stop}`;
  const { value, options } = part.spec;
  return `${options.find((option) => option.value === value)?.text ?? value}${part.stop}`;
}

/** What is wanted of a joint, in the sentence of its kind; nothing for a kind that is not known. */
export function saidBrief(joint: Joint, unit: LengthUnit): string {
  const family = findFamily(joint.family);
  if (!family) return '';
  const { brief, measuredBrief } = kindText(joint.family);
  const template = joint.measuredThickness === undefined ? brief : measuredBrief;
  // A sentence on paper changes nothing.
  const parts = briefParts(template, { joint, family, unit, put: () => undefined });
  return parts.map(saidPart).join('').replaceAll(/ {2,}/g, ' ').trim();
}
