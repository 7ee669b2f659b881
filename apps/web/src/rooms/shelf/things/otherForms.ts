import type { Camera, FieldSet, Json, Lamp, Meter } from "@captray/notebook/records";
import { planDefaults } from "@captray/science/exposure";
import { choice, figure, mm, words } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { cleared, lengthText, plainText, saidIn, valueIn } from "../form/fromTexts.ts";
import { readMm, readSpeed, readStops, readWithin } from "../form/readers.ts";
import { sizeFields, sizeIn, sizeTexts } from "./sizeForm.ts";

/** A camera as its form shows it. */
export function cameraTexts(camera: Camera | undefined, unit: "mm" | "inch" = "mm"): Texts {
  return {
    name: camera?.name ?? "",
    ...sizeTexts(camera?.format),
    least: lengthText(camera?.extensionLimits?.leastMm, unit),
    most: lengthText(camera?.extensionLimits?.mostMm, unit),
    infinityBed: lengthText(camera?.infinityBedMm?.value, unit),
    lastExtension: camera?.lastExtension?.text ?? lengthText(camera?.lastExtension?.value, unit),
  };
}

export function cameraSet(texts: Texts, isNew: boolean): FieldSet {
  const [least, most] = [valueIn(texts.least, readMm), valueIn(texts.most, readMm)];
  const infinity = valueIn(texts.infinityBed, readMm);
  const last = saidIn(texts.lastExtension, readMm);
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Camera",
      format: sizeIn(texts) as Json | undefined,
      extensionLimits: least === undefined || most === undefined ? undefined : { leastMm: least, mostMm: most },
      infinityBedMm: infinity === undefined ? undefined : { value: infinity, sd: 0.5 },
      lastExtension: last && { value: last.value, text: last.text },
    },
    isNew,
  );
}

export function cameraParts(texts: Texts): readonly FormPart[] {
  const [least, most] = [valueIn(texts.least, readMm), valueIn(texts.most, readMm)];
  return [
    {
      head: "The camera",
      fields: [words("name", "What you call it", "the box with the red bellows"), ...sizeFields(texts, "Its format")],
    },
    {
      head: "Lens board to ground glass",
      aside: "by a rule, bellows in and out",
      fields: [
        mm("least", "With the bellows shut", { hint: "140" }),
        mm("most", "Racked out as far as it goes", { hint: "420" }),
        mm("lastExtension", "As it stands now", { hint: "248" }),
      ],
      problem:
        least !== undefined && most !== undefined && least >= most
          ? {
              head: `Racked out (${texts.most}) it is no longer than shut (${texts.least}).`,
              words: "Measure both from lens board to ground glass, or empty one.",
            }
          : undefined,
    },
    {
      head: "The bed",
      aside: "where the board stands for a far bank",
      folded: true,
      fields: [
        mm("infinityBed", "Bed mark with a distant subject", { aside: "then the bed is read instead of the bellows" }),
      ],
    },
  ];
}

const clicks = new Map([
  ["full", 1],
  ["half", 0.5],
  ["third", 1 / 3],
]);

function clickName(stops: number): string {
  return [...clicks].find(([, value]) => Math.abs(value - stops) < 0.01)?.[0] ?? "";
}

const readK = readWithin("A meter’s K lies between 8 and 20.", 8, 20);
const readC = readWithin("A meter’s C lies between 200 and 600.", 200, 600);

/** A meter as its form shows it. */
export function meterTexts(meter: Meter | undefined): Texts {
  return {
    name: meter?.name ?? "",
    reads: meter?.reads ?? "reflected",
    lowestIso: plainText(meter?.lowestIso),
    clickStops: meter?.clickStops === undefined ? "" : clickName(meter.clickStops),
    offset: plainText(meter?.offsetStops?.value),
    meterK: plainText(meter?.meterK),
    meterC: plainText(meter?.meterC),
  };
}

export function meterSet(texts: Texts, isNew: boolean): FieldSet {
  const offset = valueIn(texts.offset, readStops);
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Meter",
      reads: texts.reads === "incident" || texts.reads === "both" ? texts.reads : "reflected",
      lowestIso: valueIn(texts.lowestIso, readSpeed),
      clickStops: clicks.get(texts.clickStops ?? ""),
      offsetStops: offset === undefined ? undefined : { value: offset, sd: 0.1 },
      offsetBy: offset === undefined ? undefined : "told",
      meterK: texts.reads === "incident" ? undefined : valueIn(texts.meterK, readK),
      meterC: texts.reads === "incident" || texts.reads === "both" ? valueIn(texts.meterC, readC) : undefined,
    },
    isNew,
  );
}

