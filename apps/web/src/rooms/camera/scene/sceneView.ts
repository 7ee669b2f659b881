import { type Kit, type PlanOf, planOf, type SceneRangeOf, sceneRangeOf } from "@captray/notebook/answers";
import type { Scene } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { formatStops, showFNumber, showTime } from "@captray/science/notation";
import { saidWords } from "../saidWords.ts";

const nineInTen = 1.645;

/** Outdoors the light is asked about again after this long. */
const askAgainAfterMin = 10;

export interface AreaView {
  readonly id: string;
  readonly name: string;
  /** The name as it is kept: empty where nobody gave one. */
  readonly storedName: string;
  /** What the meter said, as it was typed. */
  readonly said: string;
  /** Under the reading: where it stands, and whether it was moved. */
  readonly standing: string;
  /** How its reading came about, where it was not simply read. */
  readonly madeOf: string | undefined;
  /** Above (+) or below mid grey; of the placed one only. */
  readonly placeStops: number;
  /** From the placed area, in words; nothing for the placed one. */
  readonly fromGround: string | undefined;
  readonly isGround: boolean;
}

export interface SceneView {
  readonly plan: PlanOf;
  readonly areas: readonly AreaView[];
  /** “The scene is 7.0 stops, from snow to shed door.” Nothing for fewer than two areas. */
  readonly range: string | undefined;
  /** How long ago the newest reading was taken, in words. */
  readonly age: string;
  readonly askAgain: boolean;
  readonly frame: string;
  readonly problem: { readonly head: string; readonly say: string } | undefined;
  readonly said: string | undefined;
}

/** The page of a scene worked out from its records and the time of day; pure. */
export function sceneView({
  kit,
  nowMs,
  lengthUnit,
}: {
  readonly kit: Kit;
  readonly nowMs: number;
  readonly lengthUnit: "mm" | "inch";
}): SceneView {
  const { scene } = kit;
  const plan = planOf(kit);
  const apart = sceneRangeOf(kit);
  const newest = newestReading(scene);
  const ageMin =
    newest?.takenAt === undefined ? undefined : Math.max(0, Math.floor((nowMs - newest.takenAt.at) / 60_000));
  return {
    plan,
    areas: areasOf(scene, apart),
    range: rangeWords(apart),
    age: ageMin === undefined ? "" : ageWords(ageMin),
    askAgain: ageMin !== undefined && ageMin >= askAgainAfterMin && isOutdoors(scene),
    frame: frameWords(newest),
    problem: problemOf(plan, lengthUnit),
    said:
      plan.kind === "plan" && plan.answer.said !== null && scene.saidTime
        ? saidWords({ said: plan.answer.said, saidTimeS: scene.saidTime.timeS.value, timeS: plan.answer.timeS })
        : undefined,
  };
}

/** “read 6 min ago”, “read 3 h ago”, “read 12 days ago”. */
function ageWords(ageMin: number): string {
  if (ageMin === 0) return "read just now";
  if (ageMin < 90) return `read ${ageMin} min ago`;
  const hours = Math.round(ageMin / 60);
  if (hours < 48) return `read ${hours} h ago`;
  return `read ${Math.round(hours / 24)} days ago`;
}

/** Outdoors unless the scene says otherwise, or its light is a lamp. */
function isOutdoors(scene: Scene): boolean {
  return scene.outdoors ?? !/^(filament|whiteLed|illuminantA)/.test(scene.light?.source ?? "");
}

function newestReading(scene: Scene): Scene["readings"][number] | undefined {
  const held = new Set(scene.areas.map((area) => area.readingId));
  return scene.readings
    .filter((reading) => held.has(reading.id))
    .reduce<Scene["readings"][number] | undefined>(
      (newest, one) => ((one.takenAt?.at ?? 0) >= (newest?.takenAt?.at ?? 0) ? one : newest),
      undefined,
    );
}

function frameWords(reading: Scene["readings"][number] | undefined): string {
  const said = reading?.reading;
  if (said?.way === "time")
    return `${showFNumber({ fNumber: said.fNumber.value })}, ISO ${said.iso.text ?? said.iso.value}`;
  if (said?.way === "ev") return `ISO ${said.iso.text ?? said.iso.value}`;
  return "";
}

