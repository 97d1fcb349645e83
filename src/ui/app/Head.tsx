import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { SAID } from '../text/shellText.ts';
import { NameField } from './NameField.tsx';
import { PartBar } from './PartBar.tsx';
import { PLACES, type Place } from './places.ts';

/** The mark: one bead, laid along a bend. */
const BEAD = 'M2 15H12C22 15 25 11 30 3';

/** Name of the program, the places, the part's name, and how lengths and the sheet are shown. */
export function Head({ place }: { place: Place }) {
  const { name, invented } = useSession((state) => state.part);
  const renamePart = useSession((state) => state.renamePart);
  const { theme, unit, setTheme, setUnit } = useChoices();
  const otherTheme = theme === 'paper' ? 'blueprint' : 'paper';
  const otherUnit = unit === 'mm' ? 'inch' : 'mm';
  return (
    <header className="head">
      <h1 className="mark">
        <svg viewBox="0 0 34 18" aria-hidden="true" fill="none" strokeLinecap="round">
          <path d={BEAD} stroke="var(--ink)" strokeWidth="6.4" />
          <path d={BEAD} stroke="var(--sheet)" strokeWidth="1.1" />
        </svg>
        Bendbook
      </h1>
      <nav className="places" aria-label="Places">
        {PLACES.map(({ id, name: label }) => (
          <a key={id} href={`#${id}`} aria-current={id === place.id ? 'page' : undefined}>
            {label}
          </a>
        ))}
      </nav>
      <div className="tools">
        <div className="work">
          <span className="pn">
            <NameField
              label="Name of the part"
              name={name}
              onRename={(next) => renamePart(next, SAID.partRenamed(next, name))}
            />
            {invented && <span className="nw">, an invented example</span>}
          </span>
          <PartBar />
        </div>
        <div className="right">
          <button className="b quiet" type="button" onClick={() => setUnit(otherUnit)}>
            <span className="vh">Lengths in </span>
            {otherUnit === 'mm' ? 'Millimetres' : 'Inches'}
          </button>
          <button className="b quiet" type="button" onClick={() => setTheme(otherTheme)}>
            <span className="vh">Sheet as </span>
            {otherTheme === 'paper' ? 'Paper' : 'Blueprint'}
          </button>
        </div>
      </div>
    </header>
  );
}
