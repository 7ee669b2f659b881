import { recipeStrip } from "@captray/drawings/recipes";
import type { Recipe } from "@captray/notebook/records";
import { recipeFrames } from "@captray/notebook/starters/recipes";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { lazyPart } from "../../../kit/lazyPart.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { Word } from "../../../kit/Word.tsx";
import { Absent } from "../form/Absent.tsx";
import { CautionList } from "./CautionList.tsx";
import { RecipeNotes } from "./RecipeNotes.tsx";
import { doseWords, totalWords } from "./recipeWords.ts";
import { StepsPart } from "./StepsPart.tsx";
import { type RecipePageView, useRecipePage } from "./useRecipePage.ts";
import "../Shelf.css";
import "./Recipes.css";

const PatchesPart = lazyPart(() => import("./PatchesPart.tsx").then((part) => part.PatchesPart));

/** A recipe of the trays: what it gives, its steps in their order, control patches, cautions. */
export default function RecipePage({ id }: { readonly id: string }) {
  const recipe = useShelf("recipe").find((one) => one.id === id);
  if (recipe === undefined) return <Absent thing="recipe" />;
  return <Written key={recipe.id} recipe={recipe} />;
}

function Written({ recipe }: { readonly recipe: Recipe }) {
  const view = useRecipePage(recipe);
  return (
    <Page title={recipe.name || "A recipe"} closeTo="/shelf/recipes">
      <div className="Shelf-Recipe">
        <About view={view} />
        <StepsPart view={view} />
        <div className="Shelf-Recipe-rest">
          <PatchesPart view={view} />
          <RecipeNotes text={view.draft.notes} onText={(text) => view.on({ kind: "said", key: "notes", text })} />
          <Section head="Minded throughout">
            <CautionList cautions={view.cautions.whole} checkedOn={view.cautions.checkedOn} />
          </Section>
        </div>
        <Acts view={view} />
      </div>
    </Page>
  );
}

function About({ view }: { readonly view: RecipePageView }) {
  const { draft, on, read, total, from, dose } = view;
  const [widthPx, letterPx, place] = useRoomFor();
  return (
    <div className="Shelf-Recipe-about">
      {view.isChanged && (
        <p className="small Shelf-Recipe-changed" role="status">
          Changed, not kept yet. It waits on this machine, also when the page is closed.{" "}
          {view.read.problems.length === 0 && <Word onPress={view.keep}>Keep it</Word>}
        </p>
      )}
      <PlainField
        label="What you call it"
        text={draft.name}
        onText={(text) => on({ kind: "said", key: "name", text })}
      />
      <Choice
        label="It gives"
        value={draft.result === "" ? undefined : draft.result}
        onChoose={(result) => on({ kind: "gives", result })}
        options={[
          { value: "negative", name: "a paper negative" },
          { value: "positive", name: "a direct positive" },
        ]}
      />
      {read.steps.length > 0 && (
        <>
          <p className="say">{totalWords(total)}</p>
          <div ref={place} className="Shelf-Recipe-strip">
            {widthPx > 0 && (
              <Drawing
                drawing={recipeStrip({
                  widthPx,
                  letterPx,
                  steps: read.steps.map(({ name, timeS, group, light }, step) => ({
                    name,
                    timeS: timeS.aim,
                    visits: total.visits[step] ?? 1,
                    white: light === "whiteAllowed" || light === "whiteRequired",
                    ...(group && { roundId: group.id }),
                  })),
                })}
              />
            )}
          </div>
          <p className="small soft">One sheet, to scale. Under it, filled: no white light.</p>
        </>
      )}
      {draft.untested && (
        <p className="small Shelf-Recipe-untested">
          <b>Common practice: test first.</b> Nobody has tried these ranges on your paper.{" "}
          <Word onPress={() => on({ kind: "tested" })}>I have tried them</Word>
        </p>
      )}
      {from !== undefined && (
        <p className="small soft">
          Copied from{" "}
          <Word inline to={`/shelf/recipe/${from.id}`}>
            {from.name || "a recipe"}
          </Word>
          {doseWords(dose)}
        </p>
      )}
      {read.steps.length === 0 && <LayOut view={view} />}
    </div>
  );
}

/** A recipe without steps: its name and result serve the expected print; steps can be laid out at any time. */
function LayOut({ view }: { readonly view: RecipePageView }) {
  const frames = recipeFrames().filter(({ result }) => view.draft.result === "" || result === view.draft.result);
  return (
    <div className="Shelf-Recipe-frames">
      <p className="say">
        No steps yet. Lay them out from a frame and change what is otherwise with you, or add them one by one.
      </p>
      {frames.map((frame) => (
        <Button key={frame.frame} wide aside={`${frame.steps.length} steps`} onPress={() => view.layOut(frame)}>
          {`As ${frame.name}`}
        </Button>
      ))}
    </div>
  );
}

function Acts({ view }: { readonly view: RecipePageView }) {
  const [problem] = view.read.problems;
  const waits = problem?.head ?? (view.isChanged ? undefined : "something to be changed");
  const boxes = [...new Set(view.foundWith)].join(" and ");
  return (
    <div className="Shelf-Recipe-acts">
      {boxes !== "" && (
        <ProblemNote
          head={`The index of ${boxes} was found with the first development as it was`}
          ways={<Button onPress={view.keepAsCopy}>Keep the change as a copy</Button>}
        >
          Kept in place, that index and the expected print go on as if nothing had changed. A copy states how strong its
          development is against this one.
        </ProblemNote>
      )}
      <div className="Shelf-Form-acts">
        <Button main onPress={view.keep} waits={waits}>
          Keep it so
        </Button>
        {view.isChanged && <Button onPress={view.letGo}>Let the changes go</Button>}
        {!view.isChanged && <Button onPress={view.copy}>Copy and change</Button>}
        <Button onPress={view.putAway}>Put it away</Button>
      </div>
    </div>
  );
}
