import { memo } from 'react';
import type { JudgedPlace } from '../../../core/inspect/toolpath/judgedPlace.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { STAVE_HEADS, wantsText } from '../../text/toolpathFigureText.ts';
import { Balloon } from '../../mesh/Balloon.tsx';
import { LANE, type StavePlan } from './stavePlan.ts';

function Head({
  x,
  words,
  anchor,
}: {
  readonly x: number;
  readonly words: readonly string[];
  readonly anchor?: 'middle';
}) {
  return words.map((word, i) => (
    <text key={word} className="s12 t2" x={x} y={12 + 14 * i} textAnchor={anchor ?? 'start'}>
      {word}
    </text>
  ));
}

interface Props {
  readonly plan: StavePlan;
  readonly wanted: JudgedPlace['wanted'];
  readonly unit: LengthUnit;
}

/** Heads, axes and rulings. */
export const StavePaper = memo(function StavePaper({ plan, wanted, unit }: Props) {
  const { axis, heights, section, lines, widths, starts, top, bottom } = plan;
  const isLines = wanted.countOf === 'lines';
  return (
    <g aria-hidden="true">
      <path
        className="L"
        d={`M${axis} ${top}V${bottom}${heights.map(({ at }) => `M${axis} ${at.toFixed(1)}h-5`).join('')}`}
      />
      {heights.map(({ at, text }) => (
        <text key={at} className="s12" x={axis - 8} y={at + 4} textAnchor="end">
          {text}
        </text>
      ))}
      <text className="s12 t2" x={axis - 8} y={top - 12} textAnchor="end">
        {unit === 'mm' ? 'mm' : 'in'}
      </text>
      <Head x={section.middle} words={STAVE_HEADS.laid} anchor="middle" />
      <Head x={lines.left} words={isLines ? STAVE_HEADS.lines : STAVE_HEADS.deep} />
      <Head x={widths.left} words={STAVE_HEADS.widths(unit)} />
      <Head x={starts.left} words={STAVE_HEADS.starts} />
      {[lines, widths].map(({ marks, left }) => (
        <g key={left}>
          <path className="G5" d={marks.map(({ at }) => `M${at.toFixed(1)} ${top}V${bottom}`).join('')} />
          {marks.map(({ at, text }) => (
            <text
              key={at}
              className={plan.wanted && at === plan.wanted.lines ? 's12 ta' : 's12'}
              x={at}
              y={top - 8}
              textAnchor="middle"
            >
              {text}
            </text>
          ))}
        </g>
      ))}
    </g>
  );
});

/** What is wanted, through all rows. */
export const StaveWanted = memo(function StaveWanted({ plan, wanted, unit }: Props) {
  const { section, top, bottom, wanted: at } = plan;
  const half = section.wanted;
  return (
    <g aria-hidden="true">
      {at && <path className="wanted-line" d={`M${at.lines} ${top}V${bottom}M${at.widths} ${top}V${bottom}`} />}
      {at && (
        <text className="s12 ta" x={at.widths} y={top - 8} textAnchor="middle">
          {at.widthText}
        </text>
      )}
      {half !== undefined && (
        <>
          <path
            className="wanted-line"
            d={[-half, half].map((off) => `M${section.middle + off} ${top - 10}V${bottom + 4}`).join('')}
          />
          <text className="s12 ta halo" x={section.middle} y={top - 15} textAnchor="middle">
            {wantsText(wanted.thickness, unit)}
          </text>
        </>
      )}
    </g>
  );
});

/** Brackets that tie layers to the findings below. */
export const StaveBrackets = memo(function StaveBrackets({ plan }: { readonly plan: StavePlan }) {
  return (
    <g aria-hidden="true">
      {plan.brackets.map(({ number, y, lane, runs }) => {
        const x = plan.laneAt(lane) + 6;
        const spine = runs.length > 1 ? `M${x} ${runs[0]![0] + 1.5}V${runs.at(-1)![1] - 1.5}` : '';
        return (
          <g key={`${number} ${y}`}>
            <path
              className="L"
              d={`${runs.map(([from, to]) => `M${x - 5} ${from + 1.5}h5V${to - 1.5}h-5`).join('')}${spine}`}
            />
            <Balloon x={x + LANE - 16} y={y} text={String(number)} isOn={false} />
          </g>
        );
      })}
    </g>
  );
});
