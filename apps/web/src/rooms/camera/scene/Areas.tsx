import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { readMeter } from "../readingNow/readTexts.ts";
import type { AreaView } from "./sceneView.ts";

/** The areas of a scene, three to a row: what the meter said of each, and how far it stands from the placed one. */
export function Areas(props: {
  readonly areas: readonly AreaView[];
  readonly onName: (areaId: string, name: string) => void;
  readonly onPlace: (areaId: string) => void;
  readonly onRead: (areaId: string, text: string) => void;
  readonly onAdd: (name: string, text: string) => void;
}) {
  const [open, setOpen] = useState<string | undefined>(undefined);
  const chosen = props.areas.find((area) => area.id === open);
  return (
    <>
      <ul className="Camera-Chips">
        {props.areas.map((area) => (
          <li key={area.id}>
            <button
              type="button"
              aria-expanded={area.id === open}
              data-ground={area.isGround || undefined}
              onClick={() => setOpen(area.id === open ? undefined : area.id)}
            >
              <span className="soft">{area.name}</span>
              <b>{area.said}</b>
              <span className="small soft">
                {area.isGround ? "placed" : (area.fromGround ?? "")}
                {area.moved ? ", moved" : ""}
              </span>
            </button>
          </li>
        ))}
        <li>
          <button
            type="button"
            aria-expanded={open === "new"}
            onClick={() => setOpen(open === "new" ? undefined : "new")}
          >
            <span className="Camera-Chips-add">Add an area</span>
          </button>
        </li>
      </ul>
      {chosen !== undefined && (
        <div className="Camera-Chips-open">
          <Settled
            key={chosen.id}
            label="Name"
            stored={chosen.name}
            write={(name) => props.onName(chosen.id, name)}
            hint="hull"
          />
          <ReadingField label={`Read ${chosen.name} anew`} onRead={(text) => props.onRead(chosen.id, text)} />
          {!chosen.isGround && <Button onPress={() => props.onPlace(chosen.id)}>Place this one on mid grey</Button>}
        </div>
      )}
      {open === "new" && (
        <NewArea
          onAdd={(name, text) => {
            props.onAdd(name, text);
            setOpen(undefined);
          }}
        />
      )}
    </>
  );
}

/** Words that are kept once they have settled. */
export function Settled(props: {
  readonly label: string;
  readonly stored: string;
  readonly write: (text: string) => void;
  readonly hint: string;
}) {
  const [text, onText] = useSettled(props.stored, props.write);
  return <PlainField label={props.label} text={text} onText={onText} hint={props.hint} />;
}

function NewArea({ onAdd }: { readonly onAdd: (name: string, text: string) => void }) {
  const [name, setName] = useState("");
  const [text, setText] = useState("");
  const read = readMeter(text).kind === "read";
  return (
    <div className="Camera-Chips-open">
      <PlainField label="Name of the area" text={name} onText={setName} hint="snow" />
      <Field label="The meter says" text={text} onText={setText} read={readMeter} kind="time" after="s" signs={6} />
      <Button onPress={() => onAdd(name, text)} waits={read ? undefined : "a reading"}>
        Add it
      </Button>
    </div>
  );
}

/** One new figure of the meter, taken by a press. */
export function ReadingField({ label, onRead }: { readonly label: string; readonly onRead: (text: string) => void }) {
  const [text, setText] = useState("");
  const read = readMeter(text).kind === "read";
  return (
    <div className="Camera-ReadingField">
      <Field label={label} text={text} onText={setText} read={readMeter} kind="time" after="s" signs={6} />
      <Button
        onPress={() => {
          onRead(text);
          setText("");
        }}
        waits={read ? undefined : "a reading"}
      >
        Take this reading
      </Button>
    </div>
  );
}
