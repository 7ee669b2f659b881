import { boxStockOf } from "@captray/notebook/answers";
import {
  type ExposureIndex,
  type FieldSet,
  isRecordId,
  type Json,
  kinds,
  type PaperBox,
  type Recipe,
  type Result,
} from "@captray/notebook/records";
import { messageOf, OutOfDomain } from "@captray/science/errors";
import { planDefaults, reciprocityFromTable } from "@captray/science/exposure";
import { choice, figure, words } from "../form/fields.ts";
import type { FormField, FormPart, Texts } from "../form/formTypes.ts";
import { cleared, plainText, saidIn, valueIn } from "../form/fromTexts.ts";
import {
  dayWords,
  readCount,
  readDay,
  readDoubt,
  readExponent,
  readIndex,
  readSeconds,
  readSpeed,
  readStops,
  readWithin,
} from "../form/readers.ts";
import { offeredClasses } from "../shelfWords.ts";
import { sizeFields, sizeIn, sizeTexts } from "./sizeForm.ts";

type FoundWord = keyof typeof planDefaults.exposureIndexSdStops;
const nineInTen = 1.645;

const readSheets = readCount("Whole sheets, from 0 up.");
const readFull = readCount("Whole sheets, from 1 up.", 1);
const readParts = readCount("Whole parts, from 1 to 64.", 1, 64);
const readPrice = readWithin("A price, from 0 up.", 0, 1e6);
const readRange = readWithin("An ISO range lies between 20 and 300.", 20, 300);

const finishes = [
  { value: "gloss", name: "gloss" },
  { value: "semimatt", name: "semi-matt" },
  { value: "matt", name: "matt" },
] as const;

/** The indexes of a form by their id, in order. */
export function indexIdsOf(texts: Texts): readonly string[] {
  return (texts.indexes ?? "").split(" ").filter(Boolean);
}

const rowsOf = (texts: Texts, key: string): number => Number(texts[key] ?? 0) || 0;

/** A box as its form shows it, with an index for each thing it becomes. */
export function boxTexts({
  box,
  indexes,
  fresh,
  size,
}: {
  readonly box: PaperBox | undefined;
  readonly indexes: readonly ExposureIndex[];
  /** Ids for the two indexes every box has. */
  readonly fresh: readonly [negative: string, positive: string];
  /** The size a new box is taken to have. */
  readonly size?: PaperBox["size"];
}): Texts {
  const own = indexes.filter((one) => box !== undefined && one.paperBoxId === box.id);
  const missing = (["negative", "positive"] as const).flatMap((result, place) =>
    own.some((one) => one.result === result) ? [] : [{ id: fresh[place] ?? "", result }],
  );
  const ofResult = (result: Result) => [
    ...own.filter((one) => one.result === result),
    ...missing.filter((one) => one.result === result),
  ];
  const all = [...ofResult("negative"), ...ofResult("positive")];
  const table = box?.reciprocityTable ?? [];
  const filters = box?.contrastFilters ?? [];
  return {
    name: box?.name ?? "",
    ...sizeTexts(box === undefined ? size : box.size),
    sheetsLeft: plainText(box?.sheetsLeft),
    sheetsWhenFull: plainText(box?.sheetsWhenFull),
    grade: box?.grade ?? "",
    sensitivity: box?.sensitivity ?? "blue",
    finish: box?.finish ?? "",
    isoSpeed: plainText(box?.isoSpeed),
    isoRange: plainText(box?.isoRange),
    batch: box?.batch ?? "",
    opened: box?.openedAt === undefined ? "" : dayWords(box.openedAt.at + box.openedAt.offsetMin * 60_000),
    cutIntoParts: plainText(box?.cutIntoParts),
    price: plainText(box?.price?.amount),
    currency: box?.price?.currency ?? "",
    long: table.length > 0 ? "table" : box?.reciprocity === undefined ? "" : "exponent",
    exponent: plainText(box?.reciprocity?.exponent),
    rows: String(table.length),
    filters: String(filters.length),
    ...Object.fromEntries(
      table.flatMap(({ meteredS, neededS }, row) => [
        [`row.${row}.metered`, plainText(meteredS)],
        [`row.${row}.needed`, plainText(neededS)],
      ]),
    ),
    ...Object.fromEntries(
      filters.flatMap(({ name, isoRange, extraStops }, row) => [
        [`filter.${row}.name`, name],
        [`filter.${row}.range`, plainText(isoRange)],
        [`filter.${row}.stops`, plainText(extraStops)],
      ]),
    ),
    indexes: all.map(({ id }) => id).join(" "),
    ...Object.fromEntries(all.flatMap((one) => indexTexts(one))),
  };
}

