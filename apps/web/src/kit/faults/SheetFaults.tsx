import { type DrawnFault, faultSign, faultWords, placeWords, sheetDrawing } from "@captray/drawings/faults";
import type { Fault, FaultKind, Piece, Sheet } from "@captray/notebook/records";
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from "react";
import { momentNow } from "../../devices/momentNow.ts";
import { useLight } from "../../look/light.ts";
import { Button } from "../Button.tsx";
import { beginning } from "../beginning.ts";
import { Drawing } from "../Drawing.tsx";
import { useNotebook } from "../notebook/useNotebook.ts";
import { useRoomFor } from "../useRoomFor.ts";
import { changeFault, crossMoved, type FaultChange, markFault, type Point } from "./faultMarking.ts";
import "./SheetFaults.css";

const kinds = Object.keys(faultWords) as DrawnFault[];
const signs = new Map(kinds.map((what) => [what, faultSign({ what, sizePx: 40 })] as const));
const mostHeightPx = 460;
const middle: Point = { x: 0.5, y: 0.5 };

export interface SheetFaultsProps {
  readonly sheet: Sheet;
  /** Of the box it came from. */
  readonly sizeMm?: { readonly widthMm: number; readonly heightMm: number } | undefined;
  /** Only what lies on this piece is listed; a mark goes onto the whole sheet, where it lies. */
  readonly piece?: Piece | undefined;
}

/**
 * The faults of a sheet on a drawing of it: press where it is, then what it is. By finger, mouse or keys, in either light.
 *
 * Each mark is kept at once as one change, which the take-back strip undoes.
 */
