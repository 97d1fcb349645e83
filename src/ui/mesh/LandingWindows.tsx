import { MESH_FIGURES, windowSays } from '../text/meshFigureText.ts';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { isChosen, sectionOf, useChecked } from './checked.ts';
import { numbersText } from './numbersText.ts';
import { LandingWindow } from './LandingWindow.tsx';

const SCALE = 10;
const GAP = 16;
/** No window narrower, and none wider than it needs to be [px]. */
const LEAST = 240;
/** So many windows are shown; of more, the chosen one takes the last place. */
const MOST = 6;

/** Fig. 3: one window for each different thin section. */
export function LandingWindows() {
  const checked = useChecked();
  const { groups, values, unit } = checked;
  const [only] = groups.length === 1 ? groups : [];
  const [ref, width] = useWidth<HTMLDivElement>();
  const [pxPerMm] = usePxPerMm();
  const columns = Math.max(1, Math.min(groups.length, 3, Math.floor((width + GAP) / (LEAST + GAP))));
  const each = Math.floor((width - GAP * (columns - 1)) / columns);
  const by = SCALE * pxPerMm;
  const chosenAt = groups.findIndex((group) => isChosen(group, checked));
  const shown =
    groups.length <= MOST || chosenAt < MOST
      ? groups.slice(0, MOST)
      : [...groups.slice(0, MOST - 1), ...groups.slice(chosenAt, chosenAt + 1)];
  const thickest = Math.max(...groups.map(({ one }) => one.flexure.thickness.least)) * values.as.scale;
  const height = Math.round(Math.min(300, Math.max(124, (thickest + 2.4) * by)));
  return (
    <figure className="landings">
      <figcaption className="cap">
        <span>
          <b>Fig. 3</b> {MESH_FIGURES.landing}, scale <b className="nw">10 : 1</b>
        </span>
        <span>
          {groups.length > shown.length ? MESH_FIGURES.someShown(shown.length, groups.length) : MESH_FIGURES.landingAid}
        </span>
      </figcaption>
      <div
        className="windows"
        ref={ref}
        style={{
          gridTemplateColumns: only && width > 620 ? 'auto minmax(0, 1fr)' : `repeat(${columns}, minmax(0, 1fr))`,
        }}
      >
        {width > 0 &&
          shown.map((alike) => {
            const section = sectionOf(checked, alike.one);
            return (
              section && (
                <LandingWindow
                  key={alike.one.flexure.number}
                  {...{ alike, section, height }}
                  width={groups.length === 1 ? Math.min(each, 420) : each}
                  pxPerMm={by}
                />
              )
            );
          })}
        {only && columns === 1 && width > 620 && (
          <p className="beside">
            {windowSays(numbersText(only.numbers), only.numbers.length > 1, only.one, values.as, unit)}
          </p>
        )}
      </div>
    </figure>
  );
}
