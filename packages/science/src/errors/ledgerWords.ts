import { formatLength } from "../notation/formatLength.ts";
import { formatStops } from "../notation/formatStops.ts";
import { figures } from "../notation/plainDigits.ts";
import { showEv } from "../notation/showEv.ts";
import { showFNumber } from "../notation/showFNumber.ts";
import { showTime } from "../notation/showTime.ts";
import type { LedgerFactsOf, LedgerLineFacts, LedgerLineName } from "./ledgerFacts.ts";

export type LengthUnit = "mm" | "inch";

/** What a screen says of one ledger line. */
export interface LedgerWords {
  /** What was done. */
  readonly name: string;
  /** What was known, under the name. */
  readonly known: string;
  /** One sentence with the numbers. */
  readonly ground: string;
  /** The sum with its numbers. */
  readonly sum: string;
  /** Keys of docs/SOURCES.md, each with what it is. */
  readonly source: string;
  /** One sentence: what would make the line surer. */
  readonly surer: string;
}

export type LedgerWordsInput = LedgerLineFacts & { readonly lengthUnit?: LengthUnit };

type Wording<Line extends LedgerLineName> = (facts: LedgerFactsOf[Line], unit: LengthUnit) => LedgerWords;

const nineInTen = 1.6448536269514722;

/**
 * A ledger line in the words of the trade: its name, what was known, its ground, its sum, its source, what would make it surer.
 *
 * Formula  none: words with the numbers of the line in them.
 * Units    lengths in mm or inches as asked, times in s, stops (+ is more time); ± holds nine in ten.
 * Holds    for the facts that `planWithFacts` gives.
 *
 * @source none: wording (by hand)
 * @example ledgerWords({ line: "place", facts: { stops: 1, sd: 0, area: "hull", averaged: 1 } }).name // "Placed 1 stop above mid grey"
 */
export function ledgerWords({ line, facts, lengthUnit = "mm" }: LedgerWordsInput): LedgerWords {
  return (wordings[line] as Wording<typeof line>)(facts as never, lengthUnit);
}

