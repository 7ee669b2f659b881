import { recipeFindingsOf, recipeTotalOf } from "@captray/notebook/answers";
import type { Recipe } from "@captray/notebook/records";
import { Word } from "../../../kit/Word.tsx";
import { recipeLineWords, totalTime } from "./recipeLineWords.ts";

/** A recipe in a list: its name leads to it; what it gives, how many steps and rounds, and whether something in it waits for an answer. */
export function RecipeLine({ recipe }: { readonly recipe: Recipe }) {
  const { steps = [], bleachRounds } = recipe;
  const waits = recipeFindingsOf({ recipe }).some(({ weight, known }) => weight === "nonsense" && !known);
  return (
    <div className="Shelf-Thing">
      <div className="Shelf-Thing-head">
        <Word to={`/shelf/recipe/${recipe.id}`}>{recipe.name || "A recipe without a name"}</Word>
        <span className="soft">
          {steps.length === 0 ? "" : `about ${totalTime(recipeTotalOf({ steps, bleachRounds }).timeS)}`}
        </span>
      </div>
      <p className="small soft">
        {recipeLineWords(recipe)}
        {waits ? "; something in it waits for an answer" : ""}
      </p>
    </div>
  );
}
