import { memo, useMemo } from 'react';
import { strainColour, type RampStops } from '../ramp.ts';
import type { Sheet } from '../sheet.ts';
import { movedMembers, movingPads, padTransform, planesIn } from './movedPaths.ts';
import type { Posed } from './scene.ts';
import type { StateNow } from './state.ts';

interface Props {
  readonly scene: Posed;
  readonly sheet: Sheet;
  readonly state: StateNow;
  readonly stops: RampStops;
}

/** The joint as moved, in pencil: pads carried along, members coloured by how much they strain. */
export const MovedLayer = memo(function MovedLayer({ scene, sheet, state, stops }: Props) {
  const pads = useMemo(() => movingPads(scene, sheet), [scene, sheet]);
  return (
    <g>
      {pads.map(({ pad, d }, i) => (
        // oxlint-disable-next-line react/no-array-index-key -- the pads of a scene never change places
        <g key={i} transform={padTransform(sheet, pad, state)}>
          <path className="veil" d={d} />
          <path className="Wa" d={d} />
        </g>
      ))}
      {planesIn(scene).map((plane) => {
        const { cells, plain, heavy } = movedMembers(scene, sheet, state, stops, plane);
        return (
          <g key={plane}>
            {cells.map(({ strain, d }) => {
              const ink = strainColour(strain, stops);
              return <path key={strain} className="cell" d={d} style={{ fill: ink, stroke: ink }} />;
            })}
            <path className="Wa" d={plain} />
            {heavy !== '' && <path className="Wa heavy" d={heavy} />}
          </g>
        );
      })}
    </g>
  );
});
