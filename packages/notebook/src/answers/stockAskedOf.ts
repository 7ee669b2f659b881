import type { Stock } from "../records/index.ts";
import type { StockAsked } from "./mixingTypes.ts";

const basisWords = { percentWw: "% w/w", percentWv: "% w/v", gramsPerL: "g/L", molar: "M", volumes: "vol" } as const;

/** A kept jar or bottle in the words it is mixed from. */
export function stockAskedOf({ stock }: { readonly stock: Stock }): StockAsked {
  const { what = "other", name, strength, parts, formula } = stock;
  const label =
    strength === undefined
      ? parts && (parts.text ?? `1+${parts.value}`)
      : (strength.text ?? `${strength.value} ${basisWords[strength.basis]}`);
  return { what, name, ...(label !== undefined && { label }), ...(formula !== undefined && { formula }) };
}
