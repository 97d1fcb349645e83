import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import './foot.css';
import { LessonLinks } from './LessonLinks.tsx';
import { NumberSources } from './NumberSources.tsx';
import { PrintNotes } from './PrintNotes.tsx';
import { ToDraw } from './ToDraw.tsx';

/** What to carry away: dimensions and files, how to print it, where the numbers come from, and the pages for others. */
export function Foot({ assessment, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  return (
    <div className="foot">
      <ToDraw assessment={assessment} unit={unit} />
      <PrintNotes assessment={assessment} unit={unit} />
      <NumberSources assessment={assessment} />
      <LessonLinks />
    </div>
  );
}