type IndexHeld = Partial<Omit<ExposureIndex, "id">>;

function indexTexts(index: IndexHeld & { readonly id: string }): [string, string][] {
  const { id, value, found } = index;
  const word = foundWord(index);
  const usual = planDefaults.exposureIndexSdStops[word];
  const own = value !== undefined && Math.abs(value.sdStops - usual) > 1e-6;
  return [
    [`${id}.result`, index.result ?? "positive"],
    [`${id}.recipe`, index.recipeId ?? ""],
    [`${id}.ei`, index.text ?? plainText(value?.value)],
    [`${id}.found`, word],
    [`${id}.doubt`, own ? (nineInTen * value.sdStops).toFixed(2) : ""],
    [`${id}.by`, found?.how === "told" ? (found.by ?? "") : ""],
  ];
}

function foundWord({ found, value }: IndexHeld): FoundWord {
  if (found === undefined || found.how === "guessed") return "guessed";
  if (found.how === "told") return "told";
  return (value?.sdStops ?? 1) <= 0.2 ? "threeSheets" : "stepTest";
}

/** What keeping a box writes, without its indexes. */
export function boxSet(texts: Texts, isNew: boolean): FieldSet {
  const exponent = texts.long === "exponent" ? valueIn(texts.exponent, readExponent) : undefined;
  const table = texts.long === "table" ? tableIn(texts) : [];
  const filters = filtersIn(texts);
  const amount = valueIn(texts.price, readPrice);
  const openedAt = valueIn(texts.opened, readDay);
  return cleared(
    {
      name: (texts.name ?? "").trim() || "Box 1",
      size: sizeIn(texts) as Json | undefined,
      sheetsLeft: valueIn(texts.sheetsLeft, readSheets) ?? valueIn(texts.sheetsWhenFull, readFull),
      sheetsWhenFull:
        valueIn(texts.sheetsWhenFull, readFull) ?? (isNew ? valueIn(texts.sheetsLeft, readSheets) : undefined),
      grade: (texts.grade ?? "").trim() || undefined,
      sensitivity: offeredClasses.find(({ value }) => value === texts.sensitivity)?.value ?? "blue",
      finish: finishes.find(({ value }) => value === texts.finish)?.value,
      isoSpeed: valueIn(texts.isoSpeed, readSpeed),
      isoRange: valueIn(texts.isoRange, readRange),
      batch: (texts.batch ?? "").trim() || undefined,
      openedAt: openedAt === undefined ? undefined : { at: openedAt, offsetMin: 0 },
      cutIntoParts: valueIn(texts.cutIntoParts, readParts),
      price: amount === undefined ? undefined : { amount, currency: (texts.currency ?? "").trim().slice(0, 8) },
      reciprocity: exponent === undefined ? undefined : { exponent, fromS: 1 },
      reciprocityTable: table.length === 0 ? undefined : (table as unknown as Json),
      contrastFilters: filters.length === 0 ? undefined : (filters as unknown as Json),
    },
    isNew,
  );
}

function tableIn(texts: Texts): readonly { readonly meteredS: number; readonly neededS: number }[] {
  return Array.from({ length: Math.min(20, rowsOf(texts, "rows")) }, (_, row) => ({
    meteredS: valueIn(texts[`row.${row}.metered`], readSeconds),
    neededS: valueIn(texts[`row.${row}.needed`], readSeconds),
  })).flatMap(({ meteredS, neededS }) =>
    meteredS === undefined || neededS === undefined ? [] : [{ meteredS, neededS }],
  );
}

