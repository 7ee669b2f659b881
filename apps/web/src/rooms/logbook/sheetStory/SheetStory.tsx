import type { Notebook } from "@captray/notebook/journal";
import type { Sheet } from "@captray/notebook/records";
import { formatStops } from "@captray/science/notation";
import { useEffect, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { lazyPart } from "../../../kit/lazyPart.ts";
import { LedgerOfPlan } from "../../../kit/ledgerOfPlan/LedgerOfPlan.tsx";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { FilledSide } from "../../../kit/sides/FilledSide.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import { dayWords, givenWords, timeWords } from "../logbookWords.ts";
import type { FrozenLedger } from "./frozenLedger.ts";
import { Swapped } from "./Swapped.tsx";
import type { StoryView } from "./storyView.ts";
import { useSheetStory } from "./useSheetStory.ts";
import { WayOfSheet } from "./WayOfSheet.tsx";
import "./SheetStory.css";

// Fetched by themselves: most sheets are read for their light, not for their paper.
const Faults = lazyPart(() => import("../../../kit/faults/SheetFaults.tsx").then((part) => part.SheetFaults));
const Runs = lazyPart(() => import("../runs/RunsOfSheet.tsx").then((part) => part.RunsOfSheet));
const Pieces = lazyPart(() => import("../pieces/Pieces.tsx").then((part) => part.Pieces));

/** Everything known of one sheet, on one page. */
export function SheetStory({
  notebook,
  sheet,
  closeTo,
}: {
  readonly notebook: Notebook;
  readonly sheet: Sheet;
  readonly closeTo?: string;
}) {
  const { view, ledger, older, setNotes, setLabel, putAway, ...story } = useSheetStory({ notebook, sheet });
  const { date, toSide, blocked, unblock, owed, intoTheTrays, backIn } = story;
  const [swapping, setSwapping] = useState(false);
  return (
    <Page
      title={[view.code, view.subject].filter(Boolean).join(" ")}
      aside={<span className="Logbook-Story-kind soft">{view.kind}</span>}
      {...(closeTo === undefined ? {} : { closeTo })}
    >
      <div className="Logbook-Story">
        {sheet.removedAt !== undefined && (
          <p className="say">This sheet was put away; it is not in the list. Take back brings it out again.</p>
        )}
        <Purpose key={`${sheet.id} purpose`} label={sheet.label ?? ""} onLabel={setLabel} />
        <Facts view={view} plannedS={sheet.planned?.timeS} sheetId={sheet.id} />
        <div className="Logbook-Story-acts">
          {view.atTheCap && (
            <Button main onPress={() => goTo({ path: `/camera/cap/${sheet.id}` })}>
              To the cap
            </Button>
          )}
          {view.flashToGive && (
            <Button onPress={() => goTo({ path: `/camera/flash/for/${sheet.id}` })}>Give the flash</Button>
          )}
          {view.canGoAgain && (
            <Button main={!view.atTheCap} onPress={() => goTo({ path: `/camera/now/${sheet.id}` })}>
              Again: another sheet, read anew
            </Button>
          )}
        </div>
        <Section head="Its way">
          <WayOfSheet view={view} sheet={sheet} acts={{ date, toSide }} />
          {blocked !== undefined && <FilledSide {...blocked} onDone={unblock} />}
          {owed && (
            <ProblemNote
              head="Flash is still owed"
              ways={
                <>
                  <Button onPress={() => intoTheTrays(true)}>Flashed now, then into the trays</Button>
                  <Button onPress={() => intoTheTrays(false)}>Into the trays without it</Button>
                </>
              }
            >
              {givenWords(view.flashOwedS ?? 0)} of flash were planned for after the exposure, before the first bath. In
              the first bath it is too late.
            </ProblemNote>
          )}
          {sheet.takenOutAt !== undefined && (
            <p className="say">
              Taken out of its holder on {dayWords({ moment: sheet.takenOutAt, nowMs: Date.now() })},{" "}
              {timeWords({ moment: sheet.takenOutAt })}. <Word onPress={backIn}>It is still in it</Word>
            </p>
          )}
        </Section>
        {view.wasSeen && <Runs sheet={sheet} />}
        {view.wasSeen && (
          <Section head="Faults" aside="on the sheet as it is looked at">
            <Faults sheet={sheet} sizeMm={view.sizeMm} />
          </Section>
        )}
        {view.canBeCut && (
          <Section head="Pieces" aside={sheet.pieces === undefined ? undefined : "each its own way"}>
            <Pieces sheet={sheet} sizeMm={view.sizeMm} />
          </Section>
        )}
        <Section head="Notes">
          <Notes key={sheet.id} notes={sheet.notes ?? ""} onNotes={setNotes} />
        </Section>
        <ThatDaysLedger ledger={ledger} sheet={sheet} />
        {older.length > 0 && (
          <Section head="What stood here before" aside="newest first">
            <ul className="Logbook-Story-older">
              {older.map(({ name, at, words, of }) => (
                <li key={`${of} ${name}`}>
                  <span className="soft">
                    {of}, {thenWords(at)}
                  </span>
                  <span>{words}</span>
                </li>
              ))}
            </ul>
          </Section>
        )}
        {swapping ? (
          <Swapped notebook={notebook} sheet={sheet} onDone={() => setSwapping(false)} />
        ) : (
          <p>
            <Word onPress={() => setSwapping(true)}>It was swapped with another sheet</Word>
          </p>
        )}
        {sheet.removedAt === undefined && (
          <Word
            onPress={() => {
              putAway();
              goTo({ path: "/logbook" });
            }}
          >
            Put {view.code} away
          </Word>
        )}
      </div>
    </Page>
  );
}

function Facts({
  view,
  plannedS,
  sheetId,
}: {
  readonly view: StoryView;
  readonly plannedS: number | undefined;
  readonly sheetId: string;
}) {
  const { given, openings, mishaps, facts } = view;
  return (
    <dl className="Logbook-Story-facts">
      {facts.map(({ what, words, to }) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>
            {to === undefined ? (
              words
            ) : (
              <Word inline to={to}>
                {words}
              </Word>
            )}
          </dd>
        </div>
      ))}
      <div>
        <dt>cap</dt>
        <dd>
          {plannedS !== undefined && <>plan {Number(plannedS.toPrecision(3))} s</>}
          {given !== null && (
            <>
              {plannedS === undefined ? "" : ", "}given{" "}
              <Estimate value={given.timeS} sd={given.sdS} unit="s" of="other" />
              <span className="Logbook-Story-second soft">{given.compared}</span>
            </>
          )}
          {given === null && <span className="Logbook-Story-second soft">not exposed yet</span>}
        </dd>
      </div>
      {openings.length > 0 && (
        <div>
          <dt>{openings.length === 1 ? "opening" : "openings"}</dt>
          <dd>
            {openings.length === 1 ? (
              openings[0]?.words
            ) : (
              <ol>
                {openings.map(({ id, words }) => (
                  <li key={id}>{words}</li>
                ))}
              </ol>
            )}{" "}
            <Word inline to={`/camera/cap/${sheetId}`} spoken="Put the openings right">
              put it right
            </Word>
          </dd>
        </div>
      )}
      {mishaps.length > 0 && (
        <div>
          <dt>mishap</dt>
          <dd>
            <b>{mishaps.join(", ")}</b>
            <span className="Logbook-Story-second soft">kept, and left out when the paper is worked out</span>
          </dd>
        </div>
      )}
    </dl>
  );
}

