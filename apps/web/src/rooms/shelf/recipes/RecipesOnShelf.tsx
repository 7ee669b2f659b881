import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { RecipeLine } from "./RecipeLine.tsx";

/** The recipes, on the Shelf's own page. */
export function RecipesOnShelf() {
  const recipes = useShelf("recipe");
  return (
    <Section head="Recipes">
      {recipes.length === 0 && (
        <NothingYet way={<Button onPress={() => goTo({ path: "/shelf/recipes" })}>Start from a frame</Button>}>
          What is done in the trays: baths in their order, times, rounds, and which light may be on.
        </NothingYet>
      )}
      {recipes.map((recipe) => (
        <RecipeLine key={recipe.id} recipe={recipe} />
      ))}
      {recipes.length > 0 && <Word to="/shelf/recipes">Another recipe, from a frame</Word>}
    </Section>
  );
}
