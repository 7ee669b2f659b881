import { mostSteps, type StepDoes } from "@captray/notebook/records";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Word } from "../../../kit/Word.tsx";
import { freshStepId } from "./recipeState.ts";
import { doesFor, doesWords } from "./recipeWords.ts";
import type { RecipePageView } from "./useRecipePage.ts";

export interface AddStepProps {
  readonly view: RecipePageView;
  /** It comes after this step; without one it is the first. */
  readonly afterId: string | undefined;
  /** The name of that step, where the press stands in its form. */
  readonly after?: string;
  readonly onAdded: (stepId: string) => void;
}

/** Asks what the next step does; the press adds it with the times of common practice. */
export function AddStep({ view, afterId, after, onAdded }: AddStepProps) {
  const [isAsking, setAsking] = useState(false);
  const { steps, result } = view.draft;
  if (steps.length >= mostSteps) {
    const waits = `${mostSteps} steps are the most anybody keeps in order in the dark`;
    return (
      <Button onPress={() => undefined} waits={waits}>
        Add a step
      </Button>
    );
  }
  if (!isAsking) {
    if (after === undefined) return <Button onPress={() => setAsking(true)}>Add a step at the end</Button>;
    return (
      <Word spoken={`Add a step after ${after}`} onPress={() => setAsking(true)}>
        Add a step after it
      </Word>
    );
  }
  const add = (does: StepDoes) => {
    const stepId = freshStepId(steps);
    view.on({ kind: "added", stepId, afterId, does });
    setAsking(false);
    onAdded(stepId);
  };
  return (
    <section className="Shelf-Recipe-add" aria-label="What the new step does">
      {doesFor(result).map((does) => (
        <Button key={does} onPress={() => add(does)}>
          {doesWords[does].name}
        </Button>
      ))}
      <Word onPress={() => setAsking(false)}>No step</Word>
    </section>
  );
}
