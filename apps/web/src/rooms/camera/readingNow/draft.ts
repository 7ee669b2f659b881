import type { Result } from "@captray/notebook/records";

/** The fields of “I have a reading now” that are typed, in the order they are read. */
const fieldNames = ["time", "meterFNumber", "iso", "focalLength", "lensFNumber", "extension"] as const;
export type FieldName = (typeof fieldNames)[number];

/** What may be said better than it is taken for granted, each as it was typed or chosen. */
export interface SaidBetter {
  /** By result: negative and direct positive have an exposure index each. */
  readonly exposureIndex: { readonly [R in Result]?: string };
  readonly howFound: { readonly [R in Result]?: HowFound };
  readonly light?: string;
  readonly placeStops?: string;
  readonly meterOffset?: string;
  readonly infinityExtension?: string;
  readonly transmission?: string;
  readonly exponent?: string;
}

export type HowFound = "guessed" | "told" | "stepTest" | "threeSheets";

/** Everything on the page as it was typed. Nothing in it is ever refused: what cannot be read stays as it is. */
export interface Draft {
  readonly texts: { readonly [F in FieldName]: string };
  readonly result: Result | undefined;
  readonly better: SaidBetter;
  readonly said: string;
  /** The scene these readings belong to, once it is known to the notebook. */
  readonly sceneId?: string | undefined;
  readonly paperBoxId?: string | undefined;
  readonly meterId?: string | undefined;
}

export const emptyDraft: Draft = {
  texts: { time: "", meterFNumber: "", iso: "", focalLength: "", lensFNumber: "", extension: "" },
  result: undefined,
  better: { exposureIndex: {}, howFound: {} },
  said: "",
};

export type DraftEvent =
  | { readonly event: "typed"; readonly field: FieldName; readonly text: string }
  | { readonly event: "result"; readonly result: Result }
  | { readonly event: "better"; readonly said: Partial<SaidBetter> }
  | { readonly event: "said"; readonly text: string }
  | { readonly event: "kit"; readonly kit: KitTexts }
  | { readonly event: "kept"; readonly sceneId: string; readonly paperBoxId: string; readonly meterId: string }
  | { readonly event: "anotherScene" };

/** A kit as its fields would be typed: what a tap on another camera puts in. */
export interface KitTexts {
  readonly focalLength: string;
  readonly lensFNumber: string;
  readonly result?: Result | undefined;
  readonly paperBoxId?: string | undefined;
  readonly meterId?: string | undefined;
}

/** One thing that happened on the page, to the draft after it. */
export function nextDraft(draft: Draft, event: DraftEvent): Draft {
  switch (event.event) {
    case "typed":
      return { ...draft, texts: { ...draft.texts, [event.field]: event.text } };
    case "result":
      return { ...draft, result: event.result };
    case "better":
      return {
        ...draft,
        better: {
          ...draft.better,
          ...event.said,
          exposureIndex: { ...draft.better.exposureIndex, ...event.said.exposureIndex },
          howFound: { ...draft.better.howFound, ...event.said.howFound },
        },
      };
    case "said":
      return { ...draft, said: event.text };
    case "kit": {
      const { focalLength, lensFNumber, ...rest } = event.kit;
      // Another camera stands elsewhere: its extension is not the one before it.
      return {
        ...draft,
        ...rest,
        result: rest.result ?? draft.result,
        texts: { ...draft.texts, focalLength, lensFNumber, extension: "" },
        better: {
          exposureIndex: {},
          howFound: {},
          ...(draft.better.light !== undefined && { light: draft.better.light }),
        },
        sceneId: undefined,
      };
    }
    case "kept":
      return { ...draft, sceneId: event.sceneId, paperBoxId: event.paperBoxId, meterId: event.meterId };
    case "anotherScene": {
      const { placeStops: _, ...better } = draft.better;
      return {
        ...draft,
        texts: { ...draft.texts, time: "", extension: "" },
        better,
        said: "",
        sceneId: undefined,
      };
    }
  }
}

/** A draft as it was put by, or an empty one where what was put by cannot be read. */
export function draftFrom(put: unknown): Draft {
  if (typeof put !== "object" || put === null) return emptyDraft;
  const { texts, result, better, said, sceneId, paperBoxId, meterId } = put as Partial<Draft>;
  const string = (value: unknown): string => (typeof value === "string" ? value.slice(0, 60) : "");
  const link = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);
  return {
    texts: Object.fromEntries(fieldNames.map((name) => [name, string(texts?.[name])])) as unknown as Draft["texts"],
    result: result === "negative" || result === "positive" ? result : undefined,
    better: betterFrom(better),
    said: string(said),
    sceneId: link(sceneId),
    paperBoxId: link(paperBoxId),
    meterId: link(meterId),
  };
}

function betterFrom(put: Partial<SaidBetter> | undefined): SaidBetter {
  const better: Record<string, unknown> = { exposureIndex: {}, howFound: {} };
  if (typeof put !== "object" || put === null) return better as unknown as SaidBetter;
  for (const key of ["light", "placeStops", "meterOffset", "infinityExtension", "transmission", "exponent"] as const) {
    if (typeof put[key] === "string") better[key] = put[key].slice(0, 60);
  }
  for (const key of ["exposureIndex", "howFound"] as const) {
    const held = put[key];
    if (typeof held !== "object" || held === null) continue;
    better[key] = Object.fromEntries(
      Object.entries(held).filter(
        ([name, value]) => (name === "negative" || name === "positive") && typeof value === "string",
      ),
    );
  }
  return better as unknown as SaidBetter;
}