const wordings: { readonly [Line in LedgerLineName]: Wording<Line> } = {
  reading(facts) {
    const { area, averaged, offsetStops, fNumber, iso } = facts;
    const several = averaged > 1;
    const dial = facts.way === "timeS" || facts.way === "ev" ? "ISO" : "EI";
    const frame = `${showFNumber({ fNumber })} and ${dial} ${figures(iso, 3)}`;
    const offset =
      offsetStops === 0
        ? ""
        : `, with ${count(offsetStops)} ${offsetStops > 0 ? "added" : "taken off"} because the meter shows ${tooMuch(offsetStops)}`;
    const on = area === null ? "" : ` on ${the(area)}`;
    const time = spoken(facts.timeS);
    return {
      name: several ? `Meter, mean of ${averaged} readings` : area === null ? "Meter" : `Meter on ${the(area)}`,
      known: several
        ? `${showEv({ ev: facts.ev100 })} at ISO 100 in the mean; reckoned as ${time} at ${frame}`
        : `${asRead(facts)}; one reading`,
      ground: several
        ? `The mean of ${averaged} readings is ${showEv({ ev: facts.ev100 })} at ISO 100, which is ${time} at ${frame}: ${stopsOf(facts)} from one second${offset}.`
        : facts.way === "timeS"
          ? `The meter gave ${facts.text === undefined ? time : typedTime(facts.text, time)} at ${frame}${on}: ${stopsOf(facts)} from one second${offset}.`
          : `The meter gave ${asRead(facts)}${on}, which is ${time} at ${frame}: ${stopsOf(facts)} from one second${offset}.`,
      sum: `log2(${figures(facts.timeS, 4)})${offsetStops === 0 ? "" : ` ${plus(offsetStops)}`} = ${stops(facts)}`,
      source: "iso-2720: meters and their K and C (second hand); apex: dials in powers of two (second hand)",
      surer: readingSurer(facts),
    };
  },

  place(facts) {
    const what =
      facts.area === null
        ? facts.averaged > 1
          ? "The mean of the readings"
          : "What was metered"
        : capital(the(facts.area));
    const where =
      facts.stops === 0 ? "on mid grey" : `${count(facts.stops)} ${facts.stops > 0 ? "above" : "below"} mid grey`;
    return {
      name: `Placed ${where}`,
      known: facts.stops === 0 ? `${what} prints at the aim of the exposure index` : `${what}, by choice`,
      ground: `${what} is placed ${where}, which ${facts.stops === 0 ? "changes nothing" : `asks for ${count(facts.stops)} ${facts.stops > 0 ? "more" : "less"}`}.`,
      sum: `as placed: ${stops(facts)}`,
      source: "none: a choice of the photographer (by hand)",
      surer: "It is a choice and has no doubt; the expected print shows what it does.",
    };
  },

  aperture(facts, unit) {
    const { fNumber, readingFNumber, diameterMm, focalLengthMm } = facts;
    const at = showFNumber({ fNumber });
    const half = figures(2 * Math.log2(1 + 0.5 / diameterMm), 2);
    const how = {
      marked: `as marked on the lens, focal length ${lengthOf(focalLengthMm ?? 0, unit)}`,
      measured: `as measured, focal length ${lengthOf(focalLengthMm ?? 0, unit)}`,
      diameter: `pupil ${lengthOf(diameterMm, unit)}, focal length ${lengthOf(focalLengthMm ?? 0, unit)}`,
      hole: `hole ${lengthOf(diameterMm, unit)}, ${lengthOf(facts.extensionMm, unit)} from the paper`,
    }[facts.how];
    return {
      name: facts.kind === "pinhole" ? `Pinhole of ${at}` : `Lens at ${at}`,
      known: how,
      ground:
        facts.stops === 0
          ? `The light is reckoned at the ${facts.kind}'s own ${at}, so nothing is added.`
          : `The reading is for ${showFNumber({ fNumber: readingFNumber })} and the ${facts.kind} has ${at}, so ${moved(facts.stops)}.`,
      sum: `2 × log2(${figures(fNumber, 4)} ÷ ${figures(readingFNumber, 4)}) = ${stops(facts)}`,
      source: "walree: f-number as focal length by entrance pupil (seen); iso-517: marked series (second hand)",
      surer:
        facts.how === "hole"
          ? `Measure the hole under a strong loupe, in two directions; its whole error counts twice in the light.`
          : `Measure the opening as seen from the front: ${unit === "mm" ? "half a millimetre" : "0.02 in"} here is ${half} stop.`,
    };
  },

  extension(facts, unit) {
    if (facts.kind === "pinhole") {
      return {
        name: `Extension ${lengthOf(facts.extensionMm, unit)}`,
        known: "the pinhole's f-number already holds it",
        ground: `A pinhole's f-number is made with its real ${lengthOf(facts.extensionMm, unit)} to the paper, so nothing more is added.`,
        sum: "held by the f-number: 0.00",
        source: "none: a pinhole's f-number is extension by hole (by hand)",
        surer: "Nothing is left to be surer of in this line.",
      };
    }
    const magnification = facts.magnification ?? 0;
    const focalLengthMm = facts.focalLengthMm ?? facts.extensionMm;
    const pupil = facts.pupilRatio === 1 ? "" : ` ÷ ${figures(facts.pupilRatio, 3)}`;
    const sum = `2 × log2(1 + ${figures(magnification, 3)}${pupil}) = ${stops(facts)}`;
    const source =
      "greivenkamp-2004, p. 29: light falls with the square of 1 + m/P (second hand); gauss: m from f and extension (from memory)";
    if (magnification === 0) {
      return {
        name: "Extension, distant",
        known: "focused far away",
        ground: `The subject is taken as distant, so the lens stands at its ${lengthOf(focalLengthMm, unit)} and nothing is added.`,
        sum,
        source,
        surer: `Nearer than ${distanceOf(20 * focalLengthMm, unit)} (20 focal lengths) it is 0.15 stop or more: measure board to ground glass then.`,
      };
    }
    const aMm = (2 / Math.LN2 / (focalLengthMm * (facts.pupilRatio + magnification))) * (unit === "mm" ? 1 : 25.4 / 16);
    const subject = facts.subjectDistanceMm === null ? "" : `; subject at ${distanceOf(facts.subjectDistanceMm, unit)}`;
    return {
      name: `Extension ${lengthOf(facts.extensionMm, unit)}`,
      known: `${focusKnown[facts.way]}${subject}`,
      ground: `At ${lengthOf(facts.extensionMm, unit)} a ${lengthOf(focalLengthMm, unit)} lens draws the subject ${figures(magnification, 3)} times its size, so the paper gets ${figures(2 ** facts.stops, 3)} times less light.`,
      sum,
      source,
      surer: `Measure board to ground glass to the ${unit === "mm" ? "millimetre" : "sixteenth of an inch"}, which here is ${figures(aMm, 1)} stop.`,
    };
  },

  exposureIndex(facts) {
    const index = figures(facts.exposureIndex, 3);
    const own = facts.found === "ownSheets";
    return {
      name: `Paper at EI ${index}`,
      known: own
        ? "found with own sheets: their light, lens and meter are in it"
        : facts.sd >= 0.6
          ? "a guess; every line counts in full"
          : "told, or from a test; every line counts in full",
      ground: facts.dial
        ? `From ISO ${figures(facts.dialIso, 3)} on the dial to EI ${index} the paper needs ${figures(2 ** facts.stops, 2)} times the light, ${stopsOf(facts)}.`
        : `The light was read free of a dial and is reckoned at EI ${index} from the start, so nothing is added.`,
      sum: `log2(${figures(facts.dialIso, 3)} ÷ ${index}) = ${stops(facts)}`,
      source: "apex: speeds in powers of two (second hand); none: starting doubt (common practice)",
      surer: indexSurer(facts.sd),
    };
  },

  transmission(facts) {
    const now = percent(facts.transmission);
    const source = "iso-12232: 0.90 supposed for a lens (second hand)";
    const surer = facts.inIndex
      ? "Nothing to make surer as long as the lens stays the same."
      : "Say how many bare and coated surfaces the lens has, or find the index with own sheets through this lens.";
    if (facts.inIndex) {
      return {
        name: "Glass",
        known: "found with this lens: already in the EI",
        ground: `The index was found through this glass, which lets ${now} of the light through, so it is already in the EI.`,
        sum: "already in the EI: 0.00",
        source,
        surer,
      };
    }
    const then = facts.thenTransmission ?? 0.9;
    const against = facts.thenTransmission === null ? "the meter supposes" : "that of the index's sheets let through";
    const through = facts.transmission === 1 ? "all the light" : `${now} of the light`;
    return {
      name: facts.transmission === 1 ? "No glass" : "Glass",
      known: `lets ${through} through; ${against} ${percent(then)}`,
      ground: `The lens lets ${through} through and ${against} ${percent(then)}, so ${moved(facts.stops)}.`,
      sum: `−log2(${figures(facts.transmission, 3)} ÷ ${figures(then, 3)}) = ${stops(facts)}`,
      source,
      surer,
    };
  },

  filters(facts) {
    const parts = facts.filters.map((filter) => `${filter.name ?? "filter"} ${filterMark(filter)}`);
    return {
      name: parts.length === 0 ? "No filter" : parts.length === 1 ? "Filter" : "Filters",
      known: parts.length === 0 ? "nothing before the lens" : parts.join(", "),
      ground:
        parts.length === 0
          ? "No filter is said to be before the lens, so nothing is added."
          : `Before the lens: ${facts.filters.map((filter) => `${filter.name ?? "filter"} ${filterMark(filter)} is ${less(filter.stops)}${count(filter.stops)}`).join(", ")}, so ${moved(facts.stops)}.`,
      sum: `${facts.filters.map(filterSum).join(" + ").replaceAll("+ −", "− ") || "none"} = ${stops(facts)}`,
      source: "photometry: density as the logarithm of light (from memory)",
      surer: "Meter an even surface with and without the filter; a coloured one needs a test on this paper.",
    };
  },

  colourOfLight(facts) {
    const source =
      "cie-15: spectra and the eye (second hand); iso-6728: lens (seen); none: what papers see (assumption)";
    const paper = paperNames[facts.sensitivity] ?? facts.sensitivity;
    if (facts.source === null || facts.actinicStops === null) {
      return {
        name: "Colour of the light",
        known: facts.ownSheets ? "as when the EI was found" : "not said: taken as daylight",
        ground: `No light was named, so it is taken as ${facts.ownSheets ? "that of the index's own sheets" : "the daylight an index is told for"} and nothing is added.`,
        sum: "nothing counted: 0.00",
        source,
        surer: "Name the light if it is a lamp, open shade or an overcast sky.",
      };
    }
    const light = lightName(facts.source);
    if (facts.inIndex) {
      return {
        name: "Colour of the light",
        known: `${light}, as when the EI was found`,
        ground: `The index was found in this light (${light}), in which ${paper} sees ${seen(facts.actinicStops)} the meter, so it is already in the EI.`,
        sum: "already in the EI: 0.00",
        source,
        surer: "Nothing to make surer as long as the light stays the same.",
      };
    }
    const then = facts.thenActinicStops;
    const change = then === null ? "" : `, and of the light of the index's sheets ${seen(then)} the meter`;
    return {
      name: "Colour of the light",
      known: `${light}; ${paper}`,
      ground: `Of ${light} ${paper} sees ${seen(facts.actinicStops)} the meter${change}, so ${moved(facts.stops)}.`,
      sum: `−(${signed(facts.actinicStops)}${then === null ? "" : ` − (${signed(then)})`}) = ${stops(facts)}`,
      source,
      surer: facts.source.startsWith("whiteLed")
        ? "White LEDs differ by stops: find the index under this lamp, or light with filament or daylight."
        : "Find the index with a sheet in this light: then the line falls away.",
    };
  },

  longExposure(facts) {
    const metered = spoken(facts.meteredTimeS);
    const source = "reciprocity-article: the law of long exposures (second hand)";
    if (facts.way === "unknown") {
      return {
        name: "Long exposure (reciprocity)",
        known: "no test of this paper: none counted",
        ground:
          facts.sd === 0
            ? `Nobody has tested this paper, and at ${metered} nothing is counted or doubted.`
            : `Nobody has tested this paper's long exposures: at ${metered} nothing is counted, and the doubt is ${give(facts.sd)} stop, growing with every ten times longer.`,
        sum: "nothing counted: 0.00",
        source: `${source}; none: the doubt of an untested paper (assumption)`,
        surer:
          "Expose one step test at seconds and one at minutes, the light cut to match: the difference is this line.",
      };
    }
    const needed = spoken(facts.timeS);
    const by =
      facts.way === "exponent"
        ? `exponent ${figures(facts.exponent ?? 1, 3)} from ${spoken(facts.fromS ?? 1)}`
        : "this paper's table";
    return {
      name: "Long exposure (reciprocity)",
      known: facts.extrapolated ? `${by}, beyond its last row` : by,
      ground:
        facts.stops === 0
          ? `By ${by} the metered ${metered} needs nothing more.`
          : `By ${by} the metered ${metered} needs ${needed}, so ${moved(facts.stops)}.`,
      sum: `log2(${figures(facts.timeS, 4)} ÷ ${figures(facts.meteredTimeS, 4)}) = ${stops(facts)}`,
      source,
      surer: facts.extrapolated
        ? "Test this paper at a time as long as this one: the table ends before it."
        : "A step test at this length of time shows whether the rule holds.",
    };
  },

  hand(facts) {
    const bias =
      facts.biasS === 0
        ? ""
        : `; ${figures(Math.abs(facts.biasS), 2)} s ${facts.biasS > 0 ? "too long" : "too short"} on the whole, reckoned with`;
    return {
      name: "Your hand on the cap",
      known: `even to ${give(facts.sdS)} s at this time${bias}`,
      ground: `At ${spoken(facts.timeS)} a hand even to ${give(facts.sdS)} s is out by no more than ${give(facts.sd).slice(1)} stop nine times in ten.`,
      sum: `${give(facts.sdS)} ÷ (${figures(facts.timeS, 3)} × 0.693) = ${give(facts.sd)}, as doubt only`,
      source: "lewis-miall-2009: evenness of timed intervals (second hand); none: the starting values (assumption)",
      surer: "Practise with the cap: it measures how even your own hand is, and what it gives too long.",
    };
  },
};

