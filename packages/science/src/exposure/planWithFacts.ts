import type { HandFacts, LedgerFactsOf, LedgerLineName } from "../errors/ledgerFacts.ts";
import { ledgerWords } from "../errors/ledgerWords.ts";
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { effectiveFNumber } from "../optics/effectiveFNumber.ts";
import { byHandOf } from "./byHandOf.ts";
import { handSd } from "./handSd.ts";
import { areasOf } from "./planAreas.ts";
import { colourOfLight } from "./planColour.ts";
import { filtersLine } from "./planFilters.ts";
import { extensionOf } from "./planFocus.ts";
import { type CheckedHand, checkedHand } from "./planHand.ts";
import { lensOnTheBoard } from "./planLens.ts";
import { longExposureLine } from "./planLongExposure.ts";
import { checkedPaper } from "./planPaper.ts";
import { checkedMeter, checkedReadings, ev100Of, groundOf, readingLine } from "./planReadings.ts";
import { saidOf } from "./planSaid.ts";
import type { LedgerLineWithFacts, PlanAnswerWithFacts, PlanInput, PlanWarning } from "./planTypes.ts";
import { timeLevers } from "./timeLevers.ts";

/** The 95 % quantile of the normal distribution: both ends together leave one in ten outside. */
const nineInTen = 1.6448536269514722;
const usualPupilRatio = { least: 0.3, most: 3 };
const supposedTransmission = 0.9;

/**
 * `plan` with the numbers of each ledger line beside it, for `ledgerWords` and for keeping with a sheet.
 *
 * Formula  as `plan`.
 * Units    as `plan`; `facts` in stops, s, mm and EV as their names say.
 * Holds    as `plan`.
 * Error    as `plan`.
 *
 * @throws {OutOfDomain} as `plan`
 * @source none: the sum itself, each line naming its own source through `ledgerWords` (by hand)
 * @example planWithFacts({ lens: { focalLengthMm: 240, fNumber: 8 }, paper: { exposureIndex: 6 }, readings: [{ ev100: 8 }] }).timeS // 4.1666667, in s
 */
