import type { Assessment } from '../../core/design/assessment.ts';
import { meanStrain } from '../../core/life/meanStrain.ts';
import type { Wear } from '../../core/life/lifeAnswer.ts';
import { weakest } from '../../core/material/choose.ts';
import { Mark } from '../app/Mark.tsx';
import type { LengthUnit } from '../text/numbers.ts';
import { swingText, timesText } from '../text/useText.ts';
import {
  ALL_THE_WEAR,
  FIRST_FLEX_WEARS,
  ratioText,
  shareOf,
  strainText,
  WEAR_ADDS_UP,
  WEAR_HEADS,
  WHO_WEARS,
  WHO_WEARS_AID,
  lifeFigure,
} from '../text/wearText.ts';
import { ShareBar } from './ShareBar.tsx';
import { swingOfWear } from './swings.ts';

const FIGURES = [WEAR_HEADS.peak, WEAR_HEADS.ratio, WEAR_HEADS.mean, WEAR_HEADS.alone, WEAR_HEADS.share];

function WearRow({ a, wear, at, unit }: { a: Assessment; wear: Wear; at: number; unit: LengthUnit }) {
  const swing = swingOfWear(a.joint, at);
  return (
    <tr>
      <th scope="row">
        {swingText(swing, a.drive.measure, unit)}
        <small>{timesText(swing.cycles)}</small>
      </th>
      <td data-head={WEAR_HEADS.peak}>{strainText(wear.peakStrain)}</td>
      <td data-head={WEAR_HEADS.ratio}>{ratioText(wear.ratio)}</td>
      <td data-head={WEAR_HEADS.mean}>{strainText(meanStrain(wear.peakStrain, wear.ratio))}</td>
      <td data-head={WEAR_HEADS.alone}>{lifeFigure(wear.median, a.life.maxReportableCycles)}</td>
      <td data-head={WEAR_HEADS.share}>
        {a.life.breaksOnFirstFlex ? '' : shareOf(wear.share)}
        <ShareBar share={a.life.breaksOnFirstFlex ? 0 : wear.share} />
      </td>
    </tr>
  );
}

/** Each kind of flex: how hard it strains, how long it would last alone, and its part of the wear. */
export function WearTable({ assessment: a, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const { wear, breaksOnFirstFlex } = a.life;
  const says = breaksOnFirstFlex ? FIRST_FLEX_WEARS : wear.length === 1 ? ALL_THE_WEAR : WEAR_ADDS_UP;
  return (
    <>
      <h3 className="h">
        <span>
          {WHO_WEARS}
          <Mark
            kind={weakest(a.provenance.strain, a.provenance.life)}
            about={a.life.wear.length > 1 ? 'wear' : 'life'}
          />
        </span>
        <span className="aside">{WHO_WEARS_AID}</span>
      </h3>
      <table className="wear">
        <thead>
          <tr>
            <th scope="col">{WEAR_HEADS.flex}</th>
            {FIGURES.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {wear.map((one, at) => (
            // The order is that of the joint's own movements, which have no other name.
            <WearRow key={at} a={a} wear={one} at={at} unit={unit} />
          ))}
        </tbody>
      </table>
      <p className="small">{says}</p>
    </>
  );
}