export function meterParts(texts: Texts, { id }: { readonly id?: string | undefined }): readonly FormPart[] {
  const constants: FormField[] = [];
  if (texts.reads !== "incident") {
    constants.push(figure("meterK", "K, for reflected light", readK, { hint: String(planDefaults.meter.meterK) }));
  }
  if (texts.reads === "incident" || texts.reads === "both") {
    constants.push(
      figure("meterC", "C, for incident light", readC, {
        hint: String(planDefaults.meter.meterC),
        aside: "a flat receptor has about 250, a dome 320 to 340",
      }),
    );
  }
  return [
    {
      head: "The meter",
      fields: [
        words("name", "What you call it", "the grey one"),
        choice("reads", "It reads", [
          { value: "reflected", name: "reflected light", detail: "pointed at the subject" },
          { value: "incident", name: "incident light", detail: "held at the subject" },
          { value: "both", name: "both" },
        ]),
        figure("lowestIso", "The lowest ISO on its dial", readSpeed, { before: "ISO", hint: "25" }),
        choice("clickStops", "A click of its dial is", [
          { value: "full", name: "a whole stop" },
          { value: "half", name: "half a stop" },
          { value: "third", name: "a third of a stop" },
        ]),
      ],
    },
    {
      head: "What it is off",
      aside: "against a light you know",
      fields: [
        {
          ...figure("offset", "It shows too much light by", readStops, {
            after: "stops",
            hint: "0",
            aside: "minus: too little. It is counted as more time, or less.",
          }),
          board: "ev",
        } as FormField,
      ],
      ...(id === undefined
        ? { says: ["Once it is on the shelf it can be held against a known light step by step."] }
        : { ways: [{ word: "Measure what it is off", to: `/shelf/offset/${id}` }] }),
    },
    { head: "Its constants", aside: "from its leaflet", folded: true, fields: constants },
  ];
}

export function meterGranted(texts: Texts): readonly string[] {
  const { meterK, meterC, sdStops, incidentSdStops, clickStops } = planDefaults.meter;
  const doubt = (sd: number) => (1.645 * sd).toFixed(2);
  return [
    ...(texts.reads === "incident" || texts.meterK ? [] : [`K ${meterK}, ±${doubt(sdStops)} stop`]),
    ...(texts.reads === "reflected" || texts.meterC ? [] : [`C ${meterC}, ±${doubt(incidentSdStops)} stop`]),
    ...(texts.clickStops ? [] : [`clicks of ${clickStops === 1 ? "a stop" : `${clickStops} stop`}`]),
    ...(texts.offset ? [] : ["it is off by nothing that is known"]),
  ];
}

/** What a lamp's light is taken for until its colour temperature is said: common practice, no source. */
const usualK: Readonly<Record<string, number>> = { filament: 2700, whiteLed: 4000, daylight: 5500 };
const readK0 = readWithin("A colour temperature from 1500 to 20 000 K.", 1500, 20_000);

/** A lamp as its form shows it. */
export function lampTexts(lamp: Lamp | undefined): Texts {
  return {
    name: lamp?.name ?? "",
    sort: lamp?.sort ?? "filament",
    kelvin: plainText(lamp?.cctK?.value ?? kelvinOf(lamp)),
  };
}

function kelvinOf(lamp: Lamp | undefined): number | undefined {
  const said = lamp?.source?.split(":")[1];
  return said === undefined || lamp?.assumed?.includes("source") ? undefined : Number(said);
}

export function lampSet(texts: Texts, isNew: boolean): FieldSet {
  const sort = texts.sort === "other" || (texts.sort ?? "") in usualK ? (texts.sort ?? "filament") : "filament";
  const kelvin = sort === "other" ? undefined : valueIn(texts.kelvin, readK0);
  const k = kelvin ?? usualK[sort];
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Lamp",
      sort,
      cctK: kelvin === undefined ? undefined : { value: kelvin, sd: Math.round(kelvin * 0.03) },
      source: k === undefined ? undefined : `${sort}:${k}`,
      assumed: k === undefined || kelvin !== undefined ? undefined : ["source"],
    },
    isNew,
  );
}

export function lampParts(texts: Texts): readonly FormPart[] {
  return [
    {
      head: "The lamp",
      fields: [
        words("name", "What you call it", "desk lamp"),
        choice("sort", "What glows in it", [
          { value: "filament", name: "a filament", detail: "bulb, halogen" },
          { value: "whiteLed", name: "a white diode", detail: "LED" },
          { value: "daylight", name: "daylight", detail: "a window, a lightbox" },
          { value: "other", name: "something else" },
        ]),
        ...(texts.sort === "other"
          ? []
          : [
              figure("kelvin", "Colour temperature, as printed on it", readK0, {
                after: "K",
                hint: String(usualK[texts.sort ?? ""] ?? ""),
              }),
            ]),
      ],
      says:
        texts.sort === "other"
          ? ["Its colour is not known: the ledger then counts no colour of the light, and a test of your own tells."]
          : [
              "Paper sees blue, the meter yellow: the warmer the lamp, the more time it asks for. The ledger counts that.",
            ],
    },
  ];
}

export function lampGranted(texts: Texts): readonly string[] {
  const usual = usualK[texts.sort ?? ""];
  return usual === undefined || texts.kelvin ? [] : [`${usual} K, as lamps of this kind usually are`];
}
