import type { Scene } from "@captray/notebook/records";
import { type ChangeEvent, useId, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { useLight } from "../../../look/light.ts";
import { PhotographPicture } from "./PhotographPicture.tsx";
import type { AboutSceneState } from "./useAboutScene.ts";
import "./Photograph.css";

/** The scene as the phone saw it, with its areas marked; taken, picked or taken away. */
export function Photograph({ about, scene }: { readonly about: AboutSceneState; readonly scene: Scene }) {
  const [areaId, setAreaId] = useState<string | undefined>(undefined);
  const light = useLight();
  const area = scene.areas.find((one) => one.id === areaId);
  return (
    <div className="Camera-Photograph">
      {scene.photograph !== undefined && (
        <>
          <PhotographPicture
            scene={scene}
            areaId={area?.id}
            onMark={(at) => area !== undefined && about.onMark(area.id, at)}
          />
          {scene.areas.length > 0 && (
            <Choice
              label="Mark an area: choose it, then press the picture"
              value={area?.id}
              onChoose={setAreaId}
              options={scene.areas.slice(0, 7).map(({ id, name }) => ({ value: id, name: name || "Subject" }))}
            />
          )}
        </>
      )}
      {light === "red" ? (
        <p className="small">A photograph is taken or picked by day: the camera's own pages are not red.</p>
      ) : (
        <div className="Camera-ReadingFields-acts">
          <Picked words="Take a photograph" capture onPicked={about.onPicked} />
          <Picked words="Pick a photograph" onPicked={about.onPicked} />
          {scene.photograph !== undefined && <Button onPress={about.onPhotographAway}>Take it away</Button>}
          {area !== undefined && scene.marks?.some((mark) => mark.areaId === area.id) && (
            <Button onPress={() => about.onMark(area.id, undefined)}>Take its mark away</Button>
          )}
        </div>
      )}
      <p className="small soft" role="status">
        {about.photographSaid}
      </p>
    </div>
  );
}

function Picked(props: {
  readonly words: string;
  readonly capture?: boolean;
  readonly onPicked: (file: Blob) => Promise<void>;
}) {
  const id = useId();
  const onChange = (event: ChangeEvent<HTMLInputElement>) => {
    const [file] = event.currentTarget.files ?? [];
    event.currentTarget.value = "";
    if (file !== undefined) void props.onPicked(file);
  };
  return (
    <span className="Camera-Photograph-pick">
      <input
        id={id}
        type="file"
        accept="image/*"
        {...(props.capture === true && { capture: "environment" as const })}
        onChange={onChange}
      />
      <label className="Kit-Button" htmlFor={id}>
        {props.words}
      </label>
    </span>
  );
}
