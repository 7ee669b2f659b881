import { useEffect, useRef, useState } from "react";
import { BeforeDaylight } from "../../../kit/BeforeDaylight.tsx";
import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { Word } from "../../../kit/Word.tsx";
import { turnLight, useLight } from "../../../look/light.ts";
import { pressWords } from "./noticeWords.ts";
import { codesWords } from "./runWords.ts";
import type { RunAtHand } from "./useRun.ts";

/** After the last bath: which sheet is which, and where to go from here. */
export function RunOver({ at }: { readonly at: RunAtHand }) {
  const [asks, setAsks] = useState(false);
  const light = useLight();
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  const [group] = at.tellApart;
  if (asks) {
    return (
      <BeforeDaylight
        fogs={at.fogs}
        onBack={() => setAsks(false)}
        onGoOn={() => {
          turnLight({ to: "day" });
          setAsks(false);
        }}
      />
    );
  }
  return (
    <div className="Trays-Menu">
      <header className="Trays-Run-top">
        <h1 ref={head} tabIndex={-1}>
          {group === undefined ? at.view.move : "Which is which?"}
        </h1>
        <span>{at.view.since}</span>
      </header>
      {group !== undefined ? (
        <div className="Trays-Menu-words">
          <p className="say">
            {codesWords(group.codes)} came out of the wash together. Read the pencil on each back, or lay them in the
            order they hung.
          </p>
          <Button big wide main onPress={() => at.toldApart(group.laneIds)}>
            Told apart: {codesWords(group.codes)}
          </Button>
          <Word to={`/logbook/${at.sheetIds[0] ?? ""}`}>They are mixed up: swap them in the Logbook</Word>
        </div>
      ) : (
        <div className="Trays-Menu-words">
          <p className="say">
            {codesWords(at.codes)}: every time is kept, as it was pressed. Hang them, and look at what was done while
            you remember it.
          </p>
          <Button big wide main onPress={() => goTo({ path: `/trays/after/${at.run.id}` })}>
            What was done
          </Button>
          <Button big wide onPress={() => goTo({ path: "/trays/drying" })}>
            Where it hangs to dry
          </Button>
          {light === "red" && (
            <Button big wide onPress={() => setAsks(true)}>
              Out of red light
            </Button>
          )}
          <Word to="/trays">To the door of the room</Word>
        </div>
      )}
      {at.takesBack !== null && (
        <HoldPress className="Trays-Run-foot" onHeld={at.takeBack}>
          <span>
            <b>Hold for 2 s: take back</b>{" "}
            <span>{`${at.takesBack.who}: ${pressWords[at.takesBack.press] ?? at.takesBack.press}`}</span>
          </span>
        </HoldPress>
      )}
    </div>
  );
}
