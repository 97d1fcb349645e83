/** A weight hangs by what the earth pulls: standard gravity in N/g. */
export const GRAVITY = 9.806_65e-3;
