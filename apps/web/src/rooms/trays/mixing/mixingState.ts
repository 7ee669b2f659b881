import {
  bathsOfRecipe,
  bathVolumeFor,
  type Mixing,
  type MixingAdvice,
  type MixingAsked,
  mixingAdviceOf,
  mixingFor,
  type RecipeBath,
  type StockAsked,
  stockAskedOf,
  type Wanted,
} from "@captray/notebook/answers";
import type { BathRole, PaperBox, Recipe, RecordId, Stock, StockKind } from "@captray/notebook/records";
import { sheetFormats } from "@captray/notebook/starters";
import { parseNumber } from "@captray/science/notation";
import { saltName } from "../../../kit/baths/saltName.ts";

/** What was typed and chosen, by its key. */
export type MixingTexts = Readonly<Record<string, string>>;

export interface MixingOption {
  readonly value: string;
  readonly name: string;
  readonly detail?: string;
}

/** A jar or bottle that this bath needs. */
export interface StockView {
  readonly what: StockKind;
  /** Those that are remembered, and another. */
  readonly options: readonly MixingOption[];
  readonly chosen: string;
  readonly isNew: boolean;
  readonly asked: StockAsked;
  /** A powder is told by its salt, a liquid by its label. */
  readonly isPowder: boolean;
}

export interface MixingView {
  readonly recipes: readonly MixingOption[];
  readonly recipeId: string;
  readonly roles: readonly RecipeBath[];
  readonly bath: RecipeBath | undefined;
  readonly sizes: readonly MixingOption[];
  readonly size: string;
  readonly sheets: number;
  readonly proposedMl: number;
  readonly by: "tray" | "area";
  /** Nothing where what was typed is no volume. */
  readonly volumeMl: number | undefined;
  /** What is wanted of each substance, in grams to 100 ml; a concentrate has none. */
  readonly wants: readonly { readonly what: string; readonly text: string; readonly usual: string }[];
  readonly stocks: readonly StockView[];
  readonly isBleach: boolean;
  readonly asked: MixingAsked | undefined;
  readonly mixing: Mixing | undefined;
  readonly advice: MixingAdvice | undefined;
}

export interface MixingFacts {
  readonly texts: MixingTexts;
  readonly recipes: readonly Recipe[];
  readonly boxes: readonly PaperBox[];
  readonly stocks: readonly Stock[];
  /** The role the address asks for. */
  readonly roleAsked: string;
  readonly seen: readonly string[];
}

/** Without a recipe: what is common practice, in grams to 100 ml. */
const usual: readonly RecipeBath[] = [
  { role: "developer", name: "developer", wants: [{ what: "metol" }, { what: "hydroquinone" }] },
  { role: "stop", name: "stop", wants: [{ what: "acetic", percentWv: 1.5 }] },
  { role: "acid", name: "acid", wants: [{ what: "citric", percentWv: 2 }] },
  { role: "peroxide", name: "peroxide", wants: [{ what: "h2o2", percentWv: 3 }] },
  { role: "clear", name: "clear", wants: [{ what: "sulfite", percentWv: 2 }] },
  { role: "fix", name: "fixer", wants: [{ what: "fixer" }] },
];
const usualPercent: Readonly<Record<string, string>> = { h2o2: "3", citric: "2", acetic: "1.5", sulfite: "2" };

const kindOf: Readonly<Record<string, StockKind>> = {
  h2o2: "peroxide",
  acetic: "acetic",
  citric: "citric",
  sulfite: "sulfite",
  metol: "developer",
  hydroquinone: "developer",
  fixer: "fixer",
};
const powders: ReadonlySet<StockKind> = new Set(["citric", "sulfite"]);
const bleaches: ReadonlySet<BathRole> = new Set(["acid", "peroxide", "acidAndPeroxide"]);
const dryFormulas: Readonly<Record<string, string>> = { citric: "C6H8O7.H2O", sulfite: "Na2SO3" };