function filtersIn(texts: Texts): NonNullable<PaperBox["contrastFilters"]> {
  return Array.from({ length: Math.min(20, rowsOf(texts, "filters")) }, (_, row) => ({
    name: (texts[`filter.${row}.name`] ?? "").trim(),
    isoRange: valueIn(texts[`filter.${row}.range`], readRange),
    extraStops: valueIn(texts[`filter.${row}.stops`], readStops) ?? 0,
  })).flatMap(({ name, isoRange, extraStops }) => (isoRange === undefined ? [] : [{ name, isoRange, extraStops }]));
}

/** What keeping an exposure index writes; nothing where none was typed. How it was found keeps what is known of that. */
export function indexSet(
  texts: Texts,
  id: string,
  { paperBoxId, known }: { readonly paperBoxId: string; readonly known?: ExposureIndex | undefined },
): FieldSet | undefined {
  const ei = saidIn(texts[`${id}.ei`], readIndex);
  if (ei === undefined || ei.value <= 0) return undefined;
  const typedHow = texts[`${id}.found`] ?? "";
  const how = found.find(({ value }) => value === typedHow)?.value ?? "guessed";
  const doubt = valueIn(texts[`${id}.doubt`], readDoubt);
  const recipeId = texts[`${id}.recipe`] ?? "";
  return {
    paperBoxId,
    result: resultIn(texts, id),
    ...(isRecordId(recipeId) ? { recipeId } : known?.recipeId ? { recipeId: null } : {}),
    text: ei.text,
    value: {
      value: ei.value,
      sdStops: doubt === undefined ? planDefaults.exposureIndexSdStops[how] : doubt / nineInTen,
    },
    found: foundJson(how, (texts[`${id}.by`] ?? "").trim(), known),
  };
}

function resultIn(texts: Texts, id: string): Result {
  return texts[`${id}.result`] === "negative" ? "negative" : "positive";
}

function foundJson(how: FoundWord, by: string, known: ExposureIndex | undefined): Json {
  if (how === "guessed") return { how };
  if (how === "told") return by === "" ? { how } : { how, by: by.slice(0, 60) };
  return known?.found.how === "ownSheets" ? ({ ...known.found } as unknown as Json) : { how: "ownSheets" };
}

/** The guess a new box starts with, marked as such. */
export function guessedIndex(result: Result, paperBoxId: string): FieldSet {
  const value = result === "negative" ? planDefaults.exposureIndex.negative : planDefaults.exposureIndex.directPositive;
  return {
    paperBoxId,
    result,
    text: String(value),
    value: { value, sdStops: planDefaults.exposureIndexSdStops.guessed },
    found: { how: "guessed" },
    assumed: ["value"],
  };
}

/** The parts of a box's form. */
export function boxParts(
  texts: Texts,
  { recipes, todayText }: { readonly recipes: readonly Recipe[]; readonly todayText: () => string },
): readonly FormPart[] {
  const ids = indexIdsOf(texts);
  return [
    {
      head: "The box",
      fields: [
        words("name", "Your own name for it", "box C"),
        ...sizeFields(texts, "Size of a sheet"),
        figure("sheetsLeft", "Sheets left", readSheets, { hint: "25" }),
        figure("sheetsWhenFull", "Sheets when it was full", readFull, { hint: "25" }),
        words("grade", "Grade, as printed on it", "2", 60),
        choice("sensitivity", "What it sees", offeredClasses),
      ],
      problem: moreThanFull(texts),
    },
    ...ids.map((id) => indexPart(texts, id, recipes)),
    ...(texts.sensitivity === "variableContrast" ? [filtersPart(texts)] : []),
    longPart(texts),
    morePart(texts, todayText),
  ].map((part, place) =>
    place === ids.length && recipes.length > 0 ? { ...part, ways: [...(part.ways ?? []), anotherIndex(ids)] } : part,
  );
}

function moreThanFull(texts: Texts): FormPart["problem"] {
  const left = valueIn(texts.sheetsLeft, readSheets);
  const full = valueIn(texts.sheetsWhenFull, readFull);
  if (left === undefined || full === undefined || left <= full) return undefined;
  return {
    head: `There are more sheets left (${left}) than when it was full (${full}).`,
    words: "Count again, or empty one of the two.",
  };
}

