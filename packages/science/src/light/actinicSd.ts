import { actinicStops } from "./actinicStops.ts";
import { type LensGlass, lensGlasses, type PaperSensitivity, paperSensitivities } from "./paperResponse.ts";
import { requireWord } from "./requireWord.ts";
import { readSource } from "./sourceSpectrum.ts";

export interface ActinicSdInput {
  readonly source: string;
  /** "blue": a blue-sensitive paper of unknown make. */
  readonly paper?: PaperSensitivity | "blue";
  readonly lens?: LensGlass;
  /** The light in which the paper's index was found; without it the index is for daylight. */
  readonly foundSource?: string | undefined;
  /** The glass it was found with; without it the glass of now. */
  readonly foundLens?: LensGlass | undefined;
}

/**
 * How far the colour of the light may be out, as one standard deviation.
 *
 * Formula  s = √( e² + u² ).  e is what ±10 nm in the paper's edge does: 0.15 for filament and daylight; for a white LED 0.9
 *          (chloride, chlorobromide), 0.3 (bromide), 0.2 (others), the larger figure if one of two lights is an LED. u is
 *          half of |A(chlorobromide) − A(bromide)| if the make is unknown, else 0. The same light and glass as then: s = 0.
 * Units    s, e, u and A in stops.
 * Holds    for the lights that `actinicStops` knows.
 * Error    these figures are themselves a judgement, good to a third.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source none: the edges of the model moved by 10 nm, with a floor of 0.15 for lens and meter (by hand)
 * @example actinicSd({ source: "whiteLed:4000", paper: "bromide" }) // 0.3, in stops
 */
export function actinicSd({
  source,
  paper = "blue",
  lens = "standard",
  foundSource,
  foundLens = lens,
}: ActinicSdInput): number {
  requireWord({ paper }, [...paperSensitivities, "blue"]);
  requireWord({ lens, foundLens }, lensGlasses);
  const edgeSd = Math.max(
    edgeDoubt(source, "source", paper),
    foundSource === undefined ? 0 : edgeDoubt(foundSource, "foundSource", paper),
  );
  if (source === foundSource && lens === foundLens) return 0;
  if (paper !== "blue") return edgeSd;
  return Math.hypot(edgeSd, change("chlorobromide") / 2 - change("bromide") / 2);

  function change(make: PaperSensitivity): number {
    const now = actinicStops({ source, paper: make, lens });
    return foundSource === undefined ? now : now - actinicStops({ source: foundSource, paper: make, lens: foundLens });
  }
}

function edgeDoubt(source: string, key: string, paper: PaperSensitivity | "blue"): number {
  if (readSource(source, key).kind !== "whiteLed") return 0.15;
  if (paper === "bromide") return 0.3;
  return paper === "chloride" || paper === "chlorobromide" || paper === "blue" ? 0.9 : 0.2;
}
