import { useMemo } from "react";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { type TraysView, traysView } from "./traysView.ts";

/** Binds the door of the room to the notebook. */
export function useTrays(): TraysView & {
  /** The run that is not over, and who is in it. */
  readonly goingOn: { readonly id: string; readonly codes: string } | undefined;
} {
  const notebook = useNotebook();
  const cards = useCards();
  const scenes = useShelf("scene");
  const runs = useShelf("run");
  const run = runs.findLast(({ endedAt }) => endedAt === undefined);
  const goingOn = run && { id: run.id, codes: run.lanes.map(({ code = "" }) => code).join(", ") };
  const view = useMemo(() => {
    const subjects = new Map<string, string>(scenes.map(({ id, subject }) => [id, subject]));
    const subjectOf = (id: string | undefined) => (id === undefined ? "" : (subjects.get(id) ?? sceneAway(id)));
    const sceneAway = (id: string) => {
      const held = notebook.peek(id);
      return held?.kind === "scene" ? held.subject : "";
    };
    return traysView({ cards, subjectOf });
  }, [notebook, cards, scenes]);
  return { ...view, goingOn };
}