/** Everything the page shows, from what was typed and what the notebook holds. */
export function mixingView(facts: MixingFacts): MixingView {
  const { texts, recipes, boxes, stocks, roleAsked, seen } = facts;
  const withBaths = recipes.filter(({ steps = [] }) => bathsOfRecipe({ steps }).length > 0);
  const wantsRole = (recipe: Recipe) =>
    bathsOfRecipe({ steps: recipe.steps ?? [] }).some(({ role }) => role === roleAsked);
  const recipeId = texts.recipe ?? withBaths.find(wantsRole)?.id ?? withBaths.at(-1)?.id ?? "usual";
  const recipe = withBaths.find(({ id }) => id === recipeId);
  const roles = recipe === undefined ? usual : bathsOfRecipe({ steps: recipe.steps ?? [] });
  const bath = roles.find(({ role }) => role === (texts.role ?? roleAsked)) ?? roles[0];
  const sizes = sizesOf(boxes);
  const size = texts.size ?? sizes[0]?.value ?? "";
  const sheet = sheetOf(size);
  const sheets = countIn(texts.sheets) ?? 4;
  const room = roomOf(texts.room);
  const needed = bath && sheet && bathVolumeFor({ role: bath.role, sheet, sheets });
  const proposedMl = Math.ceil((needed?.volumeMl ?? 500) / 10) * 10;
  const volumeMl = (texts.volume ?? "").trim() === "" ? proposedMl : volumeIn(texts.volume ?? "");
  const wants = (bath?.wants ?? [])
    .flatMap(({ what, percentWv }) =>
      kindOf[what] === undefined || ["developer", "fixer"].includes(kindOf[what])
        ? []
        : [{ what, usual: percentWv === undefined ? (usualPercent[what] ?? "") : String(percentWv), text: "" }],
    )
    .map((want) => ({ ...want, text: texts[`want.${want.what}`] ?? want.usual }));
  const kinds = [...new Set((bath?.wants ?? []).flatMap(({ what }) => kindOf[what] ?? []))];
  const stockViews = kinds.map((what) => stockView(what, stocks, texts));
  const asked: MixingAsked | undefined =
    bath === undefined || volumeMl === undefined
      ? undefined
      : {
          role: bath.role,
          wants: bath.wants.map((want) => wanted(want, wants)),
          volumeMl,
          stocks: stockViews.filter((one) => !one.isNew || isSaid(one)).map((one) => one.asked),
          ...(room && { room }),
          seen,
        };
  const isBleach = bath !== undefined && bleaches.has(bath.role);
  return {
    recipes: [
      ...withBaths.map(({ id, name }) => ({ value: id as string, name: name === "" ? "a recipe" : name })),
      { value: "usual", name: "none", detail: "as is usual" },
    ],
    recipeId: recipe === undefined ? "usual" : recipeId,
    roles,
    bath,
    sizes,
    size,
    sheets,
    proposedMl,
    by: needed?.by ?? "tray",
    volumeMl,
    wants,
    stocks: stockViews,
    isBleach,
    asked,
    mixing: asked && mixingFor(asked),
    advice:
      bath === undefined || sheet === undefined || volumeMl === undefined || !(volumeMl > 0)
        ? undefined
        : mixingAdviceOf({
            role: bath.role,
            volumeMl,
            areaM2: (sheet.widthMm * sheet.heightMm) / 1e6,
            sheets,
            ...(texts.base === "fibre" && { paperBase: "fibre" as const }),
            ...(texts.water === "deionised" && { waterChlorideMgL: 0 }),
          }),
  };
}

/** Jars and bottles that were said here for the first time. */
export function newStocks({ stocks }: MixingView): readonly StockAsked[] {
  return stocks.filter((one) => one.isNew && isSaid(one)).map(({ asked }) => asked);
}

/** Which recipe a mixed bath belongs to. */
export function recipeOf({ recipeId }: MixingView): RecordId | undefined {
  return recipeId === "usual" ? undefined : (recipeId as RecordId);
}

function isSaid({ asked, isPowder }: StockView): boolean {
  return isPowder ? asked.formula !== undefined || asked.label !== undefined : asked.label !== undefined;
}

function wanted(want: Wanted, typed: MixingView["wants"]): Wanted {
  const own = typed.find(({ what }) => what === want.what);
  if (own === undefined) return { what: want.what };
  const percentWv = numberIn(own.text);
  // What is no strength of a bath is asked for again.
  return { what: want.what, ...(percentWv !== undefined && percentWv > 0 && percentWv <= 100 && { percentWv }) };
}

