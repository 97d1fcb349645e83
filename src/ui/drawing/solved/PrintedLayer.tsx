import { memo, useMemo } from 'react';
import { Beads } from '../Beads.tsx';
import { runsPath } from '../paths.ts';
import { FINEST, type Sheet } from '../sheet.ts';
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
  const pads = useMemo(() => scene.pads.map(({ loops }) => runsPath(sheet, loops, true)), [scene, sheet]);
  const line = scene.a.joint.profile.lineWidth * sheet.pxPerMm;
  const hasEdge = line >= FINEST;
  return (
    <g>
      <Filling id={`${id}-fill`} line={line} />
      {pads.map((d, i) => (
        // oxlint-disable-next-line react/no-array-index-key -- the pads of a scene never change places
        <g key={i} className="pad">
          <path d={d} fill={`url(#${id}-fill)`} />
          {hasEdge && (
            <>
              <clipPath id={`${id}-pad${i}`}>
                <path d={d} clipRule="evenodd" />
              </clipPath>
              <g clipPath={`url(#${id}-pad${i})`}>
                <path className="edge-line" d={d} style={{ stroke: 'var(--ink)', strokeWidth: 2 * line + 1.6 }} />
                <path className="edge-line" d={d} style={{ stroke: 'var(--bead)', strokeWidth: 2 * line }} />
              </g>
            </>
          )}
          <path className="W" d={d} />
        </g>
      ))}
      {members.map((member) => (
        <g key={member.id}>
          {member.fill === 'bead' && <path className="solid" d={member.whole} />}
          {member.fill === 'hatch' && <path d={member.whole} fill={`url(#${id}-fill)`} />}
          {member.beads !== '' && <Beads d={member.beads} width={line} />}
          <path className="W member" d={member.edges} />
        </g>
      ))}
    </g>
  );
});

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
