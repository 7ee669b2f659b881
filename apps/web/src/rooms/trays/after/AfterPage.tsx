import type { Run } from "@captray/notebook/records";
import { Button } from "../../../kit/Button.tsx";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { useCautions } from "../../../kit/cautions/useCautions.ts";
import { SheetFaults } from "../../../kit/faults/SheetFaults.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { RunDone } from "../../../kit/runDone/RunDone.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useAfter } from "./useAfter.ts";
import "./AfterPage.css";

const bathWords = {
  open: "still stands open.",
  hasLastHour: "has a last hour: discard it this sitting, open, never stoppered.",
  discarded: "was discarded.",
} as const;

/** After a run: what was planned and what was done, what the slips cost, and the faults while the print is in hand. */
export default function AfterPage({ id }: { readonly id: string }) {
  const run = useRecord(id);
  if (run === "loading") {
    return (
      <p className="soft" role="status">
        Opening
      </p>
    );
  }
  if (run === "absent" || run.kind !== "run") {
    return (
      <Page title="No such run" closeTo="/trays">
        <NothingYet way={<Word to="/trays">To the trays</Word>}>This notebook has no run of that address.</NothingYet>
      </Page>
    );
  }
  return <After run={run} />;
}

function After({ run }: { readonly run: Run }) {
  const { view, done, finish, sheetOf } = useAfter(run);
  const cautions = useCautions({ held: finish.held, act: "discard" });
  const lanes = done.kind === "done" ? done.lanes : [];
  return (
    <Page title={view.title} aside={<span className="small soft">{view.aside}</span>} closeTo="/trays">
      <div className="Trays-After">
        {done.kind === "unreadable" && (
          <ProblemNote head="The recipe of this run cannot be read">
            So its steps cannot be laid beside their plan. Everything that was pressed is kept, and goes into every copy
            of the notebook.
          </ProblemNote>
        )}
        {done.kind === "done" && !done.isOver && (
          <ProblemNote
            head="This run is still going on"
            ways={<Button onPress={() => goTo({ path: `/trays/run/${run.id}` })}>Back to the run</Button>}
          >
            What stands here is told as far as the last press.
          </ProblemNote>
        )}
        {run.leftBecause !== undefined && <p className="say">The run was left: {run.leftBecause}</p>}
        {view.lanes.map((lane) => {
          const told = lanes.find(({ id }) => id === lane.id);
          return (
            <Section key={lane.id} head={lane.head} aside={lane.when}>
              <div className="Trays-After-lane">
                <div>{told !== undefined && <RunDone run={run} lane={told} />}</div>
                <div>
                  {lane.sheets.map(({ sheetId, letter }) => {
                    const found = sheetOf(sheetId);
                    if (found === undefined) return null;
                    const { sheet, sizeMm } = found;
                    return (
                      <div key={`${sheetId}${letter ?? ""}`} className="Trays-After-sheet">
                        <h3>
                          Faults of {sheet.code}
                          {letter}
                        </h3>
                        <SheetFaults
                          sheet={sheet}
                          sizeMm={sizeMm}
                          piece={sheet.pieces?.find((piece) => piece.letter === letter)}
                        />
                        <Word to={`/logbook/${sheetId}`} spoken={`The page of ${sheet.code}`}>
                          Its page
                        </Word>
                      </div>
                    );
                  })}
                </div>
              </div>
            </Section>
          );
        })}
        <Section head="Baths and warmth">
          {view.readings.length === 0 ? (
            <p className="say">No thermometer was read: the times stand as the recipe has them.</p>
          ) : (
            <ul className="say">
              {view.readings.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          )}
          {finish.baths.length > 0 && (
            <ul className="Trays-After-baths">
              {finish.baths.map(({ id, name, state }) => (
                <li key={id}>
                  <Word to={`/trays/bath/${id}`}>{name === "" ? "A bath" : name}</Word> {bathWords[state]}
                </li>
              ))}
            </ul>
          )}
          {view.gone !== null && <p className="say">{view.gone}</p>}
          {finish.held.length > 0 && <Cautions {...cautions} />}
        </Section>
        <Section head="What comes next">
          <p className="say">Say where each hangs while you still know, and look again once it is dry.</p>
          <Button onPress={() => goTo({ path: "/trays/drying" })}>To the drying</Button>
        </Section>
      </div>
    </Page>
  );
}
