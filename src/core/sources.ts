/**
 * The only bibliography. Docstrings, filament rows, tests and the screen's “where the numbers come from”
 * all cite these keys. `read` says how much of the document was seen; `memory` marks what was recalled and not opened.
 */
export interface Source {
  readonly cite: string;
  readonly read: string;
}

/** What a filament row or a kind of flexure may name, and so the screen. */
export const SOURCES = {
  'plane-bending': {
    cite: 'Elementary bending of a straight leaf to a circular arc (Euler, Bernoulli); any text on strength of materials',
    read: 'derived here; no document needed',
  },
  'small-deflection': {
    cite: 'Small deflection of a straight leaf (Euler, Bernoulli): cantilever and beam with given end displacements; any text on strength of materials',
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
  'elastic-plastic': {
    cite: 'Elastic–perfectly plastic bending of a rectangular section; standard texts on plasticity',
    read: 'from memory; verified by quadrature',
  },
  'strain-life': {
    cite: 'Strain–life form after Basquin, Coffin and Manson, with a Walker exponent for the strain ratio',
    read: 'form from memory; coefficients as the filament rows say',
  },
  'palmgren-miner': {
    cite: 'Linear damage sum after A. Palmgren 1924 and M. A. Miner 1945',
    read: 'form from memory; not opened',
  },
  'mean-stress': {
    cite: 'Mean stress in strain–life: J. Morrow 1968; K. N. Smith, P. Watson and T. H. Topper 1970',
    read: 'forms from memory; not opened; checked against figures computed outside this program',
  },
  'bead-section': {
    cite: 'Geometry of an extruded bead with a stadium section',
    read: 'derived here; no document needed',
  },
  'reissner-rod': {
    cite: 'Planar rod that stretches, shears and bends through any angle, after E. Reissner 1972; equations solved by Gauss collocation, paths followed after H. B. Keller 1977',
    read: 'attributions from memory; equations derived here; checked against elliptic integrals and an integrator',
  },
  'common-practice': {
    cite: 'Common practice of people who print flexing parts',
    read: 'no source',
  },
  'unit-load-method': {
    cite: 'Linear frames of straight and curved bars by unit loads, after J. C. Maxwell, O. Mohr and A. Castigliano; any text on structural mechanics',
    read: 'from memory; derived here and checked against closed forms of straight bars, rings and radial arms',
  },
  'saint-venant-torsion': {
    cite: 'Torsion of a rectangular bar after Saint-Venant, series as in S. P. Timoshenko and J. N. Goodier, Theory of Elasticity',
    read: 'series and table from memory; a three-digit table read in the theory pages of a structural-analysis manual (docs.oasys-software.com, Rectangular Sections)',
  },
  'end-loaded-elastica': {
    cite: 'Cantilever under a dead end force by elliptic integrals, after K. E. Bisshopp and D. C. Drucker, Q. Appl. Math. 3, 1945, 272–275, and K. Mattiasson, Int. J. Numer. Meth. Eng. 17, 1981, 145–153',
    read: 'papers not opened; five-digit values of the second read as quoted in two public test-suites; re-derived',
  },
  'tie-beam': {
    cite: 'Slender beam with a force along it (tie-beam, beam-column): small slopes, bending and stretch together; standard texts',
    read: 'derived here; confirmed against a numerical boundary-value solution',
  },
  'leaf-about-pin': {
    cite: 'Leaf between a clamp and a pad that turns about a fixed pin: beam-column with bowing, small slopes',
    read: 'derived here; compared with exact shapes of a leaf that stretches, solved numerically',
  },
  'notch-hinge': {
    cite: 'Notch hinge as a bar of changing thickness, closed form after J. M. Paros and L. Weisbord, Machine Design, 1965',
    read: 'form from memory; agrees with direct quadrature to round-off; paper not opened',
  },
  'crossed-leaves': {
    cite: 'Crossed-leaf pivot at small angles; classical results of J. A. Haringx 1949 and W. H. Wittrick 1951',
    read: 'derived here; classical papers from memory, not opened; confirmed against exact shapes solved numerically',
  },
  'spiral-arm': {
    cite: 'Flat spiral of even pitch as a long leaf under a pure moment; standard texts on springs',
    read: 'derived here; the warning about short arms from exact shapes solved numerically',
  },
  'shallow-arch': {
    cite: 'Shallow clamped cosine arch in column modes, after J. Qiu, J. H. Lang and A. H. Slocum, J. MEMS 13, 2004, 137–146',
    read: 'from memory; not opened; re-derived by energy and confirmed against a numerical boundary-value solution',
  },
  'two-bar-truss': {
    cite: 'Snap-through of a two-bar truss after R. von Mises; standard texts',
    read: 'derived here; limit point confirmed numerically',
  },
  'named-by-user': {
    cite: 'A document that the user names',
    read: 'by the user alone; nothing here was compared with it',
  },
  's1-pla-fatigue': {
    cite: 'S1: O. H. Ezeh and L. Susmel, on the fatigue strength of 3D-printed polylactide (PLA), Procedia Structural Integrity 13, 2018, 728–734 (title recalled)',
    read: 'p. 733, labels of Fig. 5, conclusions',
  },
  's2-printed-hinges': {
    cite: 'S2: C. O. Balderrama-Armendariz et al., Folding behavior of thermoplastic hinges fabricated with polymer extrusion additive manufacturing, Int. J. Adv. Manuf. Technol. 2019, doi 10.1007/s00170-019-04196-x',
    read: 'abstract',
  },
  's3-moulded-fatigue': {
    cite: 'S3: Fatigue endurance of reinforced thermoplastics, ASTM D671 at 1800 cycles per minute, newsletter archive (M. Lodico, ed.)',
    read: 'whole table; a secondary compilation, primary data unnamed',
  },
  's4-pa12-fatigue': {
    cite: 'S4: D. D’Andrea et al., Procedia Structural Integrity 76, 2026, 151–158',
    read: 'p. 155',
  },
  's5-allowable-strain': {
    cite: 'S5: Maximum allowable short-term strain, design note of a resin maker (DSM Engineering Plastics)',
    read: 'first part; its table of values not visible',
  },
  's6-snap-fit-guide': {
    cite: 'S6: Snap-Fit Joints for Plastics, a design guide (Bayer MaterialScience), pp. 9–16',
    read: 'second-hand through two notes; only the opening pages of the guide itself seen',
  },
  's7-moulded-hinge': {
    cite: 'S7: R. Cramer, Can this part be saved? Part 3: Living hinges, Plastics Today, 4 Aug 1998',
    read: 'opening section',
  },
  's8-hinge-classes': {
    cite: 'S8: Living Hinge Design, plastics design pages, Penn State Behrend',
    read: 'opening section',
  },
  's9-tpu-tension': {
    cite: 'S9: Effect of Printing Parameters on the Tensile Mechanical Properties of 3D-Printed Thermoplastic Polyurethane, Eng. Proc. 2025, 113(1), 19',
    read: 'abstract; hardness grade not visible',
  },
  's10-tpu-modulus': {
    cite: 'S10: D. M. Haid et al., Characterisation of thermoplastic polyurethane (TPU) for additive manufacturing',
    read: 'abstract',
  },
  's11-tpu-table': {
    cite: 'S11: TPU materials page, aggregated values of printed TPU, additive.tools/materials/tpu',
    read: 'property table',
  },
  's12-tpu-datasheet': {
    cite: 'S12: Datasheet of a TPU moulding resin (ASTM D395-B), plasticdealers.in/product/tpu-bayer-texin-250',
    read: 'property table; one resin, hardness not visible',
  },
  's13-tpu-cubes': {
    cite: 'S13: Fatigue test and wear assessment on 3D printed TPU specimens, University of Pavia',
    read: 'whole note',
  },
  's14-print-tension': {
    cite: 'S14: tm-mech/diy-tensile-tester, README: printed PLA and PETG in tension, ISO 527-2 1BA, n = 3, crosshead strain',
    read: 'results table',
  },
  's15-bulk-cards': {
    cite: 'S15: Open CAD material cards, thermoplastics: PLA, ABS, PA6, PC, PP (CC-BY-3.0)',
    read: 'whole files; some strength entries look wrong and are not used',
  },
  's16-bulk-supplier': {
    cite: 'S16: Effect of Additive Manufacturing Parameters on PLA, ABS, and PETG Strength, Processes 2025, 13(9), 2733',
    read: 'section 2.1; its PLA glass transition is a misprint and not used',
  },
  's17-pc-tension': {
    cite: 'S17: F. K. Aldawood et al., Polymers 2025, 17, 2659',
    read: 'abstract and introduction',
  },
  's18-pa12-carbon': {
    cite: 'S18: C. Babis et al., Technologies 2025, 13, 456',
    read: 'outline with list for discussion',
  },
  's19-printed-pp': {
    cite: 'S19: L. Wang et al., Prog. Addit. Manuf. 2018, 3, 205–214',
    read: 'abstract',
  },
  's20-damp-nylon': {
    cite: 'S20: Nylon 6 filament moisture study, ph01.tci-thaijo.org/index.php/kbej/article/view/255388',
    read: 'abstract',
  },
  's21-hinge-guide': {
    cite: 'S21: Guide to moulded living hinges, anonymous page fragments; original document not identified',
    read: 'two fragments',
  },
  's22-nylon-tension': {
    cite: 'S22: Tensile Properties of Semi-Crystalline Thermoplastics, SAE 2000-01-1319',
    read: 'abstract; direction only',
  },
  's23-nylon-moisture': {
    cite: 'S23: Hygromechanical Behavior of Polyamide 6.6, Polymers 2023, 15, 3387',
    read: 'abstract; direction only',
  },
  's24-hinge-article': {
    cite: 'S24: Living hinge, copy of an encyclopaedia article',
    read: 'article',
  },
} as const satisfies Record<string, Source>;

/** What only docstrings and tests cite: apart, so that no visit loads it. */
export const METHOD_SOURCES = {
  'peterson-3': {
    cite: 'Peterson’s Stress Concentration Factors, charts 3.2a and 3.8a, stepped flat bar with shoulder fillets',
    read: 'coefficients read on pages that quote the charts, two misprints corrected; the book itself not opened',
  },
  'carvill-21': {
    cite: 'J. Carvill, Mechanical Engineer’s Data Handbook, p. 21, stepped flat bar in bending and tension',
    read: 'table read',
  },
  'ramberg-osgood': {
    cite: 'Stress–strain curve without a corner after W. Ramberg and W. R. Osgood 1943',
    read: 'form from memory; first moment derived here; checked against figures computed outside this program',
  },
  'carlson-duplication': {
    cite: 'B. C. Carlson, Numerical computation of real or complex elliptic integrals, Numer. Algorithms 10, 1995, 13–26: duplication for R_F and R_D',
    read: 'method and series from memory; the paper’s check values read as quoted in public test-suites of numerical libraries',
  },
  'notch-concentration': {
    cite: 'Stress concentration of a circular notch hinge in bending, a fit (1 + t/2R)^(9/20)',
    read: 'from memory; not opened; unconfirmed',
  },
  'euler-column': {
    cite: 'Buckling of a straight column (Euler); any text on strength of materials',
    read: 'derived here; no document needed',
  },
  'golden-section': {
    cite: 'Golden-section search for a peak (J. Kiefer 1953); any text on numerical methods',
    read: 'from memory; not opened; checked on functions with known peaks',
  },
  chandrupatla: {
    cite: 'T. R. Chandrupatla, a root finder of inverse quadratic interpolation and bisection, Adv. Eng. Software 28, 1997, 145–149',
    read: 'method from memory; paper not opened; checked on functions with known roots',
  },
  'normal-distribution': {
    cite: 'Normal distribution: series and continued fraction of the error function; first guess after M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.2.23',
    read: 'from memory; checked against printed table values and by inversion',
  },
  xoroshiro: {
    cite: 'D. Blackman and S. Vigna, Scrambled linear pseudorandom number generators: xoroshiro128+, as in the package pure-rand',
    read: 'documentation of the package; the paper not opened',
  },
  'lattice-rules': {
    cite: 'I. H. Sloan and S. Joe, Lattice Methods for Multiple Integration, Oxford 1994; steps chosen component by component after I. H. Sloan and A. V. Reztsov 2002, folded after F. J. Hickernell 2002',
    read: 'attributions from memory; the works not opened; steps computed here',
  },
  'cranley-patterson': {
    cite: 'Random shifts of a lattice as replicates, after R. Cranley and T. N. L. Patterson 1976',
    read: 'from memory; not opened',
  },
  'additive-shares': {
    cite: 'Variance told apart by a sum of functions of one input each, after W. Hoeffding 1948, fitted by Hermite polynomials',
    read: 'from memory; checked against the estimators of jansen-shares and against sums whose shares are known',
  },
  'jansen-shares': {
    cite: 'M. J. W. Jansen 1999, estimators of first-order and total shares of variance',
    read: 'formulas read in the documentation of statistics packages that implement them; the paper not opened',
  },
  triangular: {
    cite: 'Triangular distribution; any text on statistics',
    read: 'derived here; no document needed',
  },
  'f-distribution': {
    cite: 'Distributions of Student and of R. A. Fisher by the incomplete beta function, continued fraction after W. J. Lentz; M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.5.8 and 26.6.2',
    read: 'from memory; checked against printed table values and against an independent library',
  },
  'linear-regression': {
    cite: 'Least squares of log life on log strain with intervals, band and test of linearity, laid out as in ASTM E739',
    read: 'formulas from any text on statistics; the standard not opened, the data of its example as remembered',
  },
  'censored-likelihood': {
    cite: 'Log-normal lives with run-outs by greatest likelihood, as in W. Nelson, Accelerated Testing, 1990; intervals by ratios of likelihoods, scaled to those of Student where all broke; the correction of M. S. Bartlett 1937 for a spread',
    read: 'attributions from memory; not opened; derived here, checked against brute force with an independent library and by how often intervals hold',
  },
  'iso-527-chord': {
    cite: 'ISO 527-1, Plastics, tensile properties: modulus between strains of 0.05 % and 0.25 %, as a chord or a regression; the foot of the curve as ASTM D638 corrects for a toe',
    read: 'from memory; not opened; checked against curves made with a known modulus',
  },
  'iso-1519': {
    cite: 'ISO 1519, Paints and varnishes: bend test (cylindrical mandrel); strips bent over rods of falling diameter until they mark',
    read: 'from memory; not opened; only the manner of the test is taken over',
  },
  'bayes-rule': {
    cite: 'Bayes’ rule with a normal prior, summed over a grid; one strip left out by weights; any text on statistics',
    read: 'derived here; checked by how often intervals hold and against finer grids',
  },
  '3mf-core': {
    cite: '3D Manufacturing Format, Core Specification, version 1.4.0, published by its consortium: units, matrices of row vectors, objects, components, no document type',
    read: 'chapters 2 to 4 read',
  },
  '3mf-production': {
    cite: '3MF Production Extension, version 1.1, published by the same consortium: objects in further model parts',
    read: 'chapters 2 to 4 read',
  },
  'part-files': {
    cite: 'STL and OBJ as programs commonly write them; neither has a body that keeps it',
    read: 'no source; from memory and from files at hand',
  },
  'iso-6983': {
    cite: 'ISO 6983-1, words and blocks of numerical control: preparatory words G, dimensions, arcs by centre, planes, comments',
    read: 'from memory; not opened; how printers differ from it is common practice, without a source',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