function anotherIndex(ids: readonly string[]) {
  return {
    word: "An index for another recipe",
    puts: (fresh: () => string): Texts => {
      const id = fresh();
      return { indexes: [...ids, id].join(" "), [`${id}.result`]: "positive", [`${id}.found`]: "guessed" };
    },
  };
}

const found = (["guessed", "told", "stepTest", "threeSheets"] as const).map((value) => ({
  value,
  name: { guessed: "a guess", told: "told by somebody", stepTest: "own step test", threeSheets: "three own sheets" }[
    value
  ],
  detail: `±${(nineInTen * planDefaults.exposureIndexSdStops[value]).toFixed(2)} stop`,
}));

function indexPart(texts: Texts, id: string, recipes: readonly Recipe[]): FormPart {
  const ids = indexIdsOf(texts);
  const result = resultIn(texts, id);
  const same = ids.filter((one) => resultIn(texts, one) === result);
  const place = same.indexOf(id) + 1;
  const isFirst = place === 1;
  const recipe = recipes.find((one) => one.id === texts[`${id}.recipe`]);
  const which = `${result}${isFirst ? "" : ` ${place}`}`;
  const guess = result === "negative" ? planDefaults.exposureIndex.negative : planDefaults.exposureIndex.directPositive;
  const kindOf = result === "negative" ? "As a paper negative" : "As a direct positive";
  const after = recipe === undefined ? (isFirst ? "" : `, index ${place}`) : `, ${recipe.name || "recipe"}`;
  const ofRecipe: FormField[] = [];
  if (!isFirst) {
    ofRecipe.push(
      choice(`${id}.result`, `What index ${place} is for`, [
        { value: "negative", name: "a paper negative" },
        { value: "positive", name: "a direct positive" },
      ]),
    );
  }
  if (recipes.length > 0) {
    ofRecipe.push(
      choice(`${id}.recipe`, `Recipe of the ${which}`, [
        { value: "", name: "any recipe" },
        ...recipes
          .filter((one) => one.result === undefined || one.result === result)
          .map((one) => ({ value: one.id as string, name: one.name || "a recipe without a name" })),
      ]),
    );
  }
  return {
    head: `${kindOf}${after}`,
    fields: [
      figure(`${id}.ei`, `Exposure index, ${which}`, readIndex, {
        before: "EI",
        hint: String(guess),
        ...((texts[`${id}.ei`] ?? "") === "" && isFirst
          ? { aside: `EI ${guess} is taken for granted until you say: a guess` }
          : {}),
      }),
      choice(`${id}.found`, `How the ${which}’s index was found`, found),
      ...(texts[`${id}.found`] === "told" ? [words(`${id}.by`, `Who told the ${which}’s index`, "a leaflet", 60)] : []),
      figure(`${id}.doubt`, `Your own ± for the ${which}`, readDoubt, {
        after: "stops",
        aside: "only where you know better: nine in ten",
      }),
      ...ofRecipe,
    ],
  };
}

function filtersPart(texts: Texts): FormPart {
  const count = rowsOf(texts, "filters");
  return {
    head: "Contrast filters",
    aside: "each with its own range",
    folded: true,
    fields: Array.from({ length: count }, (_, row) => [
      words(`filter.${row}.name`, `Filter ${row + 1}`, "yellow, or 0", 60),
      figure(`filter.${row}.range`, `ISO range with filter ${row + 1}`, readRange, { before: "R", hint: "120" }),
      figure(`filter.${row}.stops`, `Stops more with filter ${row + 1}`, readStops, { hint: "1", after: "stops" }),
    ]).flat(),
    says:
      count === 0
        ? ["Before the lens such a filter makes the paper softer or harder. Its leaflet says by how much."]
        : [],
    ways: count < 20 ? [{ word: "Another filter", puts: () => ({ filters: String(count + 1) }) }] : [],
  };
}

