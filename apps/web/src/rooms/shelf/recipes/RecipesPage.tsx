import { recipeTotalOf } from "@captray/notebook/answers";
import { type RecipeFrame, recipeFrames, recipeFromFrame } from "@captray/notebook/starters/recipes";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { RecipeLine } from "./RecipeLine.tsx";
import { totalTime } from "./recipeLineWords.ts";
import { freshName } from "./recipeSet.ts";
import "../Shelf.css";
import "./Recipes.css";

/** The recipes there are, and frames to start one from. */
export default function RecipesPage() {
  const recipes = useShelf("recipe");
  return (
    <Page title="Recipes" closeTo="/shelf">
      <div className="Shelf-Recipes">
        <Section head="Yours" aside={recipes.length === 0 ? "none yet" : undefined}>
          {recipes.length === 0 && (
            <NothingYet>
              A recipe says what is done in the trays: baths in their order, times, rounds, light. Start from a frame
              below, and change it as your paper asks. What comes out of the trays is then known by its recipe.
            </NothingYet>
          )}
          {recipes.map((recipe) => (
            <RecipeLine key={recipe.id} recipe={recipe} />
          ))}
        </Section>
        <Section head="Frames to start from" aside="common practice: test first">
          {recipeFrames().map((frame) => (
            <Frame key={frame.frame} frame={frame} />
          ))}
          <Empty />
        </Section>
      </div>
    </Page>
  );
}

function Frame({ frame }: { readonly frame: RecipeFrame }) {
  const notebook = useNotebook();
  const recipes = useShelf("recipe");
  const { timeS } = recipeTotalOf(frame);
  const start = () => {
    const id = notebook.newId();
    const name = freshName(
      frame.name,
      recipes.map((one) => one.name),
    );
    const set = { ...recipeFromFrame({ frame }), name, createdAt: { ...momentNow() } };
    notebook.change([{ id, kind: "recipe", set }], "Recipe made from a frame").kept.catch(() => undefined);
    goTo({ path: `/shelf/recipe/${id}` });
  };
  return (
    <div className="Shelf-Frame">
      <div className="Shelf-Thing-head">
        <b>{frame.name}</b>
        <span className="soft">about {totalTime(timeS)}</span>
      </div>
      <p className="say">{frame.says}</p>
      <p className="small soft">{beginning(frame.steps.map(({ name }) => name).join(", "))}.</p>
      <Button onPress={start} spoken={`Start from ${frame.name}`}>
        Start from it
      </Button>
    </div>
  );
}

function Empty() {
  const notebook = useNotebook();
  const recipes = useShelf("recipe");
  const start = () => {
    const id = notebook.newId();
    const name = freshName(
      `recipe ${recipes.length + 1}`,
      recipes.map((one) => one.name),
    );
    notebook
      .change([{ id, kind: "recipe", set: { name, createdAt: { ...momentNow() } } }], "Empty recipe made")
      .kept.catch(() => undefined);
    goTo({ path: `/shelf/recipe/${id}` });
  };
  return (
    <div className="Shelf-Frame">
      <p className="small soft">A process of your own that none of these is like.</p>
      <Button onPress={start}>Start with no steps</Button>
    </div>
  );
}
