import { fNumber as fNumberOf } from "../optics/fNumber.ts";
import { planDefaults } from "./planDefaults.ts";
import type { GlassWord, PlanInput, PlanLens, PlanPinhole } from "./planTypes.ts";
import {
  givenAt,
  missing,
  notNegativeAt,
  oneWayOf,
  positiveAt,
  reachable,
  transmissionAt,
  wordAt,
} from "./valuesAt.ts";

const glassWords: readonly GlassWord[] = ["standard", "simple", "none"];

/** The lens or pinhole with every default filled in. */
export interface LensOnTheBoard {
  readonly kind: "lens" | "pinhole";
  readonly fNumber: number;
  readonly how: "marked" | "measured" | "diameter" | "hole";
  readonly apertureSdStops: number;
  readonly focalLengthMm: number | null;
  readonly diameterMm: number;
  /** Of a pinhole; a lens gets its extension from the focus. */
  readonly extensionMm: number | null;
  readonly pupilRatio: number;
  readonly transmission: number;
  readonly transmissionSdStops: number;
  readonly glass: GlassWord;
  readonly markedFNumber: number | null;
}

/** Reads `lens`, in the order of its keys. Inner helper of `plan`. */
export function lensOnTheBoard(lens: PlanInput["lens"]): LensOnTheBoard {
  return wordAt(lens.kind ?? planDefaults.lens.kind, ["lens", "pinhole"], "lens", "kind") === "pinhole"
    ? pinhole(lens as PlanPinhole)
    : lensWithGlass(lens as PlanLens);
}

function lensWithGlass(lens: PlanLens): LensOnTheBoard {
  const defaults = planDefaults.lens;
  const focalLengthMm = positiveAt(givenAt(lens.focalLengthMm, "lens", "focalLengthMm"), "lens", "focalLengthMm");
  const way = oneWayOf(lens, ["fNumber", "diameterMm"], "lens");
  if (way === undefined) throw missing("lens", "fNumber", ["fNumber", "diameterMm"]);
  const given = positiveAt(lens[way] as number, "lens", way);
  const fNumber = way === "fNumber" ? given : reachable(fNumberOf({ focalLengthMm, diameterMm: given }));
  const marked = way === "fNumber" && lens.fNumberMarked === true;
  return {
    kind: "lens",
    fNumber,
    how: marked ? "marked" : way === "fNumber" ? "measured" : "diameter",
    focalLengthMm,
    diameterMm: way === "diameterMm" ? given : reachable(focalLengthMm / fNumber),
    extensionMm: null,
    pupilRatio: positiveAt(lens.pupilRatio ?? defaults.pupilRatio, "lens", "pupilRatio"),
    ...glassOf(lens, defaults, marked ? defaults.markedApertureSdStops : defaults.apertureSdStops),
    markedFNumber: lens.markedFNumber === undefined ? null : positiveAt(lens.markedFNumber, "lens", "markedFNumber"),
  };
}

function pinhole(lens: PlanPinhole): LensOnTheBoard {
  const diameterMm = positiveAt(givenAt(lens.holeMm, "lens", "holeMm"), "lens", "holeMm");
  const extensionMm = positiveAt(givenAt(lens.extensionMm, "lens", "extensionMm"), "lens", "extensionMm");
  return {
    kind: "pinhole",
    fNumber: reachable(extensionMm / diameterMm),
    how: "hole",
    focalLengthMm: null,
    diameterMm,
    extensionMm,
    pupilRatio: 1,
    ...glassOf(lens, planDefaults.pinhole, planDefaults.pinhole.apertureSdStops),
    markedFNumber: null,
  };
}

function glassOf(
  lens: PlanLens | PlanPinhole,
  defaults: { readonly transmission: number; readonly transmissionSdStops: number; readonly glass: GlassWord },
  apertureSdStops: number,
) {
  return {
    transmission: transmissionAt(lens.transmission ?? defaults.transmission, "lens"),
    transmissionSdStops: notNegativeAt(
      lens.transmissionSdStops ?? defaults.transmissionSdStops,
      "lens",
      "transmissionSdStops",
    ),
    apertureSdStops: notNegativeAt(lens.apertureSdStops ?? apertureSdStops, "lens", "apertureSdStops"),
    glass: wordAt(lens.glass ?? defaults.glass, glassWords, "lens", "glass"),
  };
}
