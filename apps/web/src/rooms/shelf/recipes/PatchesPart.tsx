import { type PatchTreatment, patchesDrawing } from "@captray/drawings/recipes";
import { type ControlPatch, controlPatches } from "@captray/notebook/records";
import { Caution } from "../../../kit/Caution.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { patchWords } from "./recipeWords.ts";
import type { RecipePageView } from "./useRecipePage.ts";

const treatments: Readonly<Record<ControlPatch, PatchTreatment>> = {
  black: "masked",
  fogged: "lit",
  bleachOnly: "cutAfterBleach",
  baseProcessed: "cutBeforeAll",
  base: "cutAndFixed",
};
const fixedApart: ReadonlySet<ControlPatch> = new Set(["bleachOnly", "baseProcessed", "base"]);

/** Corners of every sheet that tell causes apart: which, how they are masked or cut, and how they lie for the scan. */
export function PatchesPart({ view }: { readonly view: RecipePageView }) {
  const { draft, on, recipe } = view;
  const [widthPx, letterPx, place] = useRoomFor();
  const index = useShelf("exposureIndex").findLast(({ recipeId }) => recipeId === recipe.id);
  const sheet = useShelf("paperBox").find(({ id }) => id === index?.paperBoxId)?.size;
  const chosen = controlPatches.filter((patch) => draft.patches.includes(patch));
  const lettered = chosen.map((patch, at) => ({ patch, letter: "abcde"[at] ?? "", words: patchWords[patch] }));
  return (
    <Section head="Control patches" aside={chosen.length === 0 ? "none" : `${chosen.length} on each sheet`}>
      <p className="say">
        A finished print cannot tell why its whites are grey. A corner that was treated otherwise can: it is the
        cheapest evidence there is.
      </p>
      <ul className="Shelf-Recipe-toggles" aria-label="Patches on each sheet">
        {controlPatches.map((patch) => {
          const isOn = draft.patches.includes(patch);
          return (
            <li key={patch}>
              <button type="button" aria-pressed={isOn} onClick={() => on({ kind: "patched", patch, on: !isOn })}>
                <b>{patchWords[patch].name}</b>
                <span className="small soft">{patchWords[patch].tells}</span>
              </button>
            </li>
          );
        })}
      </ul>
      {lettered.length > 0 && (
        <>
          <div ref={place} className="Shelf-Recipe-strip">
            {widthPx > 0 && (
              <Drawing
                drawing={patchesDrawing({
                  widthPx: Math.min(widthPx, 480),
                  letterPx,
                  sheet,
                  patches: lettered.map(({ patch, letter, words }) => ({
                    letter,
                    treatment: treatments[patch],
                    says: `${letter}, ${words.name}`,
                  })),
                })}
              />
            )}
          </div>
          <dl className="Shelf-Recipe-patches">
            {lettered.map(({ patch, letter, words }) => (
              <div key={patch}>
                <dt>
                  {letter} <span className="soft">{words.name}</span>
                </dt>
                <dd>{words.how}</dd>
              </div>
            ))}
          </dl>
          <p className="small soft">
            15 mm each, pencilled on the back before the lights go out. For the scan, dry and in this order, beside the
            print and the grey scale.
          </p>
          {chosen.some((patch) => fixedApart.has(patch)) && (
            <Caution stuff="A fixing bath beside the bleach.">
              Patches that are cut off need one: its own tray and tongs, rinse between, and its own waste vessel, never
              the bleach’s. Gloves, moving air; the supplier’s safety sheet and your local rules come first.
            </Caution>
          )}
        </>
      )}
    </Section>
  );
}
