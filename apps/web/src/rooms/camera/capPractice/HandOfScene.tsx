import { kitOf, practiceOf } from "@captray/notebook/answers";
import { Choice } from "../../../kit/Choice.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { Word } from "../../../kit/Word.tsx";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { handName } from "./practiceWords.ts";

/** Whose hand gives this scene, and the way to practise it. */
export function HandOfScene({ sceneId }: { readonly sceneId: string }) {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const scene = shelf.scenes.find(({ id }) => id === sceneId);
  if (scene === undefined) return null;
  const { hands } = shelf;
  const { hand } = kitOf({ notebook: findsIn(shelf), scene });
  const practice = practiceOf({ hand, way: "ticks" }) ?? practiceOf({ hand, way: "counted" });
  const choose = (handId: string) =>
    void notebook.change([{ id: scene.id, kind: "scene", set: { handId } }], "Hand chosen").kept.catch(() => undefined);
  return (
    <div className="Camera-Hand">
      {hands.length > 1 && (
        <Choice
          label="Whose hand is at the cap"
          value={hand?.id}
          onChoose={choose}
          options={hands.slice(0, 7).map((one, place) => ({ value: one.id, name: handName(one.name, place) }))}
        />
      )}
      <p className="small soft">
        {practice === undefined
          ? "This hand is not practised. "
          : `Practised ${practice.by === "cap" ? "with the cap" : "by touch"}, ${practice.openings} openings. `}
        <Word inline to={hand === undefined ? "/camera/practice" : `/camera/practice/${hand.id}`}>
          {practice === undefined ? "Practise with the cap" : "Practise more"}
        </Word>
      </p>
    </div>
  );
}