export function planWithFacts(input: PlanInput): PlanAnswerWithFacts {
  const lens = lensOnTheBoard(input.lens);
  const extension = extensionOf(input.focus, lens);
  const paper = checkedPaper(input.paper);
  const readings = checkedReadings(input.readings);
  const ground = groundOf(input.place, readings);
  const meter = checkedMeter(input.meter, ground.kind);
  const filters = filtersLine(input.filters ?? []);
  const colour = colourOfLight({
    source: input.light?.source,
    sensitivity: paper.sensitivity,
    glass: lens.glass,
    foundWith: input.paper.foundWith,
  });
  const hand = checkedHand(input.hand);

  const groundEv = mean(ground.readings.map((reading) => ev100Of(reading, meter)));
  const reading = readingLine({ ground, ev100: groundEv, meter, lens, exposureIndex: paper.exposureIndex });
  const thenTransmission = input.paper.foundWith === undefined ? supposedTransmission : paper.thenTransmission;
  const facts: Omit<LedgerFactsOf, "longExposure" | "hand"> = {
    reading,
    place: { stops: ground.placeStops, sd: 0, area: ground.area, averaged: ground.readings.length },
    aperture: {
      stops: 2 * Math.log2(lens.fNumber / reading.fNumber),
      sd: lens.apertureSdStops,
      kind: lens.kind,
      fNumber: lens.fNumber,
      readingFNumber: reading.fNumber,
      how: lens.how,
      focalLengthMm: lens.focalLengthMm,
      diameterMm: lens.diameterMm,
      extensionMm: extension.extensionMm,
    },
    extension,
    exposureIndex: {
      stops: Math.log2(reading.iso / paper.exposureIndex),
      sd: paper.exposureIndexSdStops,
      exposureIndex: paper.exposureIndex,
      dialIso: reading.iso,
      dial: reading.way === "timeS" || reading.way === "ev",
      found: input.paper.foundWith === undefined ? "toldOrGuessed" : "ownSheets",
    },
    transmission: {
      stops: thenTransmission === null ? 0 : -Math.log2(lens.transmission / thenTransmission),
      sd: thenTransmission === null ? 0 : lens.transmissionSdStops,
      transmission: lens.transmission,
      thenTransmission: paper.thenTransmission,
      inIndex: thenTransmission === null,
    },
    filters,
    colourOfLight: colour,
  };
  const meteredStops =
    facts.reading.stops +
    facts.place.stops +
    facts.aperture.stops +
    facts.extension.stops +
    facts.exposureIndex.stops +
    facts.transmission.stops +
    facts.filters.stops +
    facts.colourOfLight.stops;
  const longExposure = longExposureLine(paper.long, meteredStops);
  const timeS = longExposure.timeS;
  const allFacts: LedgerFactsOf = { ...facts, longExposure, hand: handLine(hand, timeS) };
  refuseOverflow(allFacts);
  const ledger = ledgerOf(allFacts);
  const value = meteredStops + longExposure.stops;
  const sd = Math.hypot(...ledger.map((line) => line.stops.sd));
  const { areas, sceneRangeStops } = areasOf({ readings, ground, groundEv, meter, exposureIndex: paper.exposureIndex });
  const byHand = byHandOf(timeS, hand);
  const magnification = extension.magnification;
  const warnings: PlanWarning[] = [];
  if (byHand.how === "tooShort") warnings.push({ kind: "tooShortForCap", timeS, shortestS: byHand.shortestS });
  if (longExposure.extrapolated) {
    warnings.push({ kind: "reciprocityExtrapolated", meteredTimeS: longExposure.meteredTimeS });
  }
  if (lens.pupilRatio < usualPupilRatio.least || lens.pupilRatio > usualPupilRatio.most) {
    warnings.push({ kind: "pupilRatioUnusual", pupilRatio: lens.pupilRatio });
  }
  const answer: PlanAnswerWithFacts = {
    timeS,
    timeStops: { value, sd },
    timeIntervalS: { low: timeS * 2 ** (-nineInTen * sd), high: timeS * 2 ** (nineInTen * sd) },
    optics: {
      fNumber: lens.fNumber,
      magnification,
      extensionMm: extension.extensionMm,
      effectiveFNumber:
        magnification === null
          ? lens.fNumber
          : effectiveFNumber({ fNumber: lens.fNumber, magnification, pupilRatio: lens.pupilRatio }),
    },
    ledger,
    areas,
    sceneRangeStops,
    byHand,
    levers: byHand.how === "tooShort" ? leversTo(byHand.shortestS) : null,
    said: saidOf({ input, facts: allFacts, meter, lens, long: paper.long }),
    warnings,
  };
  refuseOverflow(answer);
  return answer;

  function leversTo(shortestS: number) {
    const { stops, neutralDensity, lightFraction, lampDistanceFactor, fNumberFactor, ...levers } = timeLevers({
      timeS,
      minimumTimeS: shortestS,
      magnification: magnification ?? 0,
      pupilRatio: lens.pupilRatio,
    });
    return {
      stops,
      neutralDensity,
      lightFraction,
      magnification: magnification === null ? null : levers.magnification,
      fNumber: lens.fNumber * fNumberFactor,
      lampDistanceFactor,
    };
  }
}

function handLine(hand: CheckedHand, timeS: number): HandFacts {
  const { motorSdS, weber, biasS } = hand;
  const sdS = handSd({ timeS, motorSdS, weber });
  return { stops: 0, sd: sdS / (timeS * Math.LN2), timeS, sdS, motorSdS, weber, biasS };
}

const order: readonly LedgerLineName[] = [
  "reading",
  "place",
  "aperture",
  "extension",
  "exposureIndex",
  "transmission",
  "filters",
  "colourOfLight",
  "longExposure",
  "hand",
];

function ledgerOf(all: LedgerFactsOf): readonly LedgerLineWithFacts[] {
  return order.map((line) => {
    const facts = all[line];
    const ground = ledgerWords({ line, facts } as Parameters<typeof ledgerWords>[0]).ground;
    return { line, stops: { value: facts.stops, sd: facts.sd }, ground, facts } as LedgerLineWithFacts;
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Extreme inputs can overflow anywhere: facts are looked through before they are put into words, then the whole answer. */
function refuseOverflow(value: unknown): void {
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new OutOfDomain("outOfRange", {}, "");
  } else if (typeof value === "object" && value !== null) {
    for (const key in value) refuseOverflow((value as Record<string, unknown>)[key]);
  }
}
