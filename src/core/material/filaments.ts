import { ABS } from './rows/abs.ts';
import { ASA } from './rows/asa.ts';
import { PA12 } from './rows/pa12.ts';
import { PA6 } from './rows/pa6.ts';
import { PC } from './rows/pc.ts';
import { PETG } from './rows/petg.ts';
import { PLA } from './rows/pla.ts';
import { PP } from './rows/pp.ts';
import { PP_MOULDED } from './rows/ppMoulded.ts';
import { TPU95A } from './rows/tpu95a.ts';
import type { Filament } from './types.ts';

/** The filament table, in the order in which it is offered. */
export const FILAMENTS: readonly Filament[] = [PLA, PETG, ABS, ASA, PA6, PA12, PP, TPU95A, PC, PP_MOULDED];
