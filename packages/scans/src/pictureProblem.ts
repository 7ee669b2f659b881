/** Why a picture, or a part of it, is not read. */
export type PictureFault = "notAPicture" | "pictureBroken" | "pictureTooLarge" | "pictureKindNotRead" | "stopped";

/**
 * A picture that is not read. `why` says what of it, in words that follow “because”; `hint` what to do.
 */
export class PictureProblem extends Error {
  readonly code: PictureFault;
  readonly why: string;
  readonly hint: string;

  constructor(code: PictureFault, why: string, hint: string = HINTS[code]) {
    super(`${code}: ${why}`);
    this.name = "PictureProblem";
    this.code = code;
    this.why = why;
    this.hint = hint;
  }
}

const HINTS: Record<PictureFault, string> = {
  notAPicture: "Scan to a TIFF or PNG of 16 bits, or take a JPEG.",
  pictureBroken: "Copy the file once more from where it was made, or scan again.",
  pictureTooLarge: "Scan at fewer dots an inch: 600 are plenty for densities.",
  pictureKindNotRead: "Save it as a TIFF or PNG of 8 or 16 bits, grey or RGB.",
  stopped: "Open it again when you like; the file was not changed.",
};
