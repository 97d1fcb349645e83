import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import { FOUND_SOURCES } from '../text/foundText.ts';

/** Where the figures of the list come from: a mark beside one leads here. */
export function FoundSources() {
  return (
    <section className="found-sources" aria-label={FOUND_SOURCES.head}>
      <h3 className="h">{FOUND_SOURCES.head}</h3>
      <ul>
        {FOUND_SOURCES.rows.map(({ about, kind, name, says }) => (
          <li key={about} data-about={about} data-kind={kind}>
            <MarkShape kind={kind} />
            <span className="vh">{MARK_SHAPES[kind].says}</span>
            <span>
              <b>{name}</b>: {says}
            </span>
          </li>
        ))}
      </ul>
      <p className="small">
        {FOUND_SOURCES.full}{' '}
        <a className="b quiet" href={FOUND_SOURCES.recordsAt}>
          {FOUND_SOURCES.records}
        </a>
      </p>
    </section>
  );
}
