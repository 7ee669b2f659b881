import { recipeCautionsOf } from "@captray/notebook/answers";
import type { BathRole } from "@captray/notebook/records";
import { useEffect, useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { useReadCautions } from "../../../kit/cautions/useCautions.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { markRun } from "../../../look/light.ts";
import { temperatureStep, temperatureWords } from "../temperature.ts";
import { newRun } from "./newRun.ts";
import { nothingChosen, type ReadyDraft, readDraft, writeDraft } from "./readyDraft.ts";
import { developsS, readyView } from "./readyView.ts";

const { mirror, sound } = pageDevices();

/** Binds what is chosen for the next run to the notebook. */
export function useReady() {
  const notebook = useNotebook();
  const cards = useCards();
  const recipes = useShelf("recipe");
  const baths = useShelf("bath");
  const runs = useShelf("run");
  const scenes = useShelf("scene");
  const { temperatureUnit: unit } = useSettings();
  const [draft, setDraft] = useState(() => readDraft(mirror, notebook.id));
  const [loaded, setLoaded] = useState(0);
  const [failed, setFailed] = useState(false);
  const [nowMs] = useState(Date.now);
  const waiting = cards.filter(({ state }) => state === "exposed" || state === "flashOwed" || state === "inProcess");
  const idsKey = waiting.map(({ id }) => id).join();
  useEffect(() => {
    let left = false;
    void Promise.allSettled(
      idsKey
        .split(",")
        .filter(Boolean)
        .map((id) => notebook.load(id)),
    ).then(() => {
      if (!left) setLoaded((now) => now + 1);
    });
    return () => {
      left = true;
    };
  }, [notebook, idsKey]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: `loaded` says that sheets have come into memory
  const view = useMemo(
    () =>
      readyView({
        draft,
        cards,
        sheetOf: (id) => {
          const held = notebook.peek(id);
          return held?.kind === "sheet" ? held : undefined;
        },
        subjectOf: (id) => scenes.find((scene) => scene.id === id)?.subject ?? "",
        recipes,
        baths,
        runs,
        nowMs,
      }),
    [draft, cards, notebook, scenes, recipes, baths, runs, nowMs, loaded],
  );
  const put = (next: ReadyDraft) => {
    writeDraft(mirror, notebook.id, next);
    setDraft(next);
  };
  const { recipe } = view;
  const read = useReadCautions();
  const cautions = useMemo(() => {
    const { at, whole, checkedOn } = recipeCautionsOf({
      steps: recipe?.steps ?? [],
      today: new Date(nowMs).toISOString().slice(0, 10),
    });
    const shown = [...whole, ...[...at.values()].flat()].filter(
      ({ id, dismissible }) => !dismissible || !read.includes(id),
    );
    return { shown, checkedOn };
  }, [recipe, read, nowMs]);
  return {
    cautions,
    draft,
    view,
    failed,
    put,
    develops: recipe && developsS(recipe, draft.bathC),
    turnSheet: (key: string) =>
      put({
        ...draft,
        keys: draft.keys.includes(key) ? draft.keys.filter((one) => one !== key) : [...draft.keys, key],
      }),
    temperature: (celsius: number) => temperatureWords({ celsius, unit }),
    stepTemperature: (role: BathRole, celsius: number, by: 1 | -1) =>
      put({ ...draft, bathC: { ...draft.bathC, [role]: temperatureStep({ celsius, by, unit }) } }),
    /** In the press: a phone lets no page sound before it. */
    wakeSound: () => void sound.wake(),
    begin: () => {
      if (recipe === undefined || view.waits !== undefined) return;
      const id = notebook.newId();
      try {
        const set = newRun({ id, newId: () => notebook.newId(), view, recipe, draft, now: momentNow() });
        notebook
          .change([set], `${view.lanes.map(({ code }) => code).join(", ")} to the trays`)
          .kept.catch(() => setFailed(true));
        markRun({ id });
        put({ ...nothingChosen, goes: draft.goes, baths: draft.baths, waitForMe: draft.waitForMe });
        goTo({ path: `/trays/run/${id}`, replace: true });
      } catch {
        setFailed(true);
      }
    },
  };
}
