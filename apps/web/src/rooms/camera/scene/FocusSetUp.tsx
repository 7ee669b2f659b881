import { type ReactNode, useState } from "react";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { Focus } from "./Focus.tsx";
import { formatWords, parseFormat, readFormat } from "./focusForm.ts";
import { lensWords, setUpWords, stopName } from "./focusWords.ts";
import { type SetUpState, useSetUp } from "./useSetUp.ts";
import "./Focus.css";

/** How the camera stands: which camera, lens and stop, and one figure from which all others follow. */
export function SetUp({ sceneId }: { readonly sceneId: string }) {
  const setUp = useSetUp({ sceneId });
  const [open, setOpen] = useState(setUp?.scene.focus === undefined || setUp.scene.areas.length === 0);
  if (setUp === undefined) return null;
  return (
    <Section head="Set-up" aside={setUpWords(setUp)}>
      {open && (
        <>
          <Kit setUp={setUp} />
          {setUp.lens !== undefined && <Focus setUp={setUp} />}
        </>
      )}
      <div className="Camera-Words">
        <Word onPress={() => setOpen(!open)}>{open ? "Fold the set-up" : "Change the set-up"}</Word>
        <Word to={`/camera/checklist/${sceneId}`}>Checklist before the cap</Word>
      </div>
    </Section>
  );
}

function Kit({ setUp }: { readonly setUp: SetUpState }) {
  const { scene, cameras, lenses, meters, lens, camera, lengthUnit, onCamera, onLens, onStop, onMeter } = setUp;
  return (
    <>
      {cameras.length > 0 && (
        <Chosen
          label="Camera"
          value={scene.cameraId}
          options={cameras.map((one) => ({
            value: one.id,
            name: one.name === "" ? "a camera" : one.name,
            detail: one.format && formatWords(one.format, lengthUnit),
          }))}
          onChoose={onCamera}
        />
      )}
      {lenses.length > 0 ? (
        <Chosen
          label="Lens"
          value={scene.lensId}
          options={lenses.map((one) => ({ value: one.id, name: lensWords(one, lengthUnit) }))}
          onChoose={onLens}
        />
      ) : (
        <p className="say">
          There is no lens on the Shelf yet. <Word to="/shelf/lens/new">Put a lens on the shelf</Word>
        </p>
      )}
      {lens !== undefined && lens.stops.length > 1 && (
        <Chosen
          label="Stop"
          value={scene.stopId ?? lens.stops[0]?.id}
          options={lens.stops.map((stop) => ({ value: stop.id, name: stopName(stop) }))}
          onChoose={onStop}
        />
      )}
      {meters.length > 1 && (
        <Chosen
          label="Meter"
          value={scene.meterId}
          options={meters.map((one) => ({ value: one.id, name: one.name === "" ? "a meter" : one.name }))}
          onChoose={onMeter}
        />
      )}
      {camera?.format === undefined && <FormatField setUp={setUp} />}
    </>
  );
}

function FormatField({ setUp }: { readonly setUp: SetUpState }) {
  const { scene, lengthUnit, onFormat } = setUp;
  const stored = scene.format === undefined ? "" : formatWords(scene.format, lengthUnit);
  const [text, onText] = useSettled(stored, (typed) => {
    const format = parseFormat(typed);
    if (format !== undefined) onFormat(format);
  });
  return (
    <Field
      label="The picture on the paper"
      text={text}
      onText={onText}
      read={readFormat}
      kind="mm"
      hint="13 × 18 cm"
      signs={9}
      aside="what the holder lets through"
    />
  );
}

function Chosen<Value extends string>(props: {
  readonly label: string;
  readonly value: Value | undefined;
  readonly options: readonly { readonly value: Value; readonly name: string; readonly detail?: ReactNode }[];
  readonly onChoose: (value: Value) => void;
}) {
  const [only] = props.options;
  if (props.options.length === 1 && only !== undefined && only.value === props.value) {
    return (
      <p className="small">
        <span className="soft">{props.label}</span> <b>{only.name}</b>
      </p>
    );
  }
  return <Choice {...props} />;
}
