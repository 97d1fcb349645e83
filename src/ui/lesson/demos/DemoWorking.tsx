import type { WorkLine } from '../../text/lessonDemoWorking.ts';

function Line({ left, fraction, text, note, aside, result }: WorkLine) {
  return (
    <p className={`work-line${aside === true ? ' aside' : ''}${result === true ? ' result' : ''}`}>
      {left !== undefined && (
        <>
          <span className="work-left">{left}</span>
          <span className="work-equals">=</span>
        </>
      )}
      {fraction !== undefined && (
        <span className="work-fraction">
          <span>{fraction.top}</span>
          <span className="vh"> over </span>
          <span>{fraction.under}</span>
        </span>
      )}
      {text !== undefined && <span>{text}</span>}
      {note !== undefined && <span className="work-note">{note}</span>}
    </p>
  );
}

/** A short working in built-up numbers. */
export function DemoWorking({
  lines,
  head,
  aid,
}: {
  readonly lines: readonly WorkLine[];
  readonly head: string;
  readonly aid: string;
}) {
  return (
    <section className="demo-working" aria-label={head}>
      <h3 className="h">
        {head}
        <span className="aside">{aid}</span>
      </h3>
      {lines.map((line, i) => (
        // A working is written anew as a whole, so the place of a line is its identity.
        // oxlint-disable-next-line react/no-array-index-key
        <Line key={i} {...line} />
      ))}
    </section>
  );
}
