import type { ExpectedPrint, Kit } from "@captray/notebook/answers";
import type { Result } from "@captray/notebook/records";
import { memo, useId, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Word } from "../../../kit/Word.tsx";
import { startRounds } from "./recipeSets.ts";
import { type MadeHowActs, useMadeHow } from "./useMadeHow.ts";
import { readWanted, wantedAnswer } from "./wantedTexts.ts";

export interface MadeHowProps {
  readonly kit: Kit;
  readonly wanted: ExpectedPrint["wanted"] | undefined;
}

/** Kind, recipe, filter and wanted tones of a print, with starting values; folded away until it is asked for. */
export const MadeHow = memo(
  function MadeHow({ kit, wanted }: MadeHowProps) {
    const [isOpen, setOpen] = useState(false);
    const id = useId();
    return (
      <div className="Camera-MadeHow">
        <button
          type="button"
          aria-expanded={isOpen}
          aria-controls={isOpen ? id : undefined}
          onClick={() => setOpen(!isOpen)}
        >
          How it is made, and what is wanted
        </button>
        {isOpen && (
          <div id={id}>
            <Opened kit={kit} wanted={wanted} />
          </div>
        )}
      </div>
    );
  },
  // While a finger slides the wanted tones come anew, and are the same.
  (was, is) =>
    was.kit === is.kit &&
    was.wanted?.highlight.density === is.wanted?.highlight.density &&
    was.wanted?.shadow.density === is.wanted?.shadow.density,
);

function Opened({ kit, wanted }: MadeHowProps) {
  const acts = useMadeHow({ kit });
  const { result } = acts;
  const { recipe, paperBox, scene } = kit;
  const filters = paperBox?.contrastFilters ?? [];
  return (
    <>
      <Choice<Result>
        label="It becomes a"
        value={result}
        onChoose={acts.onBecomes}
        options={[
          { value: "negative", name: "paper negative" },
          { value: "positive", name: "direct positive" },
        ]}
      />
      {acts.recipes.length > 0 && (
        <Choice
          label="Recipe"
          value={recipe?.id as string | undefined}
          onChoose={acts.onRecipe}
          options={acts.recipes.slice(-7).map(({ id, name }) => ({ value: id as string, name: name || "a recipe" }))}
        />
      )}
      {recipe !== undefined && (
        <Word to={`/shelf/recipe/${recipe.id}`}>{`${recipe.name || "The recipe"}: its steps and times`}</Word>
      )}
      {result === "positive" && (
        <Choice
          label={`Rounds of bleach${recipe?.bleachRounds === undefined ? `, ${startRounds} to start with` : ""}`}
          value={String(recipe?.bleachRounds ?? startRounds)}
          onChoose={(rounds) => acts.onRounds(Number(rounds))}
          options={["1", "2", "3", "4", "5", "6"].map((value) => ({ value, name: value }))}
        />
      )}
      {filters.length > 0 && filters.length < 7 && (
        <Choice
          label="Filter for contrast"
          value={scene.contrastFilter ?? ""}
          onChoose={acts.onFilter}
          options={[
            { value: "", name: "none" },
            ...filters.map(({ name, isoRange }) => ({ value: name, name, detail: `range ${Math.round(isoRange)}` })),
          ]}
        />
      )}
      {result !== undefined && (
        <Wanted key={`${recipe?.id} ${result}`} acts={acts} kit={kit} wanted={wanted} result={result} />
      )}
    </>
  );
}

function Wanted(props: MadeHowProps & { readonly acts: MadeHowActs; readonly result: Result }) {
  const { kit, wanted, acts, result } = props;
  const own = kit.recipe?.wanted;
  const [highlight, setHighlight] = useState(own === undefined ? "" : String(own.highlightDensity));
  const [shadow, setShadow] = useState(own === undefined ? "" : String(own.shadowDensity));
  const isNegative = result === "negative";
  const answer = wantedAnswer({ highlight, shadow, isNegative });
  const isKept =
    answer.kind === "starting"
      ? own === undefined
      : answer.kind === "own" &&
        answer.highlightDensity === own?.highlightDensity &&
        answer.shadowDensity === own.shadowDensity;
  return (
    <>
      <Field
        label={isNegative ? "Wanted dense end, D" : "Wanted white, D"}
        text={highlight}
        onText={setHighlight}
        read={readWanted}
        kind="number"
        signs={6}
        hint={own === undefined ? (wanted?.highlight.density.toFixed(2) ?? "") : "the paper’s own"}
        below
      />
      <Field
        label={isNegative ? "Wanted thin end, D" : "Wanted black, D"}
        text={shadow}
        onText={setShadow}
        read={readWanted}
        kind="number"
        signs={6}
        hint={own === undefined ? (wanted?.shadow.density.toFixed(2) ?? "") : "the paper’s own"}
        below
      />
      <p className="small soft">
        D is how dark a tone is: 0 would be a perfect white, 2 is all but no light. Left empty, they follow what this
        paper can do.
      </p>
      {!isKept && (
        <Button onPress={() => acts.onWanted(answer)} waits={answer.kind === "waits" ? answer.say : undefined}>
          {answer.kind === "starting" ? "Want what the paper can do" : "Want these"}
        </Button>
      )}
    </>
  );
}
