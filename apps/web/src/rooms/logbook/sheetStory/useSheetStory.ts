import { faultWords } from "@captray/drawings/faults";
import { holdersOf, stepSets } from "@captray/notebook/answers";
import type { Notebook, OlderValue } from "@captray/notebook/journal";
import type { FaultKind, FieldSet, Moment, Piece, Sheet, StepDate } from "@captray/notebook/records";
import { useEffect, useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { hangWords } from "../../../kit/hangWords.ts";
import { sideWords } from "../../../kit/sideWords.ts";
import { dayWords, timeWords } from "../logbookWords.ts";
import { frozenLedger } from "./frozenLedger.ts";
import { olderWords, sayOpening, stepWords, storyView } from "./storyView.ts";

/** Binds a sheet's page to the notebook: its story, what stood there before, and what can be changed here. */
export function useSheetStory({ notebook, sheet }: { readonly notebook: Notebook; readonly sheet: Sheet }) {
  const view = useMemo(
    () => storyView({ sheet, peek: (id) => notebook.peek(id), nowMs: Date.now() }),
    [sheet, notebook],
  );
  const ledger = useMemo(() => frozenLedger(sheet), [sheet]);
  const older = useOlder(notebook, sheet);
  const set = (fields: FieldSet, note: string) => {
    notebook.change([{ id: sheet.id, kind: "sheet", set: fields }], note).kept.catch(() => undefined);
  };
  const code = view.code;
  const paperBox = sheet.paperBoxId === undefined ? undefined : notebook.peek(sheet.paperBoxId);
  const [askedTrays, setAskedTrays] = useState(false);
  const [inTheWay, setInTheWay] = useState<string>();
  const stepOf = (step: StepDate, at: Moment | null, flashGivenS?: number) =>
    stepSets({
      sheet,
      step,
      at,
      now: momentNow(),
      paperBox: paperBox?.kind === "paperBox" ? paperBox : undefined,
      flashGivenS: flashGivenS ?? sheet.flashGivenS ?? (step === "flashedAt" ? sheet.flashPlanned?.timeS : undefined),
    });
  const keep = (sets: ReturnType<typeof stepOf>, note: string) => {
    setAskedTrays(false);
    setInTheWay(undefined);
    notebook.change(sets, note).kept.catch(() => undefined);
  };
  /** Whatever else lies in the side this sheet is said to be in. */
  const filledSide = () => {
    const [holder] = holdersOf({
      holders: notebook.shelf("holder").filter(({ id }) => id === sheet.holderSide?.holderId),
      cards: notebook.cards(),
    });
    const side = holder?.sides.find(({ id }) => id === sheet.holderSide?.sideId);
    const full = side && (side.state === "loaded" || side.state === "exposed") && side.sheet?.id !== sheet.id;
    return holder && full ? { holder: holder.holder, side } : undefined;
  };
  const blocked = inTheWay === undefined ? undefined : filledSide();
  return {
    view,
    ledger,
    older,
    setNotes: (notes: string) => set({ notes: notes === "" ? null : notes }, `${code}: notes`),
    setLabel: (label: string) => set({ label: label === "" ? null : label }, `${code}: what it was for`),
    /** Dates a step, or takes its date away; a loading into a filled side, and trays before the flash, are asked about first. */
    date: (step: StepDate, word: string, at: Moment | null, more: { readonly flashGivenS?: number } = {}) => {
      if (step === "loadedAt" && at && !sheet.loadedAt && filledSide()) return setInTheWay(sheet.id);
      if (step === "inProcessAt" && at && view.flashOwedS !== null && !askedTrays) return setAskedTrays(true);
      const note = at ? word.toLowerCase() : `not ${word.toLowerCase()}`;
      keep(stepOf(step, at, more.flashGivenS), `${code}: ${note}`);
    },
    /** The sheet that lies where this one is to be loaded. */
    blocked,
    unblock: () => setInTheWay(undefined),
    /** Into the trays while flash is owed: with it, or without. */
    owed: askedTrays && view.flashOwedS !== null,
    intoTheTrays: (flashedFirst: boolean) => {
      const now = momentNow();
      const flash = flashedFirst ? stepOf("flashedAt", now) : [];
      keep([...flash, ...stepOf("inProcessAt", now)], `${code}: ${flashedFirst ? "flashed, then " : ""}in the trays`);
    },
    toSide: (holderId: string, sideId: string) =>
      set({ holderSide: { holderId, sideId }, takenOutAt: null }, `${code}: in another side`),
    backIn: () => set({ takenOutAt: null }, `${code}: still in its holder`),
    putAway: () => set({ removedAt: { ...momentNow() } }, `${code} put away`),
  };
}

/** What stood in the openings and the notes before, newest first. */
function useOlder(notebook: Notebook, sheet: Sheet) {
  const [older, setOlder] = useState<readonly { name: string; at: number; words: string; of: string }[]>([]);
  useEffect(() => {
    let left = false;
    const read = async () => {
      const told: { name: string; at: number; words: string; of: string }[] = [];
      const add = (of: string, values: readonly OlderValue[], say: (value: unknown) => string | null) => {
        for (const one of olderWords({ values, say })) told.push({ ...one, of });
      };
      for (const [i, { id }] of sheet.openings.entries()) {
        const of = sheet.openings.length === 1 ? "given" : `opening ${i + 1}`;
        add(of, await notebook.history(sheet.id, `openings.${id}.opening`), sayOpening);
      }
      add("what for", await notebook.history(sheet.id, "label"), (value) => (typeof value === "string" ? value : null));
      add("notes", await notebook.history(sheet.id, "notes"), (value) => (typeof value === "string" ? value : null));
      for (const { step, word } of stepWords)
        add(word.toLowerCase(), await notebook.history(sheet.id, step), sayMoment);
      add("faults", await notebook.history(sheet.id, "faults"), sayFaults);
      add("pieces", await notebook.history(sheet.id, "pieces"), sayPieces);
      add("hangs", await notebook.history(sheet.id, "hangs"), sayHangs);
      add("holder", await notebook.history(sheet.id, "holderSide"), (value) => saySide(value, notebook));
      if (!left) setOlder(told.sort((a, b) => (a.name < b.name ? 1 : -1)));
    };
    read().catch(() => undefined);
    return () => {
      left = true;
    };
  }, [notebook, sheet]);
  return older;
}

function sayMoment(value: unknown): string | null {
  const moment = value as Moment | null;
  if (typeof moment?.at !== "number" || typeof moment.offsetMin !== "number") return null;
  return `${dayWords({ moment, nowMs: Date.now() })}, ${timeWords({ moment })}`;
}

function sayFaults(value: unknown): string | null {
  const faults = value as Sheet["faults"] | null;
  if (!Array.isArray(faults)) return null;
  return faults.map(({ what }) => faultWords[what as FaultKind]).join(", ");
}

function sayPieces(value: unknown): string | null {
  const pieces = value as Sheet["pieces"] | null;
  if (!Array.isArray(pieces)) return null;
  return pieces
    .map(({ letter, cut }: Piece) => `${letter} ${cut === "controlPatch" ? "control patch" : cut}`)
    .join(", ");
}

function sayHangs(value: unknown): string | null {
  const hangs = value as Sheet["hangs"] | null;
  return typeof hangs?.on === "string" ? hangWords(hangs) : null;
}

function saySide(value: unknown, notebook: Pick<Notebook, "peek">): string | null {
  const held = value as Sheet["holderSide"] | null;
  const holder = held?.holderId === undefined ? undefined : notebook.peek(held.holderId);
  if (holder?.kind !== "holder") return null;
  return sideWords({ holder, side: holder.sides.find(({ id }) => id === held?.sideId) });
}
