import { type Kit, type PlanOf, practiceOf } from "@captray/notebook/answers";
import { formatLength, showFNumber } from "@captray/science/notation";

type Plan = Extract<PlanOf, { kind: "plan" }>;

/** What can be said better about a line, and so which fields open under it. */
export type GrantedSubject =
  | "exposureIndex"
  | "longExposure"
  | "place"
  | "light"
  | "meter"
  | "aperture"
  | "glass"
  | "hand"
  | "infinity";

/** One thing the cap time takes for granted, with what its doubt adds. */
export interface Granted {
  readonly subject: GrantedSubject;
  readonly name: string;
  readonly known: string;
  /** One standard deviation, stops. */
  readonly sdStops: number;
}

/** How an exposure index was found, in the words of a list. */
const foundWords = {
  guessed: "a guess; a step test on the first sheet tells",
  told: "told by somebody; your own sheets will tell better",
  ownSheets: "from your own sheets: light, lens and meter are in it",
} as const;

const lightWords: Readonly<Record<string, string>> = {
  "daylight:5500": "daylight, sun and sky",
  "daylight:6500": "overcast sky",
  "daylight:10000": "open shade under a blue sky",
  "filament:2700": "a filament bulb",
  "whiteLed:2700": "a warm white LED",
  "whiteLed:4000": "a white LED",
  "whiteLed:6500": "a cold white LED",
};

/** A light in the words of the page. */
function lightInWords(source: string): string {
  return lightWords[source] ?? source;
}

/** The lights offered, most likely first. */
export const offeredLights: readonly { readonly source: string; readonly name: string }[] = Object.entries(
  lightWords,
).map(([source, name]) => ({ source, name }));

/** Everything the plan takes for granted, the largest doubt first. */
export function takenForGranted({
  plan,
  kit,
  lengthUnit,
}: {
  plan: Plan;
  kit: Kit;
  lengthUnit: "mm" | "inch";
}): Granted[] {
  const granted: Granted[] = [];
  for (const line of plan.answer.ledger) {
    switch (line.line) {
      case "reading":
        granted.push({
          subject: "place",
          name: placeName(kit.scene.place?.stops ?? 0),
          known: kit.scene.place?.stops ? "where you want it on the print" : "what you pointed at prints mid grey",
          sdStops: line.facts.readingSd,
        });
        granted.push({
          subject: "meter",
          name: kit.meter?.offsetStops ? "The meter’s own error" : "The meter is true",
          known: kit.meter?.offsetStops ? "counted, as you said it" : "",
          sdStops: line.facts.meterSd,
        });
        break;
      case "exposureIndex":
        granted.push({
          subject: "exposureIndex",
          name: `EI ${line.facts.exposureIndex}`,
          known: foundWords[kit.exposureIndex?.found.how ?? "guessed"],
          sdStops: line.stops.sd,
        });
        break;
      case "longExposure":
        granted.push({
          subject: "longExposure",
          name: "Long exposure (reciprocity)",
          known:
            line.facts.way === "unknown" ? "none counted; doubt grows from 1 s" : "counted by this paper’s own test",
          sdStops: line.stops.sd,
        });
        break;
      case "colourOfLight":
        granted.push({
          subject: "light",
          name: "Colour of the light",
          known: line.facts.source === null ? "as when the EI was found" : lightInWords(line.facts.source),
          sdStops: line.stops.sd,
        });
        break;
      case "aperture":
        granted.push({
          subject: "aperture",
          name:
            line.facts.how === "marked"
              ? `${showFNumber({ fNumber: line.facts.fNumber })} is the hole it says`
              : `${showFNumber({ fNumber: line.facts.fNumber })}, as cut`,
          known: line.facts.how === "marked" ? "as marked" : "measured",
          sdStops: line.stops.sd,
        });
        break;
      case "transmission":
        granted.push({
          subject: "glass",
          name: "Glass",
          known:
            line.facts.transmission === 0.9
              ? "loses what the meter supposes"
              : `passes ${line.facts.transmission} of the light`,
          sdStops: line.stops.sd,
        });
        break;
      case "hand":
        granted.push({
          subject: "hand",
          name: "Your hand",
          known: practiceOf({ hand: kit.hand, way: "ticks" }) ? "as practised" : "not practised",
          sdStops: line.stops.sd,
        });
        break;
      case "extension":
        if (line.facts.way !== "distant") granted.push(infinity(line.stops.sd, kit, lengthUnit));
        break;
      default:
        break;
    }
  }
  return granted.filter(({ sdStops }) => sdStops > 0.004).sort((a, b) => b.sdStops - a.sdStops);
}

function placeName(stops: number): string {
  if (stops === 0) return "One reading, placed on mid grey";
  const size = Math.abs(stops) === 1 ? "1 stop" : `${Math.abs(stops)} stops`;
  return `One reading, placed ${size} ${stops > 0 ? "above" : "below"} mid grey`;
}

function infinity(sdStops: number, { lens }: Kit, lengthUnit: "mm" | "inch"): Granted {
  const measured = lens?.infinityExtensionMm?.value;
  const lengthMm = measured ?? lens?.measuredFocalLengthMm?.value ?? lens?.markedFocalLengthMm?.value;
  return {
    subject: "infinity",
    name: lengthMm === undefined ? "Infinity" : `Infinity at ${formatLength({ lengthMm, unit: lengthUnit })}`,
    known: measured === undefined ? "the board stands at the lens’s middle" : "as you measured it",
    sdStops,
  };
}
