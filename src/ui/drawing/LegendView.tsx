import { memo } from 'react';
import type { Point } from '../../core/geometry/outline.ts';
import type { LegendPlan } from './legendPlan.ts';
import { strainColour } from './ramp.ts';

const STEPS = 48;

/** A sheet with a legend on it. */
interface WithLegend {
  readonly legend: LegendPlan;
  readonly placed: { readonly legend: Point };
}

/** What the colours of strain mean, with the filament's limits ticked. */
export const LegendView = memo(function LegendView({ layout: { legend, placed } }: { readonly layout: WithLegend }) {
  const { bar, full, ticks, words, heading } = legend;
  const step = bar.width / STEPS;
  return (
    <g transform={`translate(${placed.legend.x} ${placed.legend.y})`}>
      {heading !== '' && (
        <text className="s12 halo" x={bar.x} y={bar.y - 13}>
          {heading}
        </text>
      )}
      {Array.from({ length: STEPS }, (_, i) => (
        <rect
          key={i}
          x={bar.x + i * step}
          y={bar.y}
          width={step + 0.4}
          height={bar.height}
          style={{ fill: strainColour((full * (i + 0.5)) / STEPS, legend) }}
        />
      ))}
      {ticks.map(({ x, figure, anchor }) => (
        <g key={figure}>
          <path className="L" d={`M${x} ${bar.y - 2}v${bar.height + 5}`} />
          <text className="s12 halo" x={x} y={bar.y + 25} textAnchor={anchor}>
            {figure}
          </text>
        </g>
      ))}
      {words.map(({ x, text, anchor }) => (
        <text key={text} className="s12 t2 halo" x={x} y={bar.y + 40} textAnchor={anchor}>
          {text}
        </text>
      ))}
    </g>
  );
});

/** Where the skin stands now. */
export function LegendPointer({ layout, strain }: { readonly layout: WithLegend; readonly strain: number }) {
  const { legend, placed } = layout;
  const x = placed.legend.x + legend.bar.x + legend.bar.width * Math.min(1, strain / legend.full);
  return <path className="Ia" d={`M${x.toFixed(1)} ${placed.legend.y + legend.bar.y}l-5-8h10Z`} />;
}
