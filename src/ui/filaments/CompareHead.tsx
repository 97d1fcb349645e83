import type { Span } from '../charts/frame.ts';
import { cycleTicks } from '../charts/ticks.ts';
import { grouped } from '../text/numbers.ts';
import { pct, type RowAxis } from './axes.ts';
import { COLUMNS } from './columns.ts';
import { ROLE } from './tableRoles.ts';
import { Upright } from './Upright.tsx';

/** The figures of an axis over its column. */
function AxisHead({ ticks }: { readonly ticks: RowAxis['ticks'] }) {
  return (
    <svg className="axis-head" aria-hidden="true">
      {ticks.map(({ share, text }) => (
        <g key={share}>
          <Upright className="L" at={share} y={[15, 20]} />
          <text
            className="s12 t2"
            x={pct(share)}
            y="12"
            textAnchor={share < 0.12 ? 'start' : share > 0.88 ? 'end' : 'middle'}
          >
            {text}
          </text>
        </g>
      ))}
    </svg>
  );
}

interface Props {
  readonly axes: readonly RowAxis[];
  readonly cycles: Span;
  /** By the joint; without one no column tells of it. */
  readonly wanted: number | undefined;
}

/** Names, units and axes of the columns. */
export function CompareHead({ axes, cycles, wanted }: Props) {
  const [low, high] = cycles;
  const lives = cycleTicks([low, 1e6], false)
    .filter((_, decade) => decade % 3 === 0)
    .map(({ at, text }) => ({ share: Math.log(at / low) / Math.log(high / low), text }));
  return (
    <thead {...ROLE.group}>
      <tr {...ROLE.row}>
        <th {...ROLE.column} scope="col">
          Filament
          <small>opens its record</small>
        </th>
        {COLUMNS.map(({ key, head, sub }, at) => (
          <th {...ROLE.column} scope="col" key={key}>
            {head}
            <small>{sub}</small>
            <AxisHead ticks={axes[at]?.ticks ?? []} />
          </th>
        ))}
        <th {...ROLE.column} scope="col">
          Life
          <small>cycles; up: strain</small>
          <AxisHead ticks={lives} />
        </th>
        {wanted !== undefined && (
          <th {...ROLE.column} scope="col" className="r">
            At your joint
            <small>
              half break by;
              <br />
              reach {grouped(wanted)}
            </small>
          </th>
        )}
      </tr>
    </thead>
  );
}
