import type { Problem } from '../../core/problems.ts';
import { problemText } from '../text/problemText.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { damageText, sizeText, unitChoice, unitDoubt, unitReadText } from '../text/inspectText.ts';
import { bytesText, CHECK } from '../text/checkText.ts';
import { factsRows, keepUnitText, readInText } from '../text/meshText.ts';
import { useChecked } from './checked.ts';
import { readAs } from './partCheck.ts';

/** The unit, and the others in which the size would be as likely. */
export function UnitQuestion() {
  const { part, unit: shown } = useChecked();
  const { unit, facts } = part;
  return (
    <div className="unit-question">
      <p>
        {unitReadText(unit)} {unitDoubt(unit)}
      </p>
      {unit.orElse.length > 0 && (
        <ul>
          {unit.orElse.map((other) => (
            <li key={other}>
              <button className="b" type="button" onClick={() => readAs(other)}>
                {readInText(other)}
              </button>
              <small>{unitChoice(other, unit, facts.box, shown)}</small>
            </li>
          ))}
          <li>
            <button className="b" type="button" onClick={() => readAs(unit.unit)}>
              {keepUnitText(unit.unit)}
            </button>
            <small>{unitChoice(unit.unit, unit, facts.box, shown)}</small>
          </li>
        </ul>
      )}
    </div>
  );
}

function Notes({ notes }: { readonly notes: readonly Problem[] }) {
  const { unit } = useChecked();
  return notes.map((note) => (
    <li key={note.message}>
      <span className="caution">
        <VerdictShape grade="caution" />
      </span>
      {problemText(note, unit)}
    </li>
  ));
}

/** What the file holds, and in what state it came. */
export function FileFacts() {
  const { part, bytes, values, unit } = useChecked();
  const { damage, notes, facts } = part;
  return (
    <section className="file" aria-label={CHECK.file}>
      <h2 className="h">
        {CHECK.file}
        <span className="aside">{bytesText(bytes)}</span>
      </h2>
      <table>
        <tbody>
          {factsRows(part, sizeText(facts.box, unit), sizeText(facts.box, unit, values.as.scale), values.as.scale).map(
            ([name, value]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="r">{value}</td>
              </tr>
            ),
          )}
        </tbody>
      </table>
      {damage.length + notes.length > 0 && (
        <ul className="damage">
          {damage.map((one) => (
            <li key={one.kind}>
              <span className={one.mended >= one.count ? 'beyond' : 'caution'}>
                <VerdictShape grade={one.mended >= one.count ? 'pass' : 'caution'} />
              </span>
              {damageText(one)}
            </li>
          ))}
          <Notes notes={notes} />
        </ul>
      )}
      <p className="small">
        {unitReadText(part.unit)} {unitDoubt(part.unit)}
      </p>
    </section>
  );
}
