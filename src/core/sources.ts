/**
 * The only bibliography. Docstrings, filament rows, tests and the screen's “where the numbers come from”
 * all cite these keys. `read` says how much of the document was seen; `memory` marks what was recalled and not opened.
 */
export interface Source {
  readonly cite: string;
  readonly read: string;
}

export const SOURCES = {
  'plane-bending': {
    cite: 'Elementary bending of a straight leaf to a circular arc (Euler, Bernoulli); any text on strength of materials',
    read: 'derived here; no document needed',
  },
  'wide-strip': {
    cite: 'Moment of a wide strip bent to a cylinder, after H. Lamb 1891 and D. G. Ashwell 1950',
    read: 'attribution from memory; re-derived by energy and confirmed against a numerical boundary-value solution',
  },
  'roark-17.1': {
    cite: 'Roark’s Formulas for Stress and Strain, table 17.1, stepped flat bar with shoulder fillets',
    read: 'coefficients read on pages that quote the table; the book itself not opened',
  },
  'peterson-3': {
    cite: 'Peterson’s Stress Concentration Factors, charts 3.2a and 3.8a, stepped flat bar with shoulder fillets',
    read: 'coefficients read on pages that quote the charts, two misprints corrected; the book itself not opened',
  },
  'carvill-21': {
    cite: 'J. Carvill, Mechanical Engineer’s Data Handbook, p. 21, stepped flat bar in bending and tension',
    read: 'table read',
  },
  'elastic-plastic': {
    cite: 'Elastic–perfectly plastic bending of a rectangular section; standard texts on plasticity',
    read: 'from memory; verified by quadrature',
  },
  'strain-life': {
    cite: 'Strain–life form after Basquin, Coffin and Manson, with a Walker exponent for the strain ratio',
    read: 'form from memory; coefficients as the filament rows say',
  },
  'bead-section': {
    cite: 'Geometry of an extruded bead with a stadium section',
    read: 'derived here; no document needed',
  },
  'common-practice': {
    cite: 'Common practice of people who print flexing parts',
    read: 'no source',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
