import { DEMO, DEMO_KEYS } from '../../text/lessonDemoText.ts';

/** The keys of a demonstration, always in sight. */
export function KeyList() {
  return (
    <section className="demo-keys" aria-label={DEMO.keys}>
      <dl>
        {DEMO_KEYS.map(([keys, does]) => (
          <div key={does}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
