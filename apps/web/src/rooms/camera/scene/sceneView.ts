import { type Kit, type PlanOf, planOf } from "@captray/notebook/answers";
import type { Scene } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { formatStops, showFNumber, showTime } from "@captray/science/notation";
import { saidWords } from "../saidWords.ts";

/** Outdoors the light is asked about again after this long. */
const askAgainAfterMin = 10;

export interface AreaView {
  readonly id: string;
  readonly name: string;
  /** What the meter said, as it was typed. */
  readonly said: string;
  /** From the placed area, in words; nothing for the placed one. */
  readonly fromGround: string | undefined;
  readonly isGround: boolean;
  /** Not read itself: moved by what another reading showed. */
  readonly moved: boolean;
}

export interface SceneView {
  readonly plan: PlanOf;
  readonly areas: readonly AreaView[];
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
  const newest = newestReading(scene);
  const ageMin =
    newest?.takenAt === undefined ? undefined : Math.max(0, Math.floor((nowMs - newest.takenAt.at) / 60_000));
  return {
    plan,
    areas: areasOf(scene, plan),
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

function areasOf(scene: Scene, plan: PlanOf): AreaView[] {
  const groundId = scene.place?.areaId;
  const byOrder = plan.kind === "plan" ? plan.answer.areas : [];
  let place = 0;
  return scene.areas.map((area) => {
    const reading = scene.readings.find((one) => one.id === area.readingId);
    const answer = reading?.reading === undefined ? undefined : byOrder[place++];
    const isGround = area.id === groundId;
    const above = answer === undefined ? undefined : answer.aboveMidStops - (scene.place?.stops ?? 0);
    return {
      id: area.id,
      name: area.name === "" ? "Subject" : area.name,
      said: readingWords(reading?.reading),
      fromGround: isGround || above === undefined ? undefined : formatStops({ stops: above, sd: 0.15 }),
      isGround,
      moved: reading?.shifted !== undefined,
    };
  });
}

/** A reading as the meter said it: “1/15”, “EV 11”. */
export function readingWords(reading: Scene["readings"][number]["reading"]): string {
  switch (reading?.way) {
    case "time":
      return reading.timeS.text ?? showTime({ timeS: reading.timeS.value });
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
