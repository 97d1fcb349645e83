import type { Measure } from '../text/amountText.ts';
import { labelOfUse, LIST } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { DesignRow } from './DesignRow.tsx';
import { designName, filamentName, type Shown } from './designs.ts';
import type { UseFound } from './useFound.ts';

export interface ListedIn {
  readonly measure: Measure;
  readonly unit: LengthUnit;
  readonly found: UseFound;
  /** Key of the design that is pointed at, here or in the figure. */
  readonly picked: string | undefined;
  readonly onPick: (key: string | undefined) => void;
}

interface Props extends ListedIn {
  readonly shown: Shown;
  readonly rank?: number;
}

/** A design in the list, with the button that makes it a joint. */
export function DesignToUse({ shown: { key, design }, rank, measure, unit, found, picked, onPick }: Props) {
  const { joint, figures, isBest } = design;
  const { use, cannot } = found;
  const can = cannot === undefined;
  return (
    <DesignRow
      joint={joint}
      figures={figures}
      measure={measure}
      unit={unit}
      rank={rank}
      isPicked={picked === key}
      isBest={isBest}
      onPoint={(isIn) => onPick(isIn ? key : undefined)}
    >
      <button
        className="b use"
        type="button"
        data-key={key}
        aria-label={labelOfUse(designName(joint, unit), filamentName(joint))}
        aria-disabled={can ? undefined : true}
        title={cannot}
        onClick={can ? () => use(joint) : undefined}
      >
        {LIST.use}
      </button>
    </DesignRow>
  );
}
