import type { RecipeFindingSaid } from "@captray/notebook/answers";
import { Button } from "../../../kit/Button.tsx";
import { beginning } from "../../../kit/beginning.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Word } from "../../../kit/Word.tsx";
import type { RecipePageView } from "./useRecipePage.ts";

/** Answers to what is nonsense or doubtful, where it is; a knowing person goes on, and that is kept. */
export function Findings(props: { readonly findings: readonly RecipeFindingSaid[]; readonly view: RecipePageView }) {
  const { findings, view } = props;
  return findings.map(({ code, weight, stepId, message, hint, known }) => {
    const know = (on: boolean) => view.on({ kind: "known", code, stepId, on });
    if (known) {
      return (
        <p key={code} className="small Shelf-Recipe-known">
          <b>Done knowingly.</b> {message}{" "}
          <Word spoken={`Mind again: ${message}`} onPress={() => know(false)}>
            Mind it again
          </Word>
        </p>
      );
    }
    if (weight === "doubtful") {
      return (
        <p key={code} className="small Shelf-Recipe-doubt">
          <b>Doubtful.</b> {message} {hint}
        </p>
      );
    }
    // What it is, then why: the two are parted by a colon.
    const [head = message, ...why] = message.split(": ");
    return (
      <ProblemNote
        key={code}
        head={head}
        ways={weight === "nonsense" ? <Button onPress={() => know(true)}>I know, go on</Button> : undefined}
      >
        {why.length > 0 && `${beginning(why.join(": "))} `}
        {hint}
      </ProblemNote>
    );
  });
}
