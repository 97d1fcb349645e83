import { lazy, type ReactNode } from 'react';
import type { Figures } from '../../core/find/findAnswer.ts';
import type { Joint } from '../../core/design/joint.ts';
import { Late } from '../app/Late.tsx';
import { Mark } from '../app/Mark.tsx';
import { assessOnce } from '../joints/assessOnce.ts';
import { Pictogram } from '../joints/Pictogram.tsx';
import { effortText, type Measure } from '../text/amountText.ts';
import { BY, chanceText, medianText, roomText, strainText } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { designName, filamentName } from './designs.ts';

interface FiguresProps {
  readonly joint: Joint;
  readonly figures: Figures;
  readonly measure: Measure;
  readonly unit: LengthUnit;
}

const LifeSizePicture = lazy(() => import('./LifeSizePicture.tsx'));

/** Its silhouette, life size on a millimetre grid; the sign of its kind until that has come. */
function DesignPicture({ joint }: { readonly joint: Joint }) {
  return (
    <span className="found-picture">
      <Late fallback={<Pictogram family={joint.family} />}>
        <LifeSizePicture joint={joint} />
      </Late>
    </span>
  );
}

/** What is known of a design, in figures with the marks of where they come from. */
function DesignFigures({ joint, figures, measure, unit }: FiguresProps) {
  const assessed = assessOnce(joint);
  const provenance = assessed.ok ? assessed.value.provenance : undefined;
  return (
    <>
      <b className="found-name">{designName(joint, unit)}</b>
      <span className="found-line">
        {filamentName(joint)}; {roomText(figures, unit)} of room
      </span>
      <span className="found-line">
        <span className="nw">
          <span className="num">{chanceText(figures.chance)}</span> reach it
          {provenance && <Mark kind={provenance.life} about="life" />}
        </span>
        ; <span className="nw">{medianText(figures)}</span>
      </span>
      <span className="found-line">
        <span className="nw">
          {strainText(figures.strain)}
          {provenance && <Mark kind={provenance.strain} about="strain" />}
        </span>
        ;{' '}
        <span className="nw">
          <span className="num">{effortText(figures.effort, measure)}</span>
          {provenance && <Mark kind={provenance.effort} about="effort" />}
        </span>
        ; <span className="nw">{BY[figures.by]}</span>
      </span>
    </>
  );
}

interface RowProps extends FiguresProps {
  readonly id?: string;
  readonly rank?: number | undefined;
  readonly isPicked?: boolean;
  readonly isBest?: boolean;
  /** What stands after its figures. */
  readonly below?: ReactNode;
  readonly children: ReactNode;
  readonly onPoint?: (isIn: boolean) => void;
}

/** A design in a list: its rank, its picture, its figures, and what can be done with it. */
export function DesignRow({ rank, isPicked = false, isBest = false, below, children, onPoint, ...of }: RowProps) {
  const looks = ['found', isPicked ? 'picked' : '', isBest ? 'best' : ''].filter((look) => look !== '').join(' ');
  return (
    // What is pointed at is marked in the figure too; what can be pressed is the button inside.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <li
      className={looks}
      onPointerEnter={() => onPoint?.(true)}
      onPointerLeave={() => onPoint?.(false)}
      onFocus={() => onPoint?.(true)}
      onBlur={() => onPoint?.(false)}
    >
      <span className="found-rank">{rank}</span>
      <DesignPicture joint={of.joint} />
      <span className="found-says">
        <DesignFigures {...of} />
        {below}
      </span>
      {children}
    </li>
  );
}
