import type { PageColumn, PageFact, PageTable } from '../../text/pieceBoxesText.ts';
import { Notches } from './Notches.tsx';
import { Scrolled } from './Scrolled.tsx';

function Choices({ choices }: { readonly choices: readonly string[] }) {
  return choices.map((choice) => (
    <span className="tick-box" key={choice}>
      {choice}
    </span>
  ));
}

function Fact({ fact: { name, text, choices } }: { readonly fact: PageFact }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{choices ? <Choices choices={choices} /> : text}</dd>
    </div>
  );
}

function Cell({
  column,
  text,
  isHead,
}: {
  readonly column: PageColumn;
  readonly text?: string | undefined;
  readonly isHead: boolean;
}) {
  const Tag = isHead ? 'th' : 'td';
  const scope = isHead ? { scope: 'row' } : {};
  if (text !== undefined)
    return (
      <Tag className="printed" {...scope}>
        {text} {column.isNotched && <Notches number={Number(text)} />}
      </Tag>
    );
  return (
    <Tag className={column.width} {...scope}>
      {column.choices && <Choices choices={column.choices} />}
    </Tag>
  );
}

/** Boxes to write in, one row a tally. */
export function Boxes({ table: { heading, facts, columns, rows } }: { readonly table: PageTable }) {
  return (
    <section className="boxes" aria-label={heading}>
      <div className="heading">
        <h3>{heading}</h3>
        <dl>
          {facts.map((fact) => (
            <Fact key={fact.name} fact={fact} />
          ))}
        </dl>
      </div>
      <Scrolled className="of-table" label={heading}>
        <table>
          <thead>
            <tr>
              {columns.map(({ head, width }) => (
                <th key={head} scope="col" className={width}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => (
              // Rows that are empty have nothing else to be told by.
              <tr key={`${at} ${row[0] ?? ''}`}>
                {columns.map((column, across) => (
                  <Cell key={column.head} column={column} text={row[across]} isHead={across === 0} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolled>
    </section>
  );
}
