import type { ExtensionFacts } from "../errors/ledgerFacts.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { bellowsStops } from "../optics/bellowsStops.ts";
import { magnificationFromDistance } from "../optics/magnificationFromDistance.ts";
import { magnificationFromExtension } from "../optics/magnificationFromExtension.ts";
import { magnificationFromImageSize } from "../optics/magnificationFromImageSize.ts";
import { magnificationFromTotal } from "../optics/magnificationFromTotal.ts";
import { magnificationFromTravel } from "../optics/magnificationFromTravel.ts";
import { planDefaults } from "./planDefaults.ts";
import type { LensOnTheBoard } from "./planLens.ts";
import type { PlanFocus } from "./planTypes.ts";
import { finiteAt, missing, notNegativeAt, oneWayOf, positiveAt } from "./valuesAt.ts";

const ways = [
  "extensionMm",
  "travelMm",
  "magnification",
  "imageSizeMm",
  "subjectDistanceMm",
  "totalDistanceMm",
] as const;

/** How far the lens is racked out, as the ledger's line of the extension. Inner helper of `plan`. */
export function extensionOf(focus: PlanFocus | undefined, lens: LensOnTheBoard): ExtensionFacts {
  if (lens.focalLengthMm === null) return pinholeExtension(focus, lens);
  const focalLengthMm = lens.focalLengthMm;
  const way = wayOf(focus);
  const magnification = focus === undefined || way === "distant" ? 0 : magnificationBy(way, focus, focalLengthMm);
  if (magnification === Number.POSITIVE_INFINITY) throw new OutOfDomain("outOfRange", {}, "");
  const sd = focus?.sdStops ?? (magnification === 0 ? 0 : planDefaults.focus.sdStops);
  const subjectDistanceMm = focalLengthMm * (1 + 1 / magnification);
  return {
    kind: "lens",
    way,
    stops: magnification === 0 ? 0 : bellowsStops({ magnification, pupilRatio: lens.pupilRatio }),
    sd: notNegativeAt(sd, "focus", "sdStops"),
    magnification,
    extensionMm: way === "extensionMm" ? (focus?.extensionMm as number) : focalLengthMm * (1 + magnification),
    focalLengthMm,
    subjectDistanceMm: Number.isFinite(subjectDistanceMm) ? subjectDistanceMm : null,
    pupilRatio: lens.pupilRatio,
  };
}

function pinholeExtension(focus: PlanFocus | undefined, lens: LensOnTheBoard): ExtensionFacts {
  if (focus !== undefined) throw new OutOfDomain("focusNotForPinhole", {}, "focus");
  return {
    kind: "pinhole",
    way: "extensionMm",
    stops: 0,
    sd: 0,
    magnification: null,
    extensionMm: lens.extensionMm as number,
    focalLengthMm: null,
    subjectDistanceMm: null,
    pupilRatio: 1,
  };
}

function wayOf(focus: PlanFocus | undefined): ExtensionFacts["way"] {
  if (focus === undefined) return "distant";
  const way = oneWayOf(focus, ways, "focus");
  if (way === undefined) throw missing("focus", "extensionMm", ways);
  if (way === "imageSizeMm" && focus.subjectSizeMm === undefined) throw missing("focus", "subjectSizeMm");
  refuseWithoutItsWay(focus.subjectSizeMm, way, "imageSizeMm", "subjectSizeMm");
  refuseWithoutItsWay(focus.hiatusMm, way, "totalDistanceMm", "hiatusMm");
  refuseWithoutItsWay(focus.larger, way, "totalDistanceMm", "larger");
  return way;
}

function refuseWithoutItsWay(value: unknown, way: string, itsWay: string, key: string): void {
  if (value === undefined || way === itsWay) return;
  throw new OutOfDomain("twoOfOne", { goesWith: itsWay, key }, `focus/${key}`);
}

function magnificationBy(
  way: Exclude<ExtensionFacts["way"], "distant">,
  focus: PlanFocus,
  focalLengthMm: number,
): number {
  const given = focus[way] as number;
  if (way === "magnification") return notNegativeAt(given, "focus", way);
  if (way !== "travelMm") positiveAt(given, "focus", way);
  try {
    switch (way) {
      case "extensionMm":
        return magnificationFromExtension({ focalLengthMm, extensionMm: given });
      case "travelMm":
        return magnificationFromTravel({ focalLengthMm, travelMm: given });
      case "imageSizeMm":
        return magnificationFromImageSize({
          imageSizeMm: given,
          subjectSizeMm: positiveAt(focus.subjectSizeMm as number, "focus", "subjectSizeMm"),
        });
      case "subjectDistanceMm":
        return magnificationFromDistance({ focalLengthMm, subjectDistanceMm: given });
      case "totalDistanceMm":
        return magnificationFromTotal({
          focalLengthMm,
          totalDistanceMm: given,
          hiatusMm: finiteAt(focus.hiatusMm ?? planDefaults.focus.hiatusMm, "focus", "hiatusMm"),
          larger: focus.larger ?? planDefaults.focus.larger,
        });
    }
  } catch (fault) {
    if (!(fault instanceof OutOfDomain) || fault.key.startsWith("focus/")) throw fault;
    throw new OutOfDomain(fault.code, fault.facts, `focus/${way}`);
  }
}
