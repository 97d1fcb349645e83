import { memo, useMemo } from 'react';
import { padTransform, sectorPath, STRAIGHT } from './bentPath.ts';
import type { Layout } from './layout.ts';
import { runsPath } from './paths.ts';
import { strainColour } from './ramp.ts';
import { strainLevels } from './strainCells.ts';

/** Strips across the thickness: each a px or two, an even number so that the middle lies between two. */
function bandsFor(thickness: number): number {
  return 2 * Math.min(14, Math.max(3, Math.round(thickness / 3.2)));
}

/** The bent leaf, coloured by how much it strains there. */
export const StrainLayer = memo(function StrainLayer({
  layout,
  fraction,
  fade,
}: {
  readonly layout: Layout;
  readonly fraction: number;
  readonly fade: string;
}) {
  const { a, figure, sheet, legend } = layout;
  const levels = useMemo(() => {
    const bands = bandsFor(figure.thickness * sheet.pxPerMm);
    return strainLevels(a, figure, bands).map((level) => ({
      ...level,
      fixedPath: runsPath(sheet, level.fixed, true),
      movingPath: runsPath(sheet, level.moving, true),
    }));
  }, [a, figure, sheet]);
  const angle = figure.angle * fraction;
  if (Math.abs(angle) < STRAIGHT) return null;
  const roll = { sheet, length: figure.length, angle };
  const colours = levels.map(({ share }) => strainColour(share * a.strain.nominal * Math.abs(fraction), legend));
  return (
    <g className="strain">
      <g mask={`url(#${fade}-fixed)`}>
        {levels.map(({ share, fixedPath }, i) => (
          <path key={share} d={fixedPath} style={{ color: colours[i] }} />
        ))}
      </g>
      <g transform={padTransform(roll)}>
        <g mask={`url(#${fade}-moving)`}>
          {levels.map(({ share, movingPath }, i) => (
            <path key={share} d={movingPath} style={{ color: colours[i] }} />
          ))}
        </g>
      </g>
      {levels.map(({ share, leaf }, i) => (
        <path key={share} d={leaf.map((sector) => sectorPath(roll, sector)).join('')} style={{ color: colours[i] }} />
      ))}
    </g>
  );
});

/** Masks in which the colour of a root fades out where it opens into the pad, and the hatching of what goes wrong. */
export const Defs = memo(function Defs({ layout, id }: { readonly layout: Layout; readonly id: string }) {
  const { figure, sheet } = layout;
  const s = sheet.pxPerMm;
  const { fillet, length, box } = figure;
  const high = (box.top - box.bottom) * s;
  const mask = (name: string, root: number, out: 1 | -1) => {
    const [from, to] = [root + out * fillet * 0.3 * s, root + out * fillet * 0.95 * s];
    return (
      <g key={name}>
        <linearGradient id={`${id}-${name}-g`} gradientUnits="userSpaceOnUse" x1={from} x2={to} y1={0} y2={0}>
          <stop offset="0" stopColor="#fff" />
          <stop offset="1" stopColor="#000" />
        </linearGradient>
        <mask
          id={`${id}-${name}`}
          maskUnits="userSpaceOnUse"
          x={root - (fillet + 1) * s}
          y={-high}
          width={2 * (fillet + 1) * s}
          height={2 * high}
        >
          <rect
            x={root - (fillet + 1) * s}
            y={-high}
            width={2 * (fillet + 1) * s}
            height={2 * high}
            fill={`url(#${id}-${name}-g)`}
          />
        </mask>
      </g>
    );
  };
  return (
    <defs>
      {mask('fixed', sheet.rootX, -1)}
      {mask('moving', sheet.rootX + length * s, 1)}
      <pattern id={`${id}-hatch`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 2.5H5" style={{ stroke: 'var(--fail)', strokeWidth: 1.3 }} />
      </pattern>
    </defs>
  );
});
