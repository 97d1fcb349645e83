/** What is told of the text of a toolpath, apart from the moves that it asks for. */

/** Why a line was not understood. */
export type BadLineWhy =
  /** Something that is no word of a letter and a number. */
  | 'no-word'
  /** A number that cannot be read, or that nothing could move by. */
  | 'bad-number'
  /** An arc whose radius, centre or plane does not go with its ends. */
  | 'bad-arc'
  /** Longer than any line that a printer takes. */
  | 'too-long';

export interface BadLine {
  /** From 1. */
  readonly line: number;
  /** Its beginning, at most 80 characters. */
  readonly text: string;
  readonly why: BadLineWhy;
}

export interface GcodeText {
  readonly bytes: number;
  readonly lines: number;
  /** Lines that hold a command. */
  readonly commands: number;
  /** Moves by the command that asks for them, 0 to 3; those that only move filament among them. */
  readonly moves: readonly [g0: number, g1: number, g2: number, g3: number];
  /** Moves without a word of their own for how: as the one before. */
  readonly modal: number;
  readonly isEver: {
    readonly inch: boolean;
    readonly relative: boolean;
    readonly relativeFeed: boolean;
    readonly absoluteFeed: boolean;
    readonly volumetric: boolean;
    /** Another flow than 100 %. */
    readonly flow: boolean;
  };
  readonly numbered: number;
  readonly checksums: number;
  readonly badChecksums: number;
  /** G92 in all, and those of filament. */
  readonly resets: number;
  readonly feedResets: number;
  /** Filament drawn back or restored as the firmware is set (G10, G11). */
  readonly firmwareRetractions: number;
  readonly firmwareRestores: number;
  readonly toolChanges: number;
  /** Tools named, in order of number. */
  readonly tools: readonly number[];
  /** Commands by a word, of printers that know such. */
  readonly named: number;
  readonly bad: number;
  /** The first of them, at most MOST_TOLD. */
  readonly badLines: readonly BadLine[];
}

export const MOST_TOLD = 20;
