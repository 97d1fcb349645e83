import { memo, useMemo } from 'react';
import { Beads } from '../Beads.tsx';
import { runsPath } from '../paths.ts';
import { FINEST, type Sheet } from '../sheet.ts';
import { planesIn } from './movedPaths.ts';
import { printedMembers } from './printedPaths.ts';
import type { Scene } from './scene.ts';

interface Props {
  readonly scene: Scene;
  readonly sheet: Sheet;
  /** Start of the ids of patterns and clips, of this drawing alone. */
  readonly id: string;
}

/** The joint as printed, in ink: pads with their filling and the line round their edge, members line by line. */
export const PrintedLayer = memo(function PrintedLayer({ scene, sheet, id }: Props) {
  const members = useMemo(() => printedMembers(scene, sheet), [scene, sheet]);
  const pads = useMemo(
    () => scene.pads.map(({ loops, plane }, i) => ({ plane, clip: `${id}-pad${i}`, d: runsPath(sheet, loops, true) })),
    [scene, sheet, id],
  );
  const line = scene.a.joint.profile.lineWidth * sheet.pxPerMm;
  const fill = `url(#${id}-fill)`;
  return (
    <g>
      <Filling id={`${id}-fill`} line={line} />
      {planesIn(scene).map((plane) => {
        const [bodies, bands] = [pads, members].map((all) => all.filter((one) => one.plane === plane)) as [
          typeof pads,
          typeof members,
        ];
        return (
          <g key={plane}>
            {/* Outlines first, all of them, and what they hold over them: so no line parts a member from its pad. */}
            {bodies.map(({ d, clip }) => (
              <path key={clip} className="W outline" d={d} />
            ))}
            {bands.map(({ id: key, edges }) => (
              <path key={key} className="W outline" d={edges} />
            ))}
            {bodies.map(({ d, clip }) => (
              <PadInside key={clip} d={d} clip={clip} fill={fill} line={line} />
            ))}
            {bands.map((member) => (
              <g key={member.id}>
                {member.fill === 'bead' && <path className="solid" d={member.whole} />}
                {member.fill === 'hatch' && <path d={member.whole} fill={fill} />}
                {member.beads !== '' && (
                  <g className={member.fill === 'hatch' ? 'runs-on' : undefined}>
                    <Beads d={member.beads} width={line} />
                  </g>
                )}
              </g>
            ))}
          </g>
        );
      })}
    </g>
  );
});

/** What is inside a pad: its filling, and the line round its edge where that can be told apart. */
function PadInside({
  d,
  clip,
  fill,
  line,
}: {
  readonly d: string;
  readonly clip: string;
  readonly fill: string;
  readonly line: number;
}) {
  return (
    <g className="pad">
      <path d={d} fill={fill} />
      {line >= FINEST && (
        <>
          <clipPath id={clip}>
            <path d={d} clipRule="evenodd" />
          </clipPath>
          <g clipPath={`url(#${clip})`}>
            <path className="edge-line" d={d} style={{ stroke: 'var(--ink)', strokeWidth: 2 * line + 1.6 }} />
            <path className="edge-line" d={d} style={{ stroke: 'var(--bead)', strokeWidth: 2 * line }} />
          </g>
        </>
      )}
    </g>
  );
}

/** Filling lines of a pad, at true width while they can be told apart. */
function Filling({ id, line }: { readonly id: string; readonly line: number }) {
  const pitch = Math.max(7, 2 * line);
  return (
    <pattern id={id} width={pitch} height={pitch} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width={pitch} height={pitch} style={{ fill: 'var(--sheet)' }} />
      <path d={`M${pitch / 2} 0V${pitch}`} style={{ stroke: 'var(--line)', strokeWidth: Math.max(0.8, pitch / 2) }} />
      <path
        d={`M${pitch / 2} 0V${pitch}`}
        style={{ stroke: 'var(--sheet)', strokeWidth: Math.max(0, pitch / 2 - 1.5) }}
      />
    </pattern>
  );
}
