import type { WorkingWords } from './words.ts';

const SHALLOW =
  'Shallow theory: the square of the slope is left out, up to 2.5 % at a rise of a twentieth of what bends.';

/** Words that only a snapping arch has. */
export const SNAP_ARCH_WORDS: WorkingWords = {
  steps: {
    'arch-length': { name: 'What of the span bends', holds: 'A stiff block takes its width out.' },
    'arch-ratio': { name: 'Rise over thickness', holds: 'The form was made for 2 to 15, and two arches from 2.5 on.' },
    'arch-share': { name: 'Travel over rise' },
    'arch-mirrored': {
      name: 'Travel over rise, no more than to the mirror image',
      holds: 'The path ends where the arch is its own mirror image, at twice the rise.',
    },
    'arch-aside-double': {
      name: 'Compression while the arches wriggle aside',
      holds: 'The middle is kept from turning: it stays at that of the mode 4π until the wriggle has gone again.',
    },
    'arch-aside-free': {
      name: 'Compression while the arch leans aside',
      holds: 'One arch alone: it stays at that of its first lopsided mode until the lean has gone again.',
    },
    'modes-give': {
      name: 'How the higher modes give under the force',
      holds: 'Twenty-nine modes of a clamped leaf, 6π to 118π; compression and mode are found by trying.',
    },
    'modes-squares': { name: 'How they take up shortening, for the square of the force' },
    'first-fall': { name: 'How the force falls with the first mode' },
    'arch-force': { name: 'Force over E·I·rise/L³', holds: SHALLOW },
    'arch-travel': { name: 'The travel that this state gives is the one wanted' },
    'arch-shortening': {
      name: 'The compression that leaves this shortening is the one put in',
      holds: 'Walls that do not give; a real frame gives, and the force is less.',
    },
    'arch-left': {
      name: 'Shortening that is left for leaning or wriggling aside',
      holds: 'Walls that do not give; a real frame gives, and the force is less.',
    },
    'arch-side': { name: 'How far it leans or wriggles aside, over the rise' },
    'hardest-force': {
      name: 'Force over E·I·rise/L³ where it is strained most on the way',
      holds: 'Found by comparing 121 states on the way and 41 places along half the arch.',
    },
    'hardest-first': { name: 'Bending of the first mode there, over rise/L²' },
    'hardest-modes': { name: 'Bending of the higher modes there' },
    'side-double': { name: 'Bending of the wriggle there', holds: 'The middle is kept from turning.' },
    'side-free': { name: 'Bending of the lean there', holds: 'One arch alone.' },
    'hardest-upright': { name: 'Strain over thickness·rise/L², of bending and compression' },
    'hardest-aside': {
      name: 'Strain over thickness·rise/L², of bending and compression',
      holds: 'It may lean to either side: the two bendings are added as if they met.',
    },
    'arch-strain': {
      name: 'Largest strain of the skin on the way',
      holds: 'Solved arches differ by at most 6 %, and by a fifth once a block leans.',
    },
    'arch-force-all': {
      name: 'Force at the travel, narrow and springy; below 0 it pulls itself on',
      holds: 'Solved arches differ by at most 4 % away from where the force passes zero; before anything flows.',
    },
  },
  symbols: {
    L: 'length along the span that bends',
    L_f: 'span between the walls',
    ℓ: 'span between the walls',
    ℓ_b: 'width of the block',
    h_a: 'rise of the middle as printed',
    Q_a: 'rise over thickness',
    Δ: 'travel over rise',
    Δ_a: 'travel over rise, by this state',
    N_w: 'twice the first root of tan x = x',
    n_c: 'compression over E·I/L²',
    n_a: 'compression over E·I/L², by the shortening',
    N_j: 'column mode of a clamped leaf',
    s_g: 'give of the higher modes',
    s_q: 'shortening of the higher modes',
    s_f: 'fall of the force',
    A_1: 'size of the first mode over the rise',
    Φ: 'force over E·I·rise/L³',
    S_w: 'shortening that is left',
    A_w: 'size of the side mode over the rise',
    n_m: 'compression where it is strained most, over E·I/L²',
    A_m: 'size of the first mode there, over the rise',
    Φ_m: 'force there, over E·I·rise/L³',
    x_m: 'place from the wall, as a share of the length',
    w_1: 'bending of the first mode over rise/L²',
    w_j: 'bending of the higher modes over rise/L²',
    A_s: 'size of the side mode there, over the rise',
    w_s: 'bending of the side mode over rise/L²',
    c_a: 'strain over t·rise/L²',
    m_a: 'arches that a block joins',
  },
};