export function SheetFaults({ sheet, sizeMm, piece }: SheetFaultsProps) {
  const notebook = useNotebook();
  const [cross, setCross] = useState<Point>();
  const [chosen, setChosen] = useState<string>();
  const palette = useRef<HTMLUListElement>(null);
  const target = useRef<HTMLDivElement>(null);
  const goesOn = useRef(false);
  const toPalette = () => palette.current?.querySelector("button")?.focus();
  // The keys go on in the list of faults as soon as it is drawn, and come back to the sheet from there.
  useEffect(() => {
    if (cross !== undefined && goesOn.current) toPalette();
    goesOn.current = false;
  });
  const backToSheet = () => target.current?.focus({ preventScroll: true });
  const [widthPx, letterPx, place] = useRoomFor();
  const faults = sheet.faults ?? [];
  const code = `${sheet.code ?? "sheet"}${piece?.letter ?? ""}`;
  const high = sizeMm === undefined ? 7 / 5 : sizeMm.heightMm / sizeMm.widthMm;
  const keep = (next: readonly Fault[], note: string) => {
    const set = { faults: next.length === 0 ? null : next.map((fault) => ({ ...fault })) };
    notebook.change([{ id: sheet.id, kind: "sheet", set }], `${code}: ${note}`).kept.catch(() => undefined);
  };
  const add = (what: FaultKind) => {
    const id = notebook.newId();
    keep(
      markFault({ faults, what, at: cross ?? middle, id, noticedAt: momentNow(), high }),
      `${faultWords[what]} marked`,
    );
    setCross(undefined);
    setChosen(id);
    backToSheet();
  };
  const change = (fault: Fault, how: FaultChange, note: string) =>
    keep(changeFault({ faults, id: fault.id, change: how, high }), `${faultWords[fault.what]} ${note}`);
  const drop = (fault: Fault) => {
    keep(
      faults.filter(({ id }) => id !== fault.id),
      `${faultWords[fault.what]} taken out`,
    );
    setChosen(undefined);
  };
  const chosenPlace = faults.findIndex(({ id }) => id === chosen);
  const drawing =
    widthPx > 0
      ? sheetDrawing({
          widthPx,
          mostHeightPx,
          letterPx,
          code,
          sizeMm,
          faults,
          pieces: sheet.pieces,
          chosen: chosenPlace < 0 ? undefined : chosenPlace,
          cross,
        })
      : undefined;
  const onPointerUp = (event: PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.querySelector("svg")?.getBoundingClientRect();
    if (!event.isPrimary || event.button !== 0 || box === undefined || box.width === 0 || box.height === 0) return;
    setCross({ x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const moved = crossMoved({ cross: cross ?? middle, key: event.key, isFine: event.shiftKey });
    if (moved) setCross(cross === undefined ? middle : moved);
    else if (event.key === "Enter" || event.key === " ") {
      if (cross !== undefined) toPalette();
      else {
        goesOn.current = true;
        setCross(middle);
      }
    } else if (event.key === "Escape" && cross) setCross(undefined);
    else return;
    event.preventDefault();
  };
  const listed = faults.flatMap((fault, n) => (piece === undefined || on(piece, fault) ? [{ fault, n: n + 1 }] : []));
  return (
    <div className="Kit-Faults">
      <div className="Kit-Faults-sheet" ref={place}>
        <div
          className="Kit-Faults-target"
          ref={target}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing that is pointed at by keys
          tabIndex={0}
          role="application"
          aria-label={`${code}, drawn: press where a fault is; arrow keys move the cross, Enter goes on to what it is`}
          onPointerUp={onPointerUp}
          onKeyDown={onKeyDown}
        >
          {drawing !== undefined && <Drawing drawing={drawing} />}
        </div>
        <p className="small soft" role="status">
          {cross === undefined
            ? "Press the sheet where something is wrong; it is drawn as you look at it."
            : `Here: ${placeWords(cross)}. What is it?`}
        </p>
      </div>
      <div className="Kit-Faults-words">
        {cross !== undefined && (
          <ul className="Kit-Faults-palette" ref={palette} aria-label="What it is">
            {kinds.map((what) => (
              <li key={what}>
                <button type="button" onClick={() => add(what)}>
                  <Sign what={what} />
                  <span>{faultWords[what]}</span>
                </button>
              </li>
            ))}
            <li>
              <Button
                wide
                onPress={() => {
                  setCross(undefined);
                  backToSheet();
                }}
              >
                Nothing here
              </Button>
            </li>
          </ul>
        )}
        {listed.length === 0 && cross === undefined && <p className="say">No fault is marked on {code}.</p>}
        {listed.length > 0 && (
          <ol className="Kit-Faults-list" aria-label={`Faults of ${code}`}>
            {listed.map(({ fault, n }) => (
              <li key={fault.id} value={n}>
                <button
                  type="button"
                  aria-expanded={fault.id === chosen}
                  onClick={() => setChosen(fault.id === chosen ? undefined : fault.id)}
                >
                  <b>{n}</b>
                  <Sign what={fault.what} />
                  <span>
                    <b>{faultWords[fault.what]}</b>, {placeWords(fault)}
                    {fault.words !== undefined && <span className="Kit-Faults-said small">{fault.words}</span>}
                  </span>
                </button>
                {fault.id === chosen && (
                  <FaultForm
                    fault={fault}
                    cross={cross}
                    onChange={(how, note) => change(fault, how, note)}
                    onDrop={() => drop(fault)}
                  />
                )}
              </li>
            ))}
          </ol>
        )}
      </div>
    </div>
  );
}

function FaultForm({
  fault,
  cross,
  onChange,
  onDrop,
}: {
  readonly fault: Fault;
  readonly cross: Point | undefined;
  readonly onChange: (how: FaultChange, note: string) => void;
  readonly onDrop: () => void;
}) {
  const [words, setWords] = useState(fault.words ?? "");
  const red = useLight() === "red";
  const name = beginning(faultWords[fault.what]);
  return (
    <div className="Kit-Faults-form">
      <Button onPress={() => onChange({ do: "larger" }, "larger")} spoken={`${name}: larger`}>
        Larger
      </Button>
      <Button onPress={() => onChange({ do: "smaller" }, "smaller")} spoken={`${name}: smaller`}>
        Smaller
      </Button>
      <Button onPress={() => onChange({ do: "turn" }, "turned")} spoken={`${name}: turn it`}>
        Turn
      </Button>
      <Button
        onPress={() => cross && onChange({ do: "moveTo", to: cross }, "moved")}
        waits={cross === undefined ? "a place pressed on the sheet" : undefined}
      >
        Move it there
      </Button>
      <Button onPress={onDrop} spoken={`${name}: take it out`}>
        Not a fault
      </Button>
      {red ? (
        <p className="small soft">Words to it wait for daylight.</p>
      ) : (
        <label className="Kit-Faults-note">
          <span className="small soft">words to it</span>
          <input
            value={words}
            maxLength={200}
            autoComplete="off"
            onChange={(event) => setWords(event.currentTarget.value)}
            onBlur={() =>
              words.trim() !== (fault.words ?? "") && onChange({ do: "say", words: words.trim() }, "put in words")
            }
            onKeyDown={(event) => event.key === "Enter" && event.currentTarget.blur()}
          />
        </label>
      )}
    </div>
  );
}

function Sign({ what }: { readonly what: DrawnFault }) {
  const drawing = signs.get(what);
  return (
    <span className="Kit-Faults-sign" aria-hidden="true">
      {drawing !== undefined && <Drawing drawing={drawing} />}
    </span>
  );
}

function on({ place: { x, y, width, height } }: Piece, fault: Fault): boolean {
  return fault.x >= x && fault.x <= x + width && fault.y >= y && fault.y <= y + height;
}
