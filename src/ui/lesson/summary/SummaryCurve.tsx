import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { frameOf } from '../../charts/frame.ts';
import { JointMark } from '../../charts/JointMark.tsx';
import { jointPoint, lifeDomainOf, wornPoint } from '../../charts/lifeCurves.ts';
import { StrainLifePlot } from '../../charts/StrainLifePlot.tsx';
import { WornMark } from '../../charts/WornMark.tsx';
import { Scrolled } from '../../tests/pages/Scrolled.tsx';
import { SUMMARY } from '../../text/summaryText.ts';

interface Props {
  readonly assessment: Assessment;
  /** Room for it [px]. */
  readonly width: number;
  readonly height: number;
}

/** Half of the last figure of the axis stands beyond its end [px]. */
const RIGHT = 18;

/** The life curve with the joint on it, small: nothing of other filaments, nothing to drag. */
export function SummaryCurve({ assessment: a, width, height }: Props) {
  const domain = useMemo(() => lifeDomainOf(a), [a]);
  const frame = useMemo(
    () => frameOf({ width, height }, { span: domain.cycles, kind: 'log' }, { span: domain.strain, kind: 'log' }, RIGHT),
    [width, height, domain],
  );
  const joint = jointPoint(a);
  const worn = wornPoint(a);
  return (
    <figure className="summary-curve" style={{ width }}>
      <Scrolled className="of-figure" label={SUMMARY.curve}>
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={SUMMARY.curve}>
          <StrainLifePlot {...{ a, domain, frame }} filaments={NONE} cloud={NONE} narrow />
          {worn && <WornMark at={{ x: frame.x(worn.cycles), y: frame.y(worn.strain) }} box={frame.box} />}
          <JointMark at={{ x: frame.x(joint.cycles), y: frame.y(joint.strain) }} box={frame.box} />
        </svg>
      </Scrolled>
      <figcaption>
        <b>{SUMMARY.curve}</b> {a.section.countOf === 'lines' ? SUMMARY.curveAid : SUMMARY.curveAidLayers}
      </figcaption>
    </figure>
  );
}

const NONE: readonly [] = [];
