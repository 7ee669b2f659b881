import type { BathRole, RecipeStep } from "../records/index.ts";
import type { Wanted } from "./mixingTypes.ts";

export interface RecipeBath {
  readonly role: BathRole;
  /** As the first step in it is called. */
  readonly name: string;
  readonly wants: readonly Wanted[];
}

/** The baths a recipe asks for, each once, in the order a sheet comes to them; water is not mixed. */
export function bathsOfRecipe({ steps }: { readonly steps: readonly RecipeStep[] }): readonly RecipeBath[] {
  const baths: RecipeBath[] = [];
  for (const { bath: role, name, holds = [] } of steps) {
    if (role === undefined || role === "water" || baths.some((one) => one.role === role)) continue;
    baths.push({ role, name, wants: holds });
  }
  return baths;
}
