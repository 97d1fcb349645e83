import type { WorkingWords } from './words.ts';

const ALONG = 'Summed up along one arm in steps of a 64th of a turn: bending and stretch, shear left out.';

/** Words that only a spiral has. */
export const SPIRAL_WORDS: WorkingWords = {
  steps: {
    'alone-moment': {
      name: 'Moment on the one arm for each radian, over E·I',
      holds: 'A pure moment is the same all along a single arm whose hub may wander.',
    },
    'alone-force': {
      name: 'Force on the one arm for each millimetre, over E·I',
      holds: 'A pure force on a hub that may turn and move aside; summed up in steps of a 64th of a turn.',
    },
    'centre-xx': { name: 'Give along x about the elastic centre of one arm, times E·I', holds: ALONG },
    'centre-xy': { name: 'Give along x for a force along y, about the same, times E·I', holds: ALONG },
    'centre-yy': { name: 'Give along y about the same, times E·I', holds: ALONG },
    'arm-xx': { name: 'Force along x for a movement along x of one arm, over E·I' },
    'arm-yy': { name: 'Force along y for a movement along y, over E·I' },
    'arm-xy': { name: 'Force along y for a movement along x, over E·I' },
    'arm-xm': { name: 'Force along x for each radian about the centre of the hub, over E·I' },
    'arm-ym': { name: 'Force along y for each radian about it, over E·I' },
    'arm-mm': {
      name: 'Moment for each radian about it, over E·I',
      holds: 'The hub stays in the middle: it is held there, or several even arms keep it there.',
    },
    'aside-pair': {
      name: 'How far the hub goes aside for each millimetre of the push',
      holds: 'Two opposite arms: the hub does not turn, and no force keeps it from going aside.',
    },
    'arm-angle': { name: 'How the arm that is strained most stands to the push' },
    'aside-x': {
      name: 'Movement of the hub as that arm sees it, along x',
      holds: 'Three even arms and more give alike every way.',
    },
    'aside-y': { name: 'The same along y' },
    'force-x': { name: 'Force along x on that arm for each millimetre, over E·I' },
    'force-y': { name: 'Force along y on it, over E·I' },
    'force-m': { name: 'Moment on it about the centre of the hub, over E·I' },
    'arm-pitch': { name: 'How much the radius grows for each radian of the arm', holds: 'A spiral of even pitch.' },
    'arm-radius': {
      name: 'Radius where the arm is strained most',
      holds: 'The place has been found by looking along all arms, 64 times to a turn and at both ends.',
    },
    'arm-x': { name: 'That place from the centre, along x' },
    'arm-y': { name: 'That place from the centre, along y' },
    'arm-moment': { name: 'Moment there for a unit of movement, over E·I' },
    'arm-along-x': { name: 'How far the arm goes there along x for each radian' },
    'arm-along-y': { name: 'How far it goes there along y' },
    'arm-along': { name: 'How long it is for each radian' },
    'arm-pull': { name: 'Pull along the arm there for a unit of movement, over E·I' },
    'arm-strain': {
      name: 'Strain of the skin there, of bending and pull',
      holds:
        'Up to a quarter of a radian, or a twentieth of the way from hub to ring, from one turn on: solved spirals differ by at most 5.1 %.',
    },
    'alone-strain': {
      name: 'Strain of the skin of the arm, bent evenly',
      holds: 'A pure moment and a hub that may wander; only round-off differs.',
    },
    'hub-moment': {
      name: 'Moment of all arms, narrow and springy',
      holds:
        'In proportion to the turn: solved spirals of one turn and more differ by at most 4.5 % up to a quarter of a radian.',
    },
    'hub-force': {
      name: 'Force of all arms, narrow and springy',
      holds:
        'In proportion to the travel: solved spirals of one turn and more differ by at most 4.5 % up to a twentieth of the way from hub to ring.',
    },
  },
  symbols: {
    t: 'thickness of an arm',
    L_f: 'diameter at which arms end in the ring',
    C_xx: 'sum along an arm of y², and of its share in stretch',
    C_xy: 'sum along an arm of −x·y, and of its share in stretch',
    C_yy: 'sum along an arm of x², and of its share in stretch',
    C_xm: 'sum along an arm of y',
    C_ym: 'sum along an arm of −x',
    C_mm: 'length of an arm',
    c_xx: 'give along x, times E·I',
    c_xy: 'give across, times E·I',
    c_yy: 'give along y, times E·I',
    k_xx: 'stiffness along x over E·I',
    k_yy: 'stiffness along y over E·I',
    k_xy: 'stiffness across over E·I',
    k_xm: 'force along x for a turn, over E·I',
    k_ym: 'force along y for a turn, over E·I',
    k_mm: 'stiffness in turn over E·I',
    n_a: 'arms',
    β: 'angle of the arm, as arc over radius',
    j: 'number of the arm, from 0',
    u_x: 'movement along x for each millimetre',
    u_y: 'movement along y for each millimetre',
    P_x: 'force along x on an arm over E·I',
    P_y: 'force along y on an arm over E·I',
    P_m: 'moment on an arm over E·I',
    a: 'growth of the radius for each radian',
    d_0: 'diameter at which arms leave the hub',
    d_1: 'diameter at which arms end in the ring',
    n_u: 'turns of each arm',
    φ: 'angle along the arm from the hub, as arc over radius',
    r_p: 'radius of the place that is strained most',
    x_p: 'that place, along x',
    y_p: 'that place, along y',
    g_x: 'way of the arm along x for each radian',
    g_y: 'way of the arm along y for each radian',
    w_p: 'length of arm for each radian',
    m_p: 'moment there over E·I',
    q_p: 'pull there over E·I',
  },
};
