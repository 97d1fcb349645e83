import { memo, useMemo } from 'react';
import type { Layout } from './layout.ts';
import { MarksView } from './MarksView.tsx';
import { boxPath, shrunk, stadiumPath } from './paths.ts';

/** The cut through the thin section, bead by bead. */
export const SectionView = memo(function SectionView({
  layout,
  hatch,
}: {
  readonly layout: Layout;
  readonly hatch: string;
}) {
  const { section, placed } = layout;
  const beads = useMemo(() => section.beads.map((box) => stadiumPath(shrunk(box, 0.3))).join(''), [section]);
  return (
    <g transform={`translate(${placed.section.x} ${placed.section.y})`}>
      <path className="bead-ends" d={beads} />
      <path className="fault" d={section.faults.map(boxPath).join('')} style={{ fill: `url(#${hatch})` }} />
      {section.breaks.map((d) => (
        <path key={d} className="L" d={d} />
      ))}
      <MarksView marks={section.marks} />
    </g>
  );
});
