import { useEffect, useState, useSyncExternalStore } from "react";
import { goTo } from "../kit/goTo.ts";
import { enterDemo, leaveDemo } from "../kit/notebook/house.ts";
import { useHouse } from "../kit/notebook/useHouse.ts";
import { useNotebook } from "../kit/notebook/useNotebook.ts";
import { useTakeBack } from "../kit/notebook/useTakeBack.ts";
import { TakeBackStrip } from "../kit/TakeBackStrip.tsx";
import { Word } from "../kit/Word.tsx";
import { runGoing } from "../look/light.ts";
import { FirstVisit } from "./FirstVisit.tsx";
import { KeptHere } from "./KeptHere.tsx";
import { Shell } from "./Shell.tsx";

/** The shell round an open notebook. */
export function WithNotebook() {
  const notebook = useNotebook();
  const version = useSyncExternalStore(notebook.subscribe, () => notebook.version());
  const [atOpening] = useState(version);
  const house = useHouse();
  const demo = house.kind === "open" && house.isDemo;
  return (
    <Shell
      start={version === "" ? <FirstVisit onOpenDemo={() => void openDemo()} /> : <ToTheCamera />}
      kept={<KeptHere version={version} />}
      strip={version !== atOpening && <Strip />}
      banner={demo && <Demo />}
    />
  );
}

/** What was changed last on this page, and the way back; after one, the one before it. */
function Strip() {
  const { note, takeBack } = useTakeBack();
  const [left, setLeft] = useState<string>();
  if (note === undefined && left === undefined) return null;
  const onTakeBack = async () => {
    const taken = await takeBack().catch(() => undefined);
    const some = taken?.kind === "takenBack" && taken.left.length > 0;
    setLeft(some ? "Taken back, but for what was changed elsewhere since. Before that:" : undefined);
  };
  return (
    <TakeBackStrip
      said={[left, `${note ?? "nothing"}.`].filter(Boolean).join(" ")}
      onTakeBack={() => void onTakeBack()}
    />
  );
}

function Demo() {
  return (
    <p className="Shell-demo">
      <span>
        <b>Demo notebook, invented.</b> What you try here is thrown away when you leave.
      </span>
      <Word onPress={() => void leaveDemo().then(() => goTo({ path: "/" }))}>Leave the demo</Word>
    </p>
  );
}

async function openDemo(): Promise<void> {
  const { fillDemo } = await import("@captray/notebook/starters/demo");
  await enterDemo({ fill: (notebook) => fillDemo({ notebook }) });
}

/** Who has a notebook begins in the Camera room; who has a sheet in the trays, there. */
function ToTheCamera() {
  useEffect(() => {
    const run = runGoing();
    goTo({ path: run === null ? "/camera" : `/trays/run/${run}`, replace: true });
  }, []);
  return null;
}