const focusKnown: Readonly<Record<LedgerFactsOf["extension"]["way"], string>> = {
  distant: "focused far away",
  extensionMm: "board to ground glass",
  travelMm: "racked out from the infinity mark",
  magnification: "from the magnification",
  imageSizeMm: "from the size of the image",
  subjectDistanceMm: "from the distance to the lens",
  totalDistanceMm: "from subject to paper",
};

const paperNames: Readonly<Record<string, string>> = {
  blue: "a blue-sensitive paper",
  chloride: "a chloride paper",
  chlorobromide: "a chlorobromide paper",
  bromide: "a bromide paper",
  orthochromatic: "an orthochromatic paper",
  variableContrast: "a variable-contrast paper",
};

function lightName(source: string): string {
  const [kind = "", kelvin = ""] = source.split(":");
  if (kind === "filament") return `a ${kelvin} K filament lamp`;
  if (kind === "whiteLed") return `a ${kelvin} K white LED`;
  if (kind === "daylight") return `${kelvin} K daylight`;
  return source === "illuminantA" ? "a 2856 K filament lamp" : source;
}

/** What was typed, and what its dial means by it. */
function typedTime(text: string, time: string): string {
  return text === time || `${text} s` === time ? time : `${text} (${time} as reckoned)`;
}