function longPart(texts: Texts): FormPart {
  const count = rowsOf(texts, "rows");
  const isTable = texts.long === "table";
  return {
    head: "Long exposures",
    aside: "reciprocity",
    fields: [
      choice("long", "How this paper tires is known by", [
        { value: "", name: "nobody yet", detail: "none is counted" },
        { value: "exponent", name: "an exponent" },
        { value: "table", name: "a table" },
      ]),
      ...(texts.long === "exponent" ? [figure("exponent", "Exponent from a test", readExponent, { hint: "0.9" })] : []),
      ...(isTable
        ? Array.from({ length: count }, (_, row) => [
            {
              ...figure(`row.${row}.metered`, `Reckoned, row ${row + 1}`, readSeconds, { after: "s" }),
              board: "time",
            } as FormField,
            {
              ...figure(`row.${row}.needed`, `To be given, row ${row + 1}`, readSeconds, { after: "s" }),
              board: "time",
            } as FormField,
          ]).flat()
        : []),
    ],
    says: texts.long ? [] : ["Without one none is counted, and the doubt grows from 1 s."],
    problem: isTable && count > 0 ? tableProblem(texts) : undefined,
    ways: isTable && count < 20 ? [{ word: "Another row", puts: () => ({ rows: String(count + 1) }) }] : [],
  };
}

function tableProblem(texts: Texts): FormPart["problem"] {
  const table = tableIn(texts).map(({ meteredS, neededS }) => [meteredS, neededS] as const);
  if (table.length < 2) return undefined;
  try {
    reciprocityFromTable({ meteredTimeS: 1, table });
    return undefined;
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    const { message, hint } = messageOf(fault);
    return { head: message, words: hint };
  }
}

function morePart(texts: Texts, todayText: () => string): FormPart {
  const box = kinds.paperBox.assemble("draft", new Map(Object.entries(boxSet(texts, true))));
  const { largerSheets, pricePerSheet, full } = boxStockOf({ box, boxes: [] });
  const currency = box.price?.currency ?? "";
  return {
    head: "More about the paper",
    aside: "speed, price, where it was cut from",
    folded: true,
    fields: [
      figure("isoSpeed", "ISO speed of the paper", readSpeed, { before: "P", hint: "160" }),
      figure("isoRange", "ISO range of the paper", readRange, { before: "R", hint: "110" }),
      choice("finish", "Its surface", finishes),
      figure("cutIntoParts", "Parts a larger sheet was cut into", readParts, { hint: "4" }),
      figure("price", "Price of the box", readPrice, { hint: "40" }),
      words("currency", "Currency", "EUR", 8),
      words("batch", "Batch, as printed on it", "", 60),
      figure("opened", "Opened on", readDay, { hint: "9.11.2026" }),
    ],
    says: [
      ...(largerSheets === undefined || (box.cutIntoParts ?? 1) < 2
        ? []
        : [`${full} sheets are ${largerSheets} larger ones, each cut into ${box.cutIntoParts}.`]),
      ...(pricePerSheet === undefined ? [] : [`One sheet costs ${pricePerSheet.toFixed(2)} ${currency}`.trim()]),
    ],
    ways: texts.opened ? [] : [{ word: "Opened today", puts: () => ({ opened: todayText() }) }],
  };
}

/** A name for the next box: the letter or number after the last one that is free. */
export function nextBoxName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  const end = /^(.*?)([A-Za-z]|\d+)$/.exec(name.trim());
  const isLetter = end?.[2] !== undefined && /^[A-Za-z]$/.test(end[2]) && /(^|\s)$/.test(end[1] ?? "");
  const stem = end && (isLetter || /^\d+$/.test(end[2] ?? "")) ? (end[1] ?? "") : `${name.trim()} `;
  for (let step = 1; step <= 200; step++) {
    const next = isLetter ? letterAfter(end?.[2] ?? "A", step) : String((Number(end?.[2]) || 1) + step);
    if (next !== undefined && !used.has(`${stem}${next}`.toLowerCase())) return `${stem}${next}`;
  }
  return `${name.trim()} again`;
}

function letterAfter(letter: string, step: number): string | undefined {
  const first = letter >= "a" ? 97 : 65;
  const place = letter.charCodeAt(0) - first + step;
  return place < 26 ? String.fromCharCode(first + place) : `${String.fromCharCode(first + 25)}${place - 25}`;
}
