import { soundness } from '../../core/material/choose.ts';
import { traitOf, type Trait } from '../../core/material/compare.ts';
import type { Quantity, WholeFilament } from '../../core/material/types.ts';
import { LIFE_HOLDS_FOR } from '../../core/life/assessLife.ts';
import { lettersWidth } from '../charts/letters.ts';
import { figureIn, rangeText } from '../text/figureText.ts';
import { isStrain, spokenTrait, TRAIT_NAMES } from '../text/filamentValueText.ts';
import { rowName } from '../text/filamentsText.ts';
import { pct, type RowAxis } from './axes.ts';
import type { Column } from './columns.ts';
import { RangeBar } from './RangeBar.tsx';
import { SourceMark } from './SourceMark.tsx';
import { ROLE } from './tableRoles.ts';

interface Props {
  readonly column: Column;
  readonly row: WholeFilament;
  readonly axis: RowAxis;
  /** Of the joint, in a column that it is compared in. */
  readonly strain: number | undefined;
  readonly mark: (of: Trait) => {
    readonly open: boolean;
    readonly controls: string;
    readonly onToggle: () => void;
    readonly inTable: boolean;
  };
}

/** Letter size of the figures, and room for a mark after one [px]. */
const LETTER = 13;
const MARK = 15;

/** Over the usual value, as far as the column goes. */
function placeOver(axis: RowAxis, typical: number, text: string): string {
  const width = lettersWidth(text, LETTER) + MARK;
  return `clamp(0px, calc(${pct(axis.at(typical))} - ${((width - MARK) / 2).toFixed(1)}px), calc(100% - ${width.toFixed(1)}px))`;
}

/** One value with its range, or two that share an axis. */
export function TraitCell({ column, row, axis, strain, mark }: Props) {
  const { key, head, sub, second, secondAs } = column;
  const quantity = traitOf(row, key);
  const other = second && traitOf(row, second);
  const name = rowName(row);
  const label = (
    <span className="lab" aria-hidden="true">
      {head}, {sub}
    </span>
  );
  if (!quantity) {
    return (
      <td {...ROLE.cell} className="trait none">
        {label}
        <span>no layers</span>
      </td>
    );
  }
  const figure = (trait: Trait, value: Quantity) => (
    <span className="nw" key={trait}>
      {trait === second && (
        <svg className="second" viewBox="-4 -4 8 8" aria-hidden="true">
          <path className="range-diamond" d="M0-3.4 3.4 0 0 3.4-3.4 0Z" />
        </svg>
      )}
      <span aria-hidden="true">{figureIn(value.typical, isStrain(trait))}</span>
      <SourceMark
        kind={soundness(value.provenance)}
        of={`${TRAIT_NAMES[trait].toLowerCase()} of ${name}`}
        {...mark(trait)}
      />
    </span>
  );
  const spoken = spokenTrait(TRAIT_NAMES[key], quantity, isStrain(key));
  const both = second && other ? `${spoken}. ${spokenTrait(TRAIT_NAMES[second], other, isStrain(second))}` : spoken;
  // Two numbers would cover each other over their bars, so they stand at the left.
  const two = secondAs === 'diamond';
  const text = figureIn(quantity.typical, isStrain(key));
  return (
    <td {...ROLE.cell} className={`trait ${secondAs ?? ''}`}>
      {label}
      <span className="figures" style={{ left: two ? 0 : placeOver(axis, quantity.typical, text) }}>
        {figure(key, quantity)}
        {two && second && other && figure(second, other)}
      </span>
      <RangeBar
        {...{ axis, quantity, secondAs }}
        second={other}
        label={both}
        joint={strain}
        room={secondAs === 'diamond' ? LIFE_HOLDS_FOR.roomTemperatureC : undefined}
      />
      <span className="between" aria-hidden="true">
        {rangeText(quantity, isStrain(key))}
      </span>
    </td>
  );
}
