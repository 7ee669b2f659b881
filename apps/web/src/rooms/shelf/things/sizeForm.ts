import { sheetFormats } from "@captray/notebook/starters";
import { formatLength } from "@captray/science/notation";
import { choice, mm } from "../form/fields.ts";
import type { FormField, Texts } from "../form/formTypes.ts";
import { lengthText, valueIn } from "../form/fromTexts.ts";
import { readMm } from "../form/readers.ts";

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

const near = 0.6;

/** The size of a sheet or camera as its form shows it: a common one, or its two sides. */
export function sizeTexts(size: Size | undefined): Texts {
  if (size === undefined) return { size: "", width: "", height: "" };
  const common = sheetFormats.find(
    (one) => Math.abs(one.widthMm - size.widthMm) < near && Math.abs(one.heightMm - size.heightMm) < near,
  );
  return {
    size: common?.name ?? "other",
    width: lengthText(size.widthMm, "mm"),
    height: lengthText(size.heightMm, "mm"),
  };
}

/** The size that was chosen or typed. */
export function sizeIn(texts: Texts): Size | undefined {
  const common = sheetFormats.find(({ name }) => name === texts.size);
  if (common !== undefined) return { widthMm: common.widthMm, heightMm: common.heightMm };
  const [widthMm, heightMm] = [valueIn(texts.width, readMm), valueIn(texts.height, readMm)];
  return texts.size === "other" && widthMm !== undefined && heightMm !== undefined ? { widthMm, heightMm } : undefined;
}

/** One press for a common size; two fields for any other. */
export function sizeFields(texts: Texts, label: string): readonly FormField[] {
  const other = { value: "other", name: "another size" };
  const common = sheetFormats.map(({ name }) => ({ value: name, name }));
  return [
    choice("size", label, [...common, other]),
    ...(texts.size === "other" ? [mm("width", "Width"), mm("height", "Height")] : []),
  ];
}

/** A size in words: “13 × 18 cm”. */
export function sizeWords(size: Size): string {
  const common = sheetFormats.find(
    (one) => Math.abs(one.widthMm - size.widthMm) < near && Math.abs(one.heightMm - size.heightMm) < near,
  );
  if (common !== undefined) return common.name;
  const bare = (lengthMm: number) => formatLength({ lengthMm, unit: "mm" }).replace(/ mm$/, "");
  return `${bare(size.widthMm)} × ${bare(size.heightMm)} mm`;
}
