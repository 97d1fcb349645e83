import { suitsOf } from '../../core/life/suits.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { practiceText, rowName, SUITS_TEXT, usesText } from '../text/filamentsText.ts';
import { addressOf } from './route.ts';

/** In words what each filament suits and does not, and by which limits that is said. */
export function Suits({ rows }: { readonly rows: readonly WholeFilament[] }) {
  return (
    <section className="suits" aria-label={SUITS_TEXT.head}>
      <h2 className="h">{SUITS_TEXT.head}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Filament</th>
            <th scope="col">{SUITS_TEXT.suits}</th>
            <th scope="col">{SUITS_TEXT.not}</th>
            <th scope="col">{SUITS_TEXT.practice}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const suited = suitsOf(row);
            return (
              <tr key={row.id}>
                <th scope="row">
                  <a href={addressOf(row.id)}>{rowName(row)}</a>
                </th>
                <td data-label={SUITS_TEXT.suits}>{usesText(suited, true)}</td>
                <td data-label={SUITS_TEXT.not}>{usesText(suited, false)}</td>
                <td data-label={SUITS_TEXT.practice}>{practiceText(row.id)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="small">{SUITS_TEXT.rules}.</p>
    </section>
  );
}