function asRead({ way, read, fNumber, iso, timeS, text }: LedgerFactsOf["reading"]): string {
  switch (way) {
    case "timeS":
      return `${text ?? spoken(timeS)} at ${showFNumber({ fNumber })}, ISO ${figures(iso, 3)}`;
    case "ev":
      return `${showEv({ ev: read })} at ISO ${figures(iso, 3)}`;
    case "ev100":
      return `${showEv({ ev: read })} at ISO 100`;
    case "luminanceCdM2":
      return `${figures(read, 3)} cd/m²`;
    case "illuminanceLx":
      return `${figures(read, 3)} lx`;
  }
}

function readingSurer({ averaged, meterSd, readingSd }: LedgerFactsOf["reading"]): string {
  if (meterSd > readingSd / Math.sqrt(averaged)) {
    return "The meter itself is most of this doubt: compare it with another one on an even board.";
  }
  const after = nineInTen * Math.hypot(meterSd, readingSd / Math.sqrt(3 * averaged));
  return `Read the same ${averaged > 1 ? "places" : "place"} twice more: that brings this to ±${after.toFixed(2)} stop.`;
}

function indexSurer(sd: number): string {
  if (sd > 0.31) return "A step test brings this to ±0.49 stop, three measured sheets to ±0.25.";
  if (sd > 0.16) return "Three measured sheets bring this to ±0.25 stop.";
  return "Measure more sheets of this box and recipe.";
}

