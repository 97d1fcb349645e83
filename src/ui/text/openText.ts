/** Why a file is not opened: apart, because a first visit opens nothing. */
export const NO_GCODE = 'It is G-code, which is not checked here: drop the part itself, as STL, 3MF or OBJ.';
