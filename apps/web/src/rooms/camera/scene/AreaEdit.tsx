import { readEv } from "@captray/science/notation";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { ReadingFields } from "./AreasReading.tsx";
import type { AreaView } from "./sceneView.ts";
import { useAreas } from "./useAreas.ts";

/** One area opened: its name, its readings, where it stands. */
export function AreaOpen(props: {
  readonly sceneId: string;
  readonly area: AreaView;
  readonly areas: readonly AreaView[];
}) {
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

export function NewArea(props: {
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
