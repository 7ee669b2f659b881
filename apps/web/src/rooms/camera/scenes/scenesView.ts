import type { SheetCard } from "@captray/notebook/journal";
import type { Lens, Scene } from "@captray/notebook/records";
import { formatLength, showTime } from "@captray/science/notation";
import { lensWords } from "../scene/focusWords.ts";
import { readingWords } from "../scene/sceneView.ts";

/** One scene of the list, in words. */
export interface SceneLine {
  readonly id: string;
  readonly subject: string;
  readonly photograph: string | undefined;
  /** Where, and the hour wanted. */
  readonly where: string;
  /** Lens and extension. */
  readonly setUp: string;
  readonly still: string;
  readonly reading: string;
  /** The sheets made of it, by their codes. */
  readonly sheets: string;
}

const dates = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" });

/** The scenes, newest first, each with what was planned for it and what was made of it. */
export function scenesView({
  scenes,
  lenses,
  cards,
  lengthUnit,
}: {
  readonly scenes: readonly Scene[];
  readonly lenses: readonly Lens[];
  readonly cards: readonly SheetCard[];
  readonly lengthUnit: "mm" | "inch";
}): readonly SceneLine[] {
  const codes = new Map<string, string[]>();
  for (const { code, links } of cards) {
    if (links.sceneId !== undefined) codes.set(links.sceneId, [...(codes.get(links.sceneId) ?? []), code]);
  }
  return [...scenes].reverse().map((scene) => ({
    id: scene.id,
    subject: scene.subject === "" ? "Scene without a name" : scene.subject,
    photograph: scene.photograph,
    where: [scene.where, scene.hourWanted].filter((words) => words !== undefined && words !== "").join("; "),
    setUp: setUpOf(
      scene,
      lenses.find((lens) => lens.id === scene.lensId),
      lengthUnit,
    ),
    still: scene.stillS === undefined ? "" : `keeps still ${showTime({ timeS: scene.stillS.value })}`,
    reading: readingOf(scene),
    sheets: sheetsOf(codes.get(scene.id) ?? []),
  }));
}

function setUpOf(scene: Scene, lens: Lens | undefined, lengthUnit: "mm" | "inch"): string {
  const words = lens === undefined ? [] : [lensWords(lens, lengthUnit)];
  switch (scene.focus?.by) {
    case undefined:
      break;
    case "distant":
      words.push("distant");
      break;
    case "extension":
      words.push(`board to glass ${formatLength({ lengthMm: scene.focus.extensionMm.value, unit: lengthUnit })}`);
      break;
    default:
      words.push("focus planned");
  }
  return words.join(", ");
}

function readingOf(scene: Scene): string {
  const placed = scene.areas.find((area) => area.id === scene.place?.areaId) ?? scene.areas[0];
  const reading = scene.readings.find((one) => one.id === placed?.readingId);
  if (reading?.reading === undefined) return "not read yet";
  const when = reading.takenAt === undefined ? "" : `, ${dates.format(reading.takenAt.at)}`;
  const areas = scene.areas.length > 1 ? `, ${scene.areas.length} areas` : "";
  return `${readingWords(reading.reading)}${areas}${when}`;
}

function sheetsOf(codes: readonly string[]): string {
  if (codes.length === 0) return "no sheet yet";
  const named = [...codes].reverse().slice(-4);
  const more =
    codes.length > named.length ? `${codes.length} sheets, last ` : codes.length === 1 ? "sheet " : "sheets ";
  return more + named.join(", ");
}