function areasOf(scene: Scene, apart: SceneRangeOf): AreaView[] {
  const groundId = scene.place?.areaId;
  return scene.areas.map((area, place) => {
    const reading = scene.readings.find((one) => one.id === area.readingId);
    const isGround = area.id === groundId;
    const from = apart.areas[place]?.fromGroundStops;
    const fromGround = isGround || from === undefined ? undefined : formatStops({ stops: from, sd: 0.15 });
    const placeStops = isGround ? (scene.place?.stops ?? 0) : 0;
    const moved = reading?.shifted === undefined ? "" : ", moved";
    return {
      id: area.id,
      name: area.name === "" ? "Subject" : area.name,
      storedName: area.name,
      said: readingWords(reading?.reading),
      standing: `${isGround ? placedWords(placeStops) : (fromGround ?? "")}${moved}`,
      madeOf: madeOf(reading),
      placeStops,
      fromGround,
      isGround,
    };
  });
}

function placedWords(stops: number): string {
  if (stops === 0) return "placed";
  return `placed ${stops < 0 ? "−" : "+"}${Number(Math.abs(stops).toFixed(2))}`;
}

function madeOf(reading: Scene["readings"][number] | undefined): string | undefined {
  if (reading?.averageOf !== undefined) return `The middle of ${reading.averageOf.length} readings.`;
  if (reading?.shifted !== undefined) {
    const stops = formatStops({ stops: reading.shifted.byStops, sd: 0.15 });
    return `Not read itself: moved by ${stops} stops with the placed area.`;
  }
  return undefined;
}

function rangeWords({ range }: SceneRangeOf): string | undefined {
  if (range === undefined) return undefined;
  const stops = range.stops.toFixed(1);
  const plusMinus = (nineInTen * range.sd).toFixed(1);
  const called = (name: string) => (name === "" ? "subject" : name);
  return `The scene is ${stops} stops, give or take ${plusMinus}: from ${called(range.darkest)} to ${called(range.lightest)}.`;
}

/** A reading as the meter said it: “1/15”, “EV 11”. */
export function readingWords(reading: Scene["readings"][number]["reading"]): string {
  switch (reading?.way) {
    case "time":
      return timeWords(reading.timeS.text) ?? showTime({ timeS: reading.timeS.value });
    case "ev":
      return reading.ev.text ?? `EV ${Number(reading.ev.value.toFixed(1))}`;
    case "ev100":
      return `EV ${Number(reading.ev100.value.toFixed(1))} at ISO 100`;
    case "luminance":
      return `${Number(reading.luminanceCdM2.value.toPrecision(3))} cd/m²`;
    case "illuminance":
      return `${Number(reading.illuminanceLx.value.toPrecision(3))} lx`;
    default:
      return "read it";
  }
}

/** “1/15” as typed; whole seconds with their unit, so that 1 is not taken for a count. */
function timeWords(text: string | undefined): string | undefined {
  return text !== undefined && /^\d+([.,]\d+)?$/.test(text) ? `${text} s` : text;
}

const missingWords = {
  reading: ["Nothing has been read yet", "Add an area and say what the meter says of it."],
  focalLength: ["The lens has no focal length yet", "Say on the Shelf what is engraved on it, or what you measured."],
  aperture: ["The lens has no f-number yet", "Say on the Shelf what is engraved on it, or the diameter of its pupil."],
  exposureIndex: [
    "The paper has no exposure index yet",
    "Say whether it becomes a negative or a positive; the first index is a guess.",
  ],
  pinholeExtension: ["A pinhole needs its distance to the paper", "Measure from the hole to the paper."],
} as const;

function problemOf(plan: PlanOf, lengthUnit: "mm" | "inch"): SceneView["problem"] {
  if (plan.kind === "refused") {
    const { code, facts, key } = plan.fault;
    const { message, hint } = messageOf({ code, facts, key, lengthUnit });
    return { head: message, say: hint };
  }
  if (plan.kind === "missing") {
    const [first] = plan.missing;
    if (first !== undefined) return { head: missingWords[first][0], say: missingWords[first][1] };
  }
  return undefined;
}
