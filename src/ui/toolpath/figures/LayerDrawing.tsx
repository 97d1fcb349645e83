import { useId, useMemo } from 'react';
import { pathsIn } from '../../../core/inspect/toolpath/laidLayers.ts';
import { Ground } from '../../drawing/Ground.tsx';
import { MarksView } from '../../drawing/MarksView.tsx';
import { scaleText, through } from '../../drawing/sheet.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { FailHatch } from '../../mesh/Hatches.tsx';
import { layerLabel, TOOLPATH_FIGURES } from '../../text/toolpathFigureText.ts';
import { useShown, useShownPlace } from '../shown.ts';
import { FailSquare } from './FailSquare.tsx';
import './figures.css';
import { LaidBeadsView } from './LaidBeadsView.tsx';
import { layerFigure, type LayerFigure } from './layerFigure.ts';
import { useLengthwise } from './useLengthwise.ts';

const stopsIn = ({ rings }: LayerFigure) => rings.filter(({ kind }) => kind === 'stop').length;

function Drawn({ figure }: { readonly figure: LayerFigure }) {
  const id = useId();
  const { sheet, beads, edges, open, rings, keepOut, marks, squares } = figure;
  return (
    <>
      <defs>
        <FailHatch id={`${id}-hatch`} />
        <clipPath id={`${id}-cut`}>
          <path d={edges.clip} />
        </clipPath>
      </defs>
      <Ground sheet={sheet} />
      <g clipPath={`url(#${id}-cut)`}>
        <LaidBeadsView beads={beads} />
        {open.map(({ corners, kind }) => {
          const d = through(corners, true);
          return (
            <g key={`${kind} ${d}`}>
              <path className="P" d={d} />
              <path className="open-place" style={{ fill: `url(#${id}-hatch)` }} d={d} />
            </g>
          );
        })}
      </g>
      <path className="K" d={keepOut} />
      <path className="L" d={edges.d} />
      {rings.map(({ x, y, reach, kind, number }) => (
        <circle key={number} className={kind === 'pad' ? 'L' : 'fault-ring'} cx={x} cy={y} r={reach} />
      ))}
      <MarksView marks={marks} />
      {squares.map(({ x, y }) => (
        <FailSquare key={`${x} ${y}`} x={x} y={y} />
      ))}
    </>
  );
}

/** Fig. 1: what the file lays at the thin section in the layer that is looked at, seen from above. */
export function LayerDrawing() {
  const { toolpath, unit } = useShown();
  const at = useShownPlace();
  const [ref, width] = useWidth<HTMLElement>();
  const page = useLengthwise(at?.placed, width);
  const { diameter } = toolpath.filament;
  const layer = at?.judged.audit.layers[at.layer - 1];
  const figure = useMemo(() => {
    if (!at || !layer || !page) return undefined;
    const { place, audit, wanted } = at.judged;
    const each = wanted.countOf === 'lines' ? wanted.each : (layer.widths?.mean ?? 0);
    const paths = pathsIn(place, at.placed.near, layer.layer);
    return layerFigure({ place, audit, layer, paths, diameter, each, unit }, page);
    // oxlint-disable-next-line react/exhaustive-deps -- what is shown is made anew each time; these are its parts
  }, [at?.judged, at?.placed, layer, page, diameter, unit]);
  if (!at || !layer) return null;
  const { sheet } = figure ?? {};
  const height = sheet ? sheet.bottom - sheet.top : 0;
  return (
    <figure className="tool-figure layer-drawing" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> Layer <b>{layer.layer}</b> as laid, from above, scale{' '}
          <b className="nw">{sheet ? scaleText(sheet.scale) : ''}</b>; grid {sheet && sheet.pxPerMm < 3 ? '5' : '1'} mm
        </span>
        <span>{TOOLPATH_FIGURES.layerAid}</span>
      </figcaption>
      {figure && sheet && (
        <svg
          width={sheet.width}
          height={height}
          viewBox={`0 ${sheet.top} ${sheet.width} ${height}`}
          role="img"
          aria-label={layerLabel(layer, at.judged.audit.layers.length, stopsIn(figure), unit)}
        >
          <Drawn figure={figure} />
        </svg>
      )}
    </figure>
  );
}
