import type { DialReading, KnownLight } from "@captray/notebook/answers";
import type { Meter, Moment } from "@captray/notebook/records";
import { dayOfYear } from "@captray/science/light";
import { readDialTime } from "@captray/science/notation";
import { choice, figure, stop } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { saidIn, valueIn } from "../form/fromTexts.ts";
import { readSpeed, readStop, readWithin } from "../form/readers.ts";

const readDial = (text: string) => readDialTime({ text });
const readLight = readWithin("More than 0, up to 200 000.", 0.001, 200_000);

/** How long the shadow of an upright stick is says how high the sun stands: cot a. */
const shadows = [
  { value: "60", name: "half the stick", detail: "sun about 60° high" },
  { value: "45", name: "as long as the stick", detail: "45°" },
  { value: "27", name: "twice as long", detail: "27°" },
  { value: "18", name: "three times", detail: "18°" },
] as const;

/** What is asked to hold a meter against a known light. */
export function meterAskedParts(texts: Texts, meter: Meter): readonly FormPart[] {
  const isIncident = meter.reads === "incident";
  return [
    {
      head: "The light",
      fields: [
        choice("by", "Hold it against", [
          { value: "otherMeter", name: "another meter", detail: "one you trust" },
          { value: "fullSun", name: "the clear sun", detail: "no other meter needed" },
          { value: "knownLight", name: "a light you know", detail: "cd/m² or lx" },
        ]),
        ...lightFields(texts, isIncident),
      ],
      says: [lightWords(texts, isIncident)],
    },
    { head: "This meter says", fields: dialFields("", "this meter") },
    ...(texts.by === "otherMeter" ? [{ head: "The other one says", fields: dialFields("other", "the other") }] : []),
  ];
}

function lightFields(texts: Texts, isIncident: boolean): readonly FormField[] {
  if (texts.by === "fullSun") return [choice("shadow", "The shadow of an upright stick is", shadows)];
  if (texts.by !== "knownLight") return [];
  return isIncident
    ? [figure("lux", "Light on the meter", readLight, { after: "lx", hint: "1000" })]
    : [figure("luminance", "Brightness of the patch", readLight, { after: "cd/m²", hint: "100" })];
}

function lightWords(texts: Texts, isIncident: boolean): string {
  if (texts.by === "fullSun") {
    const held = isIncident
      ? "Turn the receptor square to the sun."
      : "Hold a grey card of 18 in a hundred square to the sun, and read it without your shadow on it.";
    return `${held} Under a clear blue sky, nothing white near by. The sun itself is only known to ±0.8 stop (a model of the clear sky; common practice): enough to find a meter that is a stop off.`;
  }
  if (texts.by === "knownLight")
    return "A screen, a light table or a lamp that was measured with an instrument you trust.";
  return "Both at the same even patch, from the same place, in the same minute.";
}

function dialFields(prefix: "" | "other", who: string): readonly FormField[] {
  const key = (name: string) => (prefix === "" ? name : `${prefix}${name[0]?.toUpperCase()}${name.slice(1)}`);
  return [
    {
      kind: "figure",
      key: key("time"),
      label: `Time, ${who}`,
      board: "time",
      read: readDial,
      hint: "1/60",
    },
    stop(key("stop"), `f-number, ${who}`, { hint: "8" }),
    figure(key("iso"), `ISO, ${who}`, readSpeed, { hint: "100" }),
  ];
}

/** What was read, once it is all there; `now` is for the height of the year's sun. */
export function meterAsked(
  texts: Texts,
  now: Moment,
): { readonly reading: DialReading; readonly light: KnownLight } | undefined {
  const reading = dialIn(texts.time, texts.stop, texts.iso);
  const light = lightIn(texts, now);
  return reading === undefined || light === undefined ? undefined : { reading, light };
}

function dialIn(
  time: string | undefined,
  number: string | undefined,
  iso: string | undefined,
): DialReading | undefined {
  const timeS = saidIn(time, readDial)?.value;
  const fNumber = valueIn(number, readStop);
  const speed = valueIn(iso, readSpeed);
  if (timeS === undefined || timeS <= 0 || fNumber === undefined || speed === undefined) return undefined;
  return { timeS, fNumber, iso: speed };
}

function lightIn(texts: Texts, now: Moment): KnownLight | undefined {
  if (texts.by === "fullSun") {
    const day = new Date(now.at + now.offsetMin * 60_000);
    const year = { year: day.getUTCFullYear(), month: day.getUTCMonth() + 1, day: day.getUTCDate() };
    return { by: "fullSun", altitudeDeg: Number(texts.shadow ?? 45), dayOfYear: dayOfYear(year) };
  }
  if (texts.by === "knownLight") {
    const luminanceCdM2 = valueIn(texts.luminance, readLight);
    if (luminanceCdM2 !== undefined) return { by: "knownLight", luminanceCdM2 };
    const illuminanceLx = valueIn(texts.lux, readLight);
    return illuminanceLx === undefined ? undefined : { by: "knownLight", illuminanceLx };
  }
  const reading = dialIn(texts.otherTime, texts.otherStop, texts.otherIso);
  return reading && { by: "otherMeter", reading };
}
