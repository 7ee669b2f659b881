import { readEv } from "@captray/science/notation";
import { type ReactNode, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { useDesk } from "../../../kit/useDesk.ts";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { ReadingFields } from "./AreasReading.tsx";
import type { AreaView } from "./sceneView.ts";
import { useAreas } from "./useAreas.ts";
import "./Areas.css";

/** What the page knows of how an area should print; nothing where it does not yet. */
export interface AreaPrint {
  /** The patch of the chip and of the table. */
  readonly patch: ReactNode;
  /** Under the reading in a chip, where something is to be said: “black”. */
  readonly chipWords?: ReactNode;
  /** In the table: “0.24 ±0.03”. */
  readonly words: ReactNode;
}

export interface AreasProps {
  readonly sceneId: string;
  readonly areas: readonly AreaView[];
  readonly printOf?: ((areaId: string) => AreaPrint | undefined) | undefined;
}

/** The areas of a scene: chips three to a row, on a desk a table; one opens to be read, placed, moved or taken out. */
export function Areas({ sceneId, areas, printOf }: AreasProps) {
  const [open, setOpen] = useState<string | undefined>(undefined);
  const desk = useDesk();
  const turn = (id: string) => setOpen(id === open ? undefined : id);
  const chosen = areas.find((area) => area.id === open);
  const placed = areas.find((area) => area.isGround);
  const shared = { areas, open, onTurn: turn, printOf, from: placed === undefined ? "the mean" : placed.name };
  return (
    <>
      {desk ? <AreaTable {...shared} /> : <AreaChips {...shared} />}
      {chosen !== undefined && <AreaOpen key={chosen.id} sceneId={sceneId} area={chosen} areas={areas} />}
      {open === "new" && <NewArea sceneId={sceneId} areas={areas} onAdded={() => setOpen(undefined)} />}
    </>
  );
}

interface AreaListProps {
  readonly areas: readonly AreaView[];
  readonly open: string | undefined;
  readonly onTurn: (id: string) => void;
  readonly printOf: AreasProps["printOf"];
  /** What the others are counted from. */
  readonly from: string;
}

function AreaChips({ areas, open, onTurn, printOf }: AreaListProps) {
  return (
    <ul className="Camera-Chips">
      {areas.map((area) => {
        const print = printOf?.(area.id);
        return (
          <li key={area.id}>
            <button
              type="button"
              aria-expanded={area.id === open}
              data-ground={area.isGround || undefined}
              onClick={() => onTurn(area.id)}
            >
              {print?.patch}
              <span>
                <span className="soft">{area.name}</span>
                <b>{area.said}</b>
                <span className="small soft">
                  {area.standing}
                  {print?.chipWords}
                </span>
              </span>
            </button>
          </li>
        );
      })}
      <li>
        <button type="button" aria-expanded={open === "new"} onClick={() => onTurn("new")}>
          <span className="Camera-Chips-add">Add an area</span>
        </button>
      </li>
    </ul>
  );
}

function AreaTable({ areas, open, onTurn, printOf, from }: AreaListProps) {
  return (
    <table className="Camera-AreaTable">
      <caption className="unseen">Areas: what the meter said of each, how far it stands from {from}</caption>
      <thead>
        <tr>
          <th scope="col">area</th>
          <th scope="col">meter said</th>
          <th scope="col">from {from}</th>
          {printOf !== undefined && <th scope="col">should print</th>}
        </tr>
      </thead>
      <tbody>
        {areas.map((area) => {
          const print = printOf?.(area.id);
          return (
            <tr key={area.id} data-open={area.id === open || undefined}>
              <th scope="row">
                <button type="button" aria-expanded={area.id === open} onClick={() => onTurn(area.id)}>
                  {area.name}
                </button>
              </th>
              <td className="Camera-AreaTable-said">{area.said}</td>
              <td>{area.isGround ? (area.placeStops === 0 ? "0" : `0, ${area.standing}`) : area.standing}</td>
              {printOf !== undefined && (
                <td>
                  <span className="Camera-AreaTable-print">
                    {print?.patch}
                    {print?.words}
                  </span>
                </td>
              )}
            </tr>
          );
        })}
        <tr>
          <th scope="row">
            <button type="button" aria-expanded={open === "new"} onClick={() => onTurn("new")}>
              <span className="Camera-Chips-add">Add an area</span>
            </button>
          </th>
          <td colSpan={printOf === undefined ? 2 : 3} />
        </tr>
      </tbody>
    </table>
  );
}

/** One area opened: its name, its readings, where it stands. */
function AreaOpen(props: { readonly sceneId: string; readonly area: AreaView; readonly areas: readonly AreaView[] }) {
  const { sceneId, area, areas } = props;
  const { onName, onPlace, onMean, onRead, onReadToo, onMove, onRemove, start } = useAreas({ sceneId });
  const [refused, setRefused] = useState<string | undefined>(undefined);
  const [name, onNameText] = useSettled(area.storedName, (text) => onName(area.id, text));
  const read = area.said !== "read it";
  return (
    <div className="Camera-Chips-open">
      <PlainField label="Name" text={name} onText={onNameText} hint="hull" />
      <ReadingFields
        label={`Read ${area.name} anew`}
        start={start}
        acts={[
          {
            name: "Take this reading",
            onTake: (reading) => {
              setRefused(undefined);
              onRead(area.id, reading);
            },
          },
          ...(read
            ? [
                {
                  name: "Average it with those before",
                  onTake: (reading: Parameters<typeof onReadToo>[1]) => setRefused(onReadToo(area.id, reading)),
                },
              ]
            : []),
        ]}
      />
      <p className="small soft" aria-live="polite">
        {refused ?? area.madeOf}
      </p>
      {read && <Placing area={area} onPlace={onPlace} onMean={onMean} />}
      {areas.length > 1 && (
        <div className="Camera-ReadingFields-acts">
          <Button
            onPress={() => onMove(area.id, -1)}
            waits={areas[0]?.id === area.id ? "it is the first" : undefined}
            spoken={`Move ${area.name} earlier`}
          >
            Earlier
          </Button>
          <Button
            onPress={() => onMove(area.id, 1)}
            waits={areas.at(-1)?.id === area.id ? "it is the last" : undefined}
            spoken={`Move ${area.name} later`}
          >
            Later
          </Button>
          <Button onPress={() => onRemove(area.id)} spoken={`Take ${area.name} out`}>
            Take it out
          </Button>
        </div>
      )}
    </div>
  );
}

/** Where an area shall stand: so many stops above or below mid grey. */
function Placing(props: {
  readonly area: AreaView;
  readonly onPlace: (areaId: string, stops: number) => void;
  readonly onMean: () => void;
}) {
  const { area, onPlace, onMean } = props;
  const [text, setText] = useState(area.isGround && area.placeStops !== 0 ? String(area.placeStops) : "");
  const read = readEv({ text });
  const stops = read.kind === "read" && Math.abs(read.value) <= 12 ? read.value : text.trim() === "" ? 0 : undefined;
  return (
    <>
      <Field
        label={`${area.name}: stops above mid grey`}
        text={text}
        onText={setText}
        read={(typed) => readEv({ text: typed })}
        kind="ev"
        signs={5}
        hint="0"
        aside="−2 is two below: a shadow with drawing in it. +2: a white that holds."
        below
      />
      <div className="Camera-ReadingFields-acts">
        <Button
          onPress={() => stops !== undefined && onPlace(area.id, stops)}
          waits={stops === undefined ? "stops between −12 and 12" : undefined}
        >
          {placingWords(stops)}
        </Button>
        {area.isGround && <Button onPress={onMean}>Place the mean of all instead</Button>}
      </div>
    </>
  );
}

function placingWords(stops: number | undefined): string {
  if (stops === undefined || stops === 0) return "Place this one on mid grey";
  const size = Number(Math.abs(stops).toFixed(2));
  return `Place this one ${size} ${size === 1 ? "stop" : "stops"} ${stops > 0 ? "above" : "below"} mid`;
}

const suggested = ["snow", "hull", "shed door", "rope", "jug", "water"];

function NewArea(props: {
  readonly sceneId: string;
  readonly areas: readonly AreaView[];
  readonly onAdded: () => void;
}) {
  const { onAdd, start } = useAreas({ sceneId: props.sceneId });
  const [name, setName] = useState("");
  const taken = props.areas.map((area) => area.name.toLowerCase());
  return (
    <div className="Camera-Chips-open">
      <PlainField
        label="Name of the area"
        text={name}
        onText={setName}
        hint={suggested.find((one) => !taken.includes(one)) ?? "another"}
      />
      <ReadingFields
        label="The meter says"
        start={start}
        acts={[
          {
            name: "Add it",
            main: true,
            onTake: (reading) => {
              onAdd(name, reading);
              props.onAdded();
            },
          },
        ]}
      />
      <Button
        onPress={() => {
          onAdd(name, undefined);
          props.onAdded();
        }}
        waits={name.trim() === "" ? "a name" : undefined}
      >
        Read it later
      </Button>
    </div>
  );
}

/** One new figure of the placed area, taken by a press; or left. */
export function ReadAgainField(props: { readonly sceneId: string; readonly onLeft: () => void }) {
  const { onReadAgain, start } = useAreas({ sceneId: props.sceneId });
  return (
    <>
      <ReadingFields
        label="The placed area again"
        start={start}
        acts={[
          {
            name: "Take this reading",
            onTake: (reading) => {
              onReadAgain(reading);
              props.onLeft();
            },
          },
        ]}
      />
      <Word onPress={props.onLeft}>Leave it as it was read</Word>
    </>
  );
}
