import type { Notebook } from "@captray/notebook/journal";
import type { Run } from "@captray/notebook/records";
import { useEffect, useState } from "react";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";
import { markRun, runGoing, turnLight } from "../../../look/light.ts";
import { AwayAsked } from "./AwayAsked.tsx";
import { RunAtTheTrays } from "./RunAtTheTrays.tsx";
import { RunMenu } from "./RunMenu.tsx";
import { RunOver } from "./RunOver.tsx";
import { RunTrouble } from "./RunTrouble.tsx";
import { useRun } from "./useRun.ts";
import "./Run.css";

/** A run at the trays, in red. */
export default function RunPage({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const record = useRecord(id);
  const absent = record === "absent" || (record !== "loading" && record.kind !== "run");
  useEffect(() => {
    // A run of another notebook, or one taken back, holds nobody in red light.
    if (absent && runGoing() === id) markRun({ id: null });
  }, [absent, id]);
  if (record === "loading") return <p role="status">Opening</p>;
  if (record === "absent" || record.kind !== "run") {
    return (
      <Page title="No such run" closeTo="/trays">
        <NothingYet way={<Word to="/trays">To the trays</Word>}>This notebook has no run of that address.</NothingYet>
      </Page>
    );
  }
  return <OfRun key={record.id} notebook={notebook} run={record} />;
}

function OfRun({ notebook, run }: { readonly notebook: Notebook; readonly run: Run }) {
  const [shows, setShows] = useState<"trays" | "menu" | "trouble">("trays");
  const at = useRun({ notebook, run, keysOn: shows === "trays" });
  useEffect(() => {
    document.title = "At the trays. Cap & Tray";
    if (runGoing() !== null) turnLight({ to: "red" });
  }, []);
  if (at.askedWords !== null) return <AwayAsked at={at} />;
  if (at.view.over) return <RunOver at={at} />;
  if (shows === "menu") {
    return <RunMenu at={at} onBack={() => setShows("trays")} onTrouble={() => setShows("trouble")} />;
  }
  if (shows === "trouble") return <RunTrouble at={at} onBack={() => setShows("trays")} />;
  return <RunAtTheTrays at={at} onMenu={() => setShows("menu")} />;
}