/** What the sheet is found by: typed here, in the list's search at once. */
function Purpose({ label, onLabel }: { readonly label: string; readonly onLabel: (label: string) => void }) {
  const typed = useTyped(label);
  if (useLight() === "red") {
    return label === "" ? null : <p className="say">{label}</p>;
  }
  return (
    <label className="Logbook-Story-label">
      <span>what for</span>
      <input
        type="text"
        value={typed.text}
        maxLength={60}
        autoComplete="off"
        placeholder="flash 4 s for the shed door"
        onChange={(event) => typed.setText(event.target.value)}
        onFocus={typed.onFocus}
        onBlur={() => typed.onBlur(onLabel)}
        onKeyDown={(event) => event.key === "Enter" && event.currentTarget.blur()}
      />
    </label>
  );
}

/** Text in a field that is kept when one leaves it, and follows what is kept while nobody types. */
function useTyped(kept: string) {
  const [text, setText] = useState(kept);
  const [typing, setTyping] = useState(false);
  useEffect(() => {
    if (!typing) setText(kept);
  }, [kept, typing]);
  return {
    text,
    setText,
    onFocus: () => setTyping(true),
    onBlur: (keep: (text: string) => void) => {
      setTyping(false);
      if (text.trim() !== kept) keep(text.trim());
    },
  };
}

function Notes({ notes, onNotes }: { readonly notes: string; readonly onNotes: (notes: string) => void }) {
  const { text, setText, onFocus, onBlur } = useTyped(notes);
  const red = useLight() === "red";
  if (red) {
    return (
      <p className="say">
        {notes === "" ? "No notes yet." : notes} <span className="small soft">Notes wait for daylight.</span>
      </p>
    );
  }
  return (
    <label className="Logbook-Story-notes">
      <span className="unseen">Notes</span>
      <textarea
        value={text}
        rows={3}
        placeholder="What you saw, what you would change"
        onChange={(event) => setText(event.target.value)}
        onFocus={onFocus}
        onBlur={() => onBlur(onNotes)}
      />
      <span className="small soft" role="status">
        {text.trim() === notes ? (notes === "" ? "" : "kept") : "kept when you leave the field"}
      </span>
    </label>
  );
}

function ThatDaysLedger({ ledger, sheet }: { readonly ledger: FrozenLedger; readonly sheet: Sheet }) {
  const { lengthUnit } = useSettings();
  if (ledger.kind === "none") return null;
  const frozenAt = sheet.planned?.frozenAt;
  const aside =
    frozenAt === undefined
      ? "as it was"
      : `as it was on ${dayWords({ moment: frozenAt, nowMs: Date.now() })}, ${timeWords({ moment: frozenAt })}`;
  return (
    <Section head="That day’s ledger" aside={aside}>
      {ledger.kind === "lines" ? (
        <LedgerOfPlan ledger={ledger.lines} timeS={ledger.timeS} timeStops={ledger.timeStops} lengthUnit={lengthUnit} />
      ) : (
        <ul className="Logbook-Story-older">
          {ledger.lines.map(({ line, stops, ground }) => (
            <li key={line}>
              <span>{formatStops({ stops: stops.value, sd: stops.sd })} stops</span>
              <span>{ground}</span>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function thenWords(at: number): string {
  const offsetMin = -new Date(at).getTimezoneOffset();
  const moment = { at, offsetMin };
  return `${dayWords({ moment, nowMs: Date.now() })}, ${timeWords({ moment })}`;
}
