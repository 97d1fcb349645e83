import { memo, useMemo } from 'react';
import { bentShapes, padTransform, sectorPath, STRAIGHT } from './bentPath.ts';
import type { Layout } from './layout.ts';
import { runsPath } from './paths.ts';
import { strainColour, type RampStops } from './ramp.ts';
import { strainMap } from './strainMap.ts';

/** Strips of colour on either side of the middle: each a px or two. */
function stripsFor(thickness: number): number {
  return Math.min(14, Math.max(4, Math.round(thickness / 2.6)));
}

/** What of a layout says how a leaf strains. */
interface Strained extends Pick<Layout, 'a' | 'figure' | 'sheet'> {
  readonly legend: RampStops;
}

/** The bent leaf, coloured by how much it strains there. */
export const StrainLayer = memo(function StrainLayer({
  layout,
  fraction,
  fade,
}: {
  readonly layout: Strained;
  readonly fraction: number;
  readonly fade: string;
}) {
  const { a, figure, sheet, legend } = layout;
  const map = useMemo(() => {
    const { along, roots } = strainMap(a, figure, stripsFor(figure.thickness * sheet.pxPerMm));
    const steps = roots.map(({ share, fixedRoot, movingRoot, leaf }) => ({
      share,
      leaf,
      fixed: runsPath(sheet, fixedRoot, true),
      moving: runsPath(sheet, movingRoot, true),
    }));
    return { along, steps };
  }, [a, figure, sheet]);
  const angle = figure.angle * fraction;
  if (Math.abs(angle) < STRAIGHT) return null;
  const roll = { sheet, length: figure.length, angle };
  const ink = (share: number) => ({ fill: strainColour(share * a.strain.nominal * Math.abs(fraction), legend) });
  return (
    <g>
      <g mask={`url(#${fade}-fixed)`}>
        {map.steps.map(({ share, fixed }) => (
          <path key={share} d={fixed} style={ink(share)} />
        ))}
      </g>
      <g transform={padTransform(roll)}>
        <g mask={`url(#${fade}-moving)`}>
          {map.steps.map(({ share, moving }) => (
            <path key={share} d={moving} style={ink(share)} />
          ))}
        </g>
      </g>
      {map.along.map(({ share, sector }) => (
        <path key={share} d={sectorPath(roll, sector)} style={ink(share)} />
      ))}
      {map.steps.map(
        ({ share, leaf }) => leaf.length > 0 && <path key={share} d={bentShapes(roll, leaf)} style={ink(share)} />,
      )}
    </g>
  );
});

/** Masks in which the colour of a root fades out where it opens into the pad, and the hatching of what goes wrong. */
export const Defs = memo(function Defs({
  layout,
  id,
}: {
  readonly layout: Pick<Layout, 'figure' | 'sheet'>;
  readonly id: string;
}) {
  const { figure, sheet } = layout;
  const s = sheet.pxPerMm;
  const { fillet, length, thickness } = figure;
  const high = (thickness / 2 + fillet) * s + 1;
  const mask = (name: string, root: number, out: 1 | -1) => {
    const [from, to] = [root + out * fillet * 0.3 * s, root + out * fillet * 0.95 * s];
    // No larger than the root: the smaller a mask, the cheaper each frame.
    const area = { x: Math.min(root, root + out * fillet * s) - 1, y: -high, width: fillet * s + 2, height: 2 * high };
    return (
      <g key={name}>
        <linearGradient id={`${id}-${name}-g`} gradientUnits="userSpaceOnUse" x1={from} x2={to} y1={0} y2={0}>
          <stop offset="0" stopColor="#fff" />
          <stop offset="1" stopColor="#000" />
        </linearGradient>
        <mask id={`${id}-${name}`} maskUnits="userSpaceOnUse" {...area}>
          <rect {...area} fill={`url(#${id}-${name}-g)`} />
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
