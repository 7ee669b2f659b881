import { useSyncExternalStore } from "react";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useCards } from "../../kit/notebook/useCards.ts";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import { useRecord } from "../../kit/notebook/useRecord.ts";
import { Page } from "../../kit/Page.tsx";
import { Word } from "../../kit/Word.tsx";
import { SheetStory } from "./sheetStory/SheetStory.tsx";
import { Sheets } from "./sheets/Sheets.tsx";
import "./Logbook.css";

const atADesk = matchMedia("(min-width: 68.75em)");

/** The list of sheets, and a sheet's page; at a desk a spread, the list left and the story right. */
export default function Logbook({ id }: { readonly id: string }) {
  const desk = useSyncExternalStore(followDesk, () => atADesk.matches);
  const [newest] = useCards();
  if (!desk) {
    if (id !== "") return <Story id={id} closeTo="/logbook" />;
    return (
      <Page title="Logbook">
        <Sheets chosen="" />
      </Page>
    );
  }
  if (newest === undefined && id === "") {
    return (
      <Page title="Logbook">
        <Sheets chosen="" />
      </Page>
    );
  }
  const shown = id === "" ? (newest?.id ?? "") : id;
  return (
    <div className="Logbook">
      <section className="Logbook-left" aria-label="Sheets">
        <Sheets chosen={shown} />
      </section>
      <section className="Logbook-right" aria-label="The sheet">
        <Story id={shown} />
      </section>
    </div>
  );
}

function Story({ id, closeTo }: { readonly id: string; readonly closeTo?: string }) {
  const notebook = useNotebook();
  const sheet = useRecord(id);
  if (sheet === "loading") {
    return (
      <p className="soft" role="status">
        Opening
      </p>
    );
  }
  if (sheet === "absent" || sheet.kind !== "sheet") {
    return (
      <Page title="No such sheet" {...(closeTo === undefined ? {} : { closeTo })}>
        <NothingYet way={<Word to="/logbook">All sheets</Word>}>This notebook has no sheet of that address.</NothingYet>
      </Page>
    );
  }
  return <SheetStory key={id} notebook={notebook} sheet={sheet} {...(closeTo === undefined ? {} : { closeTo })} />;
}

function followDesk(listener: () => void): () => void {
  atADesk.addEventListener("change", listener);
  return () => atADesk.removeEventListener("change", listener);
}
