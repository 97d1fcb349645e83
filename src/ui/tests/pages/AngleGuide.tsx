import type { Point } from '../../../core/geometry/outline.ts';
import { GUIDE } from '../../text/testPageText.ts';
import { GRIP, guideHeight, guideWidth, type Guide } from './guides.ts';
import { arcPath, onwards } from './rounds.ts';
import { Scrolled } from './Scrolled.tsx';

const DASHES = '1.6 1';
/** Kept free for the width of lines [mm]. */
const BESIDE = 0.5;

const loopPath = (corners: readonly Point[]) => `M${corners.map(({ x, y }) => `${x} ${y}`).join('L')}Z`;

/** Strips turned along the arcs that they follow when they bend evenly, to be drawn at so many px to the millimetre. */
export function GuideLines({ guide: { strips, turn, outlines, targets, numbers } }: { readonly guide: Guide }) {
  const isGripped = targets.length === 0;
  return (
    <>
      {outlines.map((corners) => (
        <path key={loopPath(corners)} className="thin outline" d={loopPath(corners)} />
      ))}
      {targets.map((corners) => (
        <path key={loopPath(corners)} className="thin" d={loopPath(corners)} strokeDasharray={DASHES} />
      ))}
      {strips.map((strip) => {
        const { number, root, free, end } = strip;
        const tip = onwards(end, turn, GRIP);
        return (
          <g key={number}>
            {isGripped && <path className="hair" d={`M${root.x} ${root.y}v${-free - GRIP}`} strokeDasharray={DASHES} />}
            <path className="turned" d={`${arcPath(strip, turn)}${isGripped ? `L${tip.x} ${tip.y}` : ''}`} />
          </g>
        );
      })}
      {numbers.map(
        ({ number, x, y, from }) => from && <path key={number} className="hair" d={`M${from.x} ${from.y}L${x} ${y}`} />,
      )}
      {numbers.map(({ number, x, y }) => (
        <text key={number} className="guide-number" x={x} y={y + 1.1} textAnchor="middle">
          {number}
        </text>
      ))}
    </>
  );
}

/** A guide for itself, life size on screen and on paper. */
export function AngleGuide({ guide, says }: { readonly guide: Guide; readonly says: string }) {
  const { left, top } = guide.frame;
  const [wide, high] = [guideWidth(guide.frame) + 2 * BESIDE, guideHeight(guide.frame) + 2 * BESIDE];
  return (
    <figure className="angle-guide">
      <Scrolled className="of-figure" label={GUIDE.name}>
        <svg
          width={`${wide}mm`}
          height={`${high}mm`}
          viewBox={`${left - BESIDE} ${top - BESIDE} ${wide} ${high}`}
          role="img"
          aria-label={GUIDE.label}
        >
          <GuideLines guide={guide} />
        </svg>
      </Scrolled>
      <figcaption>
        <b>{GUIDE.name}, 1 : 1.</b> {says}
      </figcaption>
    </figure>
  );
}
