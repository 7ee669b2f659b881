import type { RecipeCautions } from "@captray/notebook/answers";
import { Caution } from "../../../kit/Caution.tsx";

/** Cautions of a recipe, one under the other; the first sentence of each says what it is about. */
export function CautionList({ cautions }: { readonly cautions: RecipeCautions["whole"] }) {
  return cautions.map(({ id, text }) => {
    const [, stuff = text, rule = ""] = /^(.+?[.:])\s+(.*)$/s.exec(text) ?? [];
    return (
      <Caution key={id} stuff={stuff}>
        {rule}
      </Caution>
    );
  });
}
