import type { HoursFor } from "@captray/notebook/answers";
import type { Scene, Typed } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { readTime } from "@captray/science/notation";

type Daylight = NonNullable<Scene["daylight"]>;

export const skies = [
  { value: "clear", name: "clear", detail: "sun and blue sky" },
  { value: "partlyCloudy", name: "partly cloudy", detail: "sun through cloud" },
  { value: "overcast", name: "overcast", detail: "no sun" },
] as const;

/** How the subject stands to the sky. */
export const faces = [
  { value: "level", name: "lies open to the sky", facesDeg: undefined },
  { value: "north", name: "stands, faces north", facesDeg: 0 },
  { value: "east", name: "stands, faces east", facesDeg: 90 },
  { value: "south", name: "stands, faces south", facesDeg: 180 },
  { value: "west", name: "stands, faces west", facesDeg: 270 },
] as const;

/** The same day and sky, for a subject that stands otherwise. */
export function withFace(said: Daylight, face: (typeof faces)[number]["value"]): Daylight {
  const facesDeg = faces.find(({ value }) => value === face)?.facesDeg;
  const { day, sky, snow } = said;
  return facesDeg === undefined ? { day, sky } : { day, sky, facesDeg, ...(snow !== undefined && { snow }) };
}

/** The day of this device's clock. */
export function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The two times that were typed; one that cannot be read is left out. */
export function timeTyped(least: string, most: string): NonNullable<Scene["timeWanted"]> {
  const [leastS, mostS] = [timeFrom(least), timeFrom(most)];
  return { ...(leastS && { leastS }), ...(mostS && { mostS }) };
}

function timeFrom(text: string): Typed | undefined {
  const read = readTime({ text });
  if (read.kind !== "read" || !(read.value > 0) || read.value > 1e8) return undefined;
  return { value: read.value, text: text.trim().slice(0, 60) };
}

const lacked = {
  site: "the place",
  day: "the day and the sky",
  reading: "",
  focalLength: "a lens with its focal length",
  aperture: "the f-number of the lens",
  exposureIndex: "a paper with its exposure index",
  pinholeExtension: "the pinhole's distance to the paper",
} as const;

/** What has to be said before there is an hour; nothing where all is there. */
export function hourLacks(hours: HoursFor, lengthUnit: "mm" | "inch"): string | undefined {
  if (hours.kind === "refused") {
    const { code, facts, key } = hours.fault;
    const { message, hint } = messageOf({ code, facts, key, lengthUnit });
    return `${message} ${hint}`;
  }
  if (hours.kind !== "missing") return undefined;
  const words = [...new Set(hours.missing.map((part) => lacked[part]).filter((part) => part !== ""))];
  return `Still to say: ${words.join(", ")}.`;
}
