import { useSyncExternalStore } from "react";
import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Word } from "../../../kit/Word.tsx";
import { listed, type PrintWay, printNotes } from "./printNotes.ts";
import type { PrintShown } from "./printShown.ts";
import { capital } from "./printView.ts";

/** What the expected print asks to be known before the cap comes off, with its ways out. */
export function PrintNotes({ shown, sceneId }: { readonly shown: PrintShown; readonly sceneId: string }) {
  const notebook = useNotebook();
  const print = useSyncExternalStore(shown.follow, shown.settled);
  const scene = useShelf("scene").find(({ id }) => id === sceneId);
  const lamp = useShelf("flashLamp").findLast(({ rate }) => rate !== undefined);
  if (print === undefined || scene === undefined) return null;
  const letGoIds = scene.letGoAreaIds ?? [];
  const letGo = print.areas.filter(({ areaId }) => letGoIds.includes(areaId)).map(({ name }) => name);
  const write = (set: Record<string, unknown>, note: string) => {
    notebook.change([{ id: scene.id, kind: "scene", set: set as never }], note).kept.catch(() => undefined);
  };
  const act = (way: PrintWay) => {
    if (way.does === "flashStrip") goTo({ path: `/camera/flash/for/${sceneId}` });
    else if (way.does === "letGo") {
      const gone = print.areas.filter(({ name }) => way.areas.includes(name)).map(({ areaId }) => areaId);
      write({ letGoAreaIds: [...letGoIds, ...gone] }, `${capital(listed(way.areas))} let go`);
    } else {
      const flashLampId = scene.flash?.flashLampId ?? lamp?.id;
      write(
        {
          chosenTimeS: { value: Number(way.timeS.toPrecision(3)) },
          ...(flashLampId !== undefined && {
            flash: {
              timeS: Math.round(way.flashS * 10) / 10,
              when: scene.flash?.when ?? "beforeLoading",
              flashLampId,
            },
          }),
        },
        "Advice taken",
      );
    }
  };
  const notes = printNotes({ print, letGo });
  return (
    <>
      {notes.map(({ head, say, ways }) => (
        <ProblemNote
          key={head}
          head={head}
          ways={
            ways.length === 0
              ? undefined
              : ways.map((way, place) => (
                  <Button key={wayWords(way)} main={place === 0 && way.does !== "letGo"} onPress={() => act(way)}>
                    {wayWords(way)}
                  </Button>
                ))
          }
        >
          {say}
        </ProblemNote>
      ))}
      {letGo.length > 0 && (
        <p className="small">
          Let go: {letGo.join(", ")}.{" "}
          <Word inline onPress={() => write({ letGoAreaIds: null }, "Nothing let go")}>
            Keep it after all
          </Word>
        </p>
      )}
    </>
  );
}

function wayWords(way: PrintWay): string {
  switch (way.does) {
    case "flashStrip":
      return "Make a flash strip";
    case "letGo":
      return `Let ${way.areas.length === 1 ? "the " : ""}${listed(way.areas)} go`;
    case "take":
      return way.words;
  }
}
