import { sheetDrawing } from "@captray/drawings/faults";
import { type CutSheet, cutSheet, pieceSets } from "@captray/notebook/answers";
import type { Piece, Sheet } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { Word } from "../../../kit/Word.tsx";
import {
  type CutChoice,
  canBeWhole,
  cutOf,
  cutRefused,
  firstCut,
  mostStrips,
  type PieceRow,
  type PieceStep,
  patchWords,
  piecesView,
} from "./piecesView.ts";
import "./Pieces.css";

export interface PiecesProps {
  readonly sheet: Sheet;
  readonly sizeMm?: { readonly widthMm: number; readonly heightMm: number } | undefined;
}

/** A sheet cut into halves, quarters, strips or control patches, and the way of each of them. */
export function Pieces({ sheet, sizeMm }: PiecesProps) {
  const notebook = useNotebook();
  const [cutting, setCutting] = useState(false);
  const rows = piecesView({ sheet, nowMs: Date.now() });
  const code = sheet.code ?? "sheet";
  const step = (row: PieceRow, to: PieceStep, word: string, isTakenAway = false) => {
    const sets = pieceSets({ sheet, letter: row.letter, step: to, at: isTakenAway ? null : momentNow() });
    const note = `${row.code}: ${isTakenAway ? "not " : ""}${word.toLowerCase()}`;
    notebook.change(sets, note).kept.catch(() => undefined);
  };
  const putTogether = () =>
    notebook
      .change([{ id: sheet.id, kind: "sheet", set: { pieces: null } }], `${code} is whole`)
      .kept.catch(() => undefined);
  return (
    <>
      {rows.length > 0 && (
        <ul className="Logbook-Pieces" aria-label={`Pieces of ${code}`}>
          {rows.map((row) => (
            <Row key={row.letter} row={row} onStep={step} />
          ))}
        </ul>
      )}
      {cutting ? (
        <Cut sheet={sheet} sizeMm={sizeMm} onDone={() => setCutting(false)} />
      ) : (
        <div className="Logbook-Pieces-acts">
          <Word onPress={() => setCutting(true)}>
            {rows.length === 0 ? "Cut it into pieces" : "Cut control patches off"}
          </Word>
          {canBeWhole({ sheet }) && <Word onPress={putTogether}>It was not cut</Word>}
        </div>
      )}
    </>
  );
}

function Row({
  row,
  onStep,
}: {
  readonly row: PieceRow;
  readonly onStep: (row: PieceRow, step: PieceStep, word: string, isTakenAway?: boolean) => void;
}) {
  const [open, setOpen] = useState(false);
  return (
    <li>
      <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        <b>
          {row.code.slice(0, -1)}
          <i>{row.letter}</i>
        </b>
        <span>{row.what}</span>
        <span className="soft">
          {row.state}
          {row.faults > 0 && `, ${row.faults === 1 ? "1 fault" : `${row.faults} faults`}`}
        </span>
      </button>
      {open && (
        <div className="Logbook-Pieces-form">
          {row.dates.map(({ step, word, when }) => (
            <p key={step}>
              <b>{word}</b> {when}{" "}
              <Word
                inline
                onPress={() => onStep(row, step, word, true)}
                spoken={`${row.code}, ${word}: it did not happen`}
              >
                it did not happen
              </Word>
            </p>
          ))}
          <div className="Logbook-Pieces-acts">
            {row.next.map(({ step, word }) => (
              <Button key={step} onPress={() => onStep(row, step, word)} spoken={`${row.code}: ${word} now`}>
                {word}
              </Button>
            ))}
          </div>
        </div>
      )}
    </li>
  );
}

/** How it is cut, on a drawing before it is done. */
function Cut({ sheet, sizeMm, onDone }: PiecesProps & { readonly onDone: () => void }) {
  const notebook = useNotebook();
  const isCut = (sheet.pieces ?? []).length > 0;
  const [choice, setChoice] = useState<CutChoice>(isCut ? { ...firstCut, how: "patches" } : firstCut);
  const [widthPx, letterPx, place] = useRoomFor();
  const made = cutSheet({ sheet, cut: cutOf(choice) });
  const put = (change: Partial<CutChoice>) => setChoice({ ...choice, ...change });
  const code = sheet.code ?? "sheet";
  const keep = () => {
    if (made.kind !== "cut") return;
    notebook
      .change(made.sets, `${code} cut: ${made.letters.map((letter) => code + letter).join(", ")}`)
      .kept.catch(() => undefined);
    onDone();
  };
  return (
    <div className="Logbook-Pieces-cut">
      {!isCut && (
        <Choice
          label="How it is cut"
          value={choice.how}
          onChoose={(how) => put({ how })}
          options={[
            { value: "quarters", name: "quarters" },
            { value: "halves", name: "halves" },
            { value: "strips", name: "strips" },
            { value: "patches", name: "control patches off an edge" },
          ]}
        />
      )}
      {(choice.how === "halves" || choice.how === "strips") && (
        <Choice
          label="They lie"
          value={choice.along}
          onChoose={(along) => put({ along })}
          options={[
            { value: "across", name: "side by side" },
            { value: "down", name: "one under the other" },
          ]}
        />
      )}
      {choice.how === "strips" && (
        <div className="Logbook-Pieces-acts">
          <Button spoken="One strip fewer" onPress={() => put({ count: Math.max(2, choice.count - 1) })}>
            −
          </Button>
          <b>{choice.count} strips</b>
          <Button spoken="One strip more" onPress={() => put({ count: Math.min(mostStrips, choice.count + 1) })}>
            +
          </Button>
        </div>
      )}
      {choice.how === "patches" && <PatchChoices choice={choice} onPut={put} />}
      <div ref={place}>
        {widthPx > 0 && (
          <Drawing
            drawing={sheetDrawing({
              widthPx,
              mostHeightPx: 300,
              letterPx,
              code,
              sizeMm,
              faults: [],
              pieces: shown(made, sheet),
            })}
          />
        )}
      </div>
      <div className="Logbook-Pieces-acts">
        <Button main onPress={keep} waits={cutRefused({ made })}>
          Cut so
        </Button>
        <Button onPress={onDone}>Leave it</Button>
      </div>
      <p className="small soft">
        The letters go on the backs in soft pencil before the scissors. Each piece then has a way of its own through the
        trays; the exposure is that of the sheet.
      </p>
    </div>
  );
}

function PatchChoices({
  choice,
  onPut,
}: {
  readonly choice: CutChoice;
  readonly onPut: (change: Partial<CutChoice>) => void;
}) {
  const kinds = Object.keys(patchWords) as (keyof typeof patchWords)[];
  return (
    <>
      <Choice
        label="Off which edge"
        value={choice.edge}
        onChoose={(edge) => onPut({ edge })}
        options={[
          { value: "top", name: "upper" },
          { value: "bottom", name: "lower" },
          { value: "left", name: "left" },
          { value: "right", name: "right" },
        ]}
      />
      <ul className="Logbook-Pieces-patches" aria-label="Which patches">
        {kinds.map((kind) => {
          const chosen = choice.patches.includes(kind);
          const next = kinds.filter((one) => (one === kind ? !chosen : choice.patches.includes(one)));
          return (
            <li key={kind}>
              <button type="button" aria-pressed={chosen} onClick={() => onPut({ patches: next })}>
                {patchWords[kind]}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

function shown(made: CutSheet, sheet: Sheet): readonly Piece[] {
  if (made.kind !== "cut") return sheet.pieces ?? [];
  return made.sets[0]?.set.pieces as unknown as readonly Piece[];
}
