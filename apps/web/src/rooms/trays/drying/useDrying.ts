import { type DryingAct, type DryingThing, dryingOf, dryingSets } from "@captray/notebook/answers";
import { useEffect, useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSheets } from "../../../kit/notebook/useSheets.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { dryingView } from "./dryingView.ts";

/** Binds the drying page to the notebook; the time since is told anew each half minute. */
export function useDrying() {
  const notebook = useNotebook();
  const cards = useCards();
  const runs = useShelf("run");
  const ids = useMemo(
    () => cards.flatMap(({ id, state }) => (state === "drying" || state === "dry" ? [id] : [])),
    [cards],
  );
  const sheets = useSheets(ids);
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    const again = setInterval(() => setNowMs(Date.now()), 30_000);
    return () => clearInterval(again);
  }, []);
  const subjectOf = (sheetId: string) => {
    const sceneId = cards.find(({ id }) => id === sheetId)?.links.sceneId;
    const scene = sceneId === undefined ? undefined : notebook.peek(sceneId);
    return scene?.kind === "scene" ? scene.subject : "";
  };
  return {
    view: dryingView({ drying: dryingOf({ sheets, runs }), subjectOf, nowMs: Math.max(nowMs, Date.now()) }),
    isReading: sheets.length < ids.length,
    act: ({ sheetId, letter, code }: DryingThing, done: DryingAct, note: string) => {
      const sheet = sheets.find(({ id }) => id === sheetId);
      if (sheet === undefined) return;
      const sets = dryingSets({ sheet, letter, done, now: momentNow() });
      notebook.change(sets, `${code}: ${note}`).kept.catch(() => undefined);
    },
    toldApart: (runId: string, laneIds: readonly string[]) => {
      const set = Object.fromEntries(laneIds.map((id) => [`lanes.${id}.toldApartAt`, momentNow()]));
      notebook.change([{ id: runId, kind: "run", set }], "told apart after the wash").kept.catch(() => undefined);
    },
  };
}