function filterMark({ way, value }: LedgerFactsOf["filters"]["filters"][number]): string {
  if (way === "neutralDensity") return `ND ${figures(value, 3)}`;
  return way === "factor" ? `factor ${figures(value, 3)}` : `of ${count(value)}`;
}

function filterSum({ way, value, stops: cost }: LedgerFactsOf["filters"]["filters"][number]): string {
  if (way === "neutralDensity") return `${figures(value, 3)} ÷ 0.301`;
  return way === "factor" ? `log2(${figures(value, 3)})` : signed(cost);
}

function stops({ stops: value, sd }: { readonly stops: number; readonly sd: number }): string {
  return formatStops({ stops: value, sd });
}

function stopsOf({ stops: value, sd }: { readonly stops: number; readonly sd: number }): string {
  return `${formatStops({ stops: value, sd })} stops`;
}

/** “1.5 stops”, without a sign, to a hundredth. */
function count(value: number): string {
  const size = hundredths(value);
  return `${size} ${size > 1 ? "stops" : "stop"}`;
}

function moved(value: number): string {
  if (hundredths(value) === 0) return "nothing is added";
  return `${count(value)} ${hundredths(value) > 1 ? "are" : "is"} ${value > 0 ? "added" : "taken off"}`;
}

function hundredths(value: number): number {
  return Number(Math.abs(value).toFixed(2));
}

/** An area in the middle of a sentence: “the hull”. */
function the(area: string): string {
  const [first = "", second = ""] = area;
  const name = second === second.toLowerCase() ? first.toLowerCase() + area.slice(first.length) : area;
  return `the ${name}`;
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function less(value: number): string {
  return value < 0 ? "less by " : "";
}

/** How a paper sees a light beside the meter: “2.1 stops less than”. */
function seen(actinicStops: number): string {
  if (hundredths(actinicStops) === 0) return "as much as";
  return `${count(actinicStops)} ${actinicStops < 0 ? "less" : "more"} than`;
}

/** A doubt as it is shown everywhere: nine in ten. */
function give(sd: number): string {
  return `±${figures(nineInTen * sd, 2)}`;
}

function tooMuch(offsetStops: number): string {
  return offsetStops > 0 ? "too much light" : "too little light";
}

function signed(value: number): string {
  if (hundredths(value) === 0) return "0";
  return `${value < 0 ? "−" : "+"}${figures(Math.abs(value), 3)}`;
}

function plus(value: number): string {
  return `${value < 0 ? "−" : "+"} ${figures(Math.abs(value), 3)}`;
}

function percent(share: number): string {
  return `${figures(100 * share, 3)} %`;
}

/** A time as spoken, always with its unit: “1/16 s”. */
function spoken(timeS: number): string {
  const text = showTime({ timeS });
  return text.includes("/") ? `${text} s` : text;
}

function lengthOf(lengthMm: number, unit: LengthUnit): string {
  return formatLength({ lengthMm, unit });
}

/** Distances across a yard: metres or feet once they are long. */
function distanceOf(lengthMm: number, unit: LengthUnit): string {
  if (unit === "mm") return lengthMm < 1000 ? lengthOf(lengthMm, unit) : `${figures(lengthMm / 1000, 3)} m`;
  return lengthMm < 914.4 ? lengthOf(lengthMm, unit) : `${figures(lengthMm / 304.8, 3)} ft`;
}
