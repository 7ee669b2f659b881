import { Section } from "../../../kit/Section.tsx";
import { useLight } from "../../../look/light.ts";

/** What one wants to remember of a recipe. In red light they are read only: a system keyboard would light up. */
export function RecipeNotes({ text, onText }: { readonly text: string; readonly onText: (text: string) => void }) {
  const isRed = useLight() === "red";
  return (
    <Section head="Notes">
      {isRed ? (
        <p className="say">
          {text === "" ? "No notes yet." : text} <span className="small soft">Notes wait for daylight.</span>
        </p>
      ) : (
        <label className="Shelf-Recipe-notes">
          <span className="unseen">Notes</span>
          <textarea
            value={text}
            rows={4}
            maxLength={20_000}
            placeholder="What you saw, what you would change"
            onChange={(event) => onText(event.currentTarget.value)}
          />
        </label>
      )}
    </Section>
  );
}