function stockView(what: StockKind, stocks: readonly Stock[], texts: MixingTexts): StockView {
  const remembered = stocks.filter((one) => one.what === what);
  const isPowder = powders.has(what);
  const chosen = texts[`stock.${what}`] ?? remembered.at(-1)?.id ?? "new";
  const kept = remembered.find(({ id }) => id === chosen);
  const label = (texts[`label.${what}`] ?? "").trim();
  const formula = texts[`formula.${what}`] ?? dryFormulas[what];
  const asked: StockAsked =
    kept === undefined
      ? {
          what,
          name: (texts[`name.${what}`] ?? "").trim() || firstNames[what],
          ...(label !== "" && { label }),
          ...(isPowder && formula !== undefined && { formula }),
        }
      : { ...stockAskedOf({ stock: kept }), name: kept.name === "" ? firstNames[what] : kept.name };
  return {
    what,
    options: [
      ...remembered.map((stock) => {
        const { label: says, formula: salt } = stockAskedOf({ stock });
        const detail = says ?? (salt && saltName(salt));
        return { value: stock.id as string, name: stock.name || firstNames[what], ...(detail && { detail }) };
      }),
      { value: "new", name: "another" },
    ],
    chosen: kept === undefined ? "new" : chosen,
    isNew: kept === undefined,
    asked,
    isPowder,
  };
}

const firstNames: Readonly<Record<StockKind, string>> = {
  peroxide: "peroxide",
  acetic: "white vinegar",
  citric: "citric acid",
  sulfite: "sodium sulfite",
  developer: "developer",
  fixer: "fixer",
  other: "bottle",
};

/** The sizes of the boxes on the shelf first, then those of the trade. */
function sizesOf(boxes: readonly PaperBox[]): readonly MixingOption[] {
  const own = boxes.flatMap(({ size }) => (size === undefined ? [] : [nameOf(size)]));
  const names = [...new Set([...own, ...sheetFormats.map(({ name }) => name)])];
  return names.slice(0, 6).map((name) => ({ value: name, name }));
}

function nameOf({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): string {
  const common = sheetFormats.find(
    (one) => Math.abs(one.widthMm - widthMm) < 0.6 && Math.abs(one.heightMm - heightMm) < 0.6,
  );
  return common?.name ?? `${Number(widthMm.toFixed(1))} × ${Number(heightMm.toFixed(1))} mm`;
}

function sheetOf(name: string): { readonly widthMm: number; readonly heightMm: number } | undefined {
  const common = sheetFormats.find((one) => one.name === name);
  if (common !== undefined) return { widthMm: common.widthMm, heightMm: common.heightMm };
  const [, width, height] = /^([\d.]+) × ([\d.]+) mm$/.exec(name) ?? [];
  return width === undefined || height === undefined ? undefined : { widthMm: Number(width), heightMm: Number(height) };
}

const rooms = {
  none: [],
  hypochlorite: ["hypochlorite"],
  solvent: ["acetone", "alcohol"],
  ammonia: ["ammonia"],
} as const;

function roomOf(text: string | undefined): MixingAsked["room"] {
  return text !== undefined && Object.hasOwn(rooms, text) ? rooms[text as keyof typeof rooms] : undefined;
}

/** A volume as it is said: 650, 650 ml, 1.2 l. */
export function volumeIn(text: string): number | undefined {
  const [, figure, unit = "ml"] = /^\s*(.+?)\s*(ml|l|litres?)?\s*$/i.exec(text) ?? [];
  const value = figure === undefined ? undefined : numberIn(figure);
  const ml = value === undefined ? undefined : value * (/^m/i.test(unit) ? 1 : 1000);
  return ml !== undefined && ml > 0 && ml <= 100_000 ? ml : undefined;
}

function numberIn(text: string): number | undefined {
  try {
    const value = parseNumber({ text });
    return Number.isFinite(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

export function countIn(text: string | undefined): number | undefined {
  const value = text === undefined || text.trim() === "" ? undefined : numberIn(text);
  return value !== undefined && Number.isInteger(value) && value >= 1 && value <= 200 ? value : undefined;
}
