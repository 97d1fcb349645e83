import type { Assessment } from '../../../core/design/assessment.ts';
import { allowableNamed } from '../../../core/design/allowables.ts';
import { legendPlan } from '../../drawing/legendPlan.ts';
import { LegendView } from '../../drawing/LegendView.tsx';

const AT = { x: 0, y: 0 };

/** What the colours of strain mean to each filament in the picture; by ear it is said beside every strain. */
export function StrainLegends({ answers }: { readonly answers: readonly Assessment[] }) {
  const each = answers.filter((a, i) => answers.findIndex((other) => other.filament.id === a.filament.id) === i);
  return (
    <div className="demo-legends" aria-hidden="true">
      {each.map((a) => {
        const limit = (name: 'repeated' | 'yield') => allowableNamed(a.allowables, name).limit;
        const legend = legendPlan(limit('repeated'), limit('yield'), false);
        return (
          <div key={a.filament.id}>
            <span>{a.filament.name}</span>
            <svg width={legend.width + 20} height={legend.height + 4}>
              <LegendView layout={{ legend, placed: { legend: AT } }} />
            </svg>
          </div>
        );
      })}
    </div>
  );
}
