import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import { sourcesOfPart } from '../text/meshSourcesText.ts';
import { MESH } from '../text/meshText.ts';
import { useChecked } from './checked.ts';

/** Where the figures of the sheet come from: a mark beside one leads here. */
export function MeshSources() {
  const { values, judged } = useChecked();
  return (
    <section className="from" aria-label={MESH.sources}>
      <h2 className="h">{MESH.sources}</h2>
      <table className="sources">
        <tbody>
          {sourcesOfPart(values.as.profile.filament, judged).map(({ about, kind, name, says }) => (
            <tr key={name} data-about={about} data-kind={kind}>
              <td className="m">
                <MarkShape kind={kind} />
                <span className="vh">{MARK_SHAPES[kind].says}</span>
              </td>
              <td>
                {name}
                <small>{says}</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
