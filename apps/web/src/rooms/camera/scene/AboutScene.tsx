import { useState } from "react";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useDesk } from "../../../kit/useDesk.ts";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { Photograph } from "./Photograph.tsx";
import { useAboutScene } from "./useAboutScene.ts";

/** What the scene is of, where, at which hour, and how it looks to the phone. */
export function AboutScene({ sceneId }: { readonly sceneId: string }) {
  const about = useAboutScene({ sceneId });
  const desk = useDesk(); // there it stands over the readings
  const [open, setOpen] = useState(about.scene?.subject === "");
  const { scene, onSubject, onWhere, onHour } = about;
  if (scene === undefined) return null;
  const words = [scene.where, scene.hourWanted].filter((one) => one !== undefined && one !== "").join(", ");
  return (
    <Section head="The scene" aside={words}>
      <Settled label="What it is a picture of" stored={scene.subject} write={onSubject} hint="upturned skiff" />
      {open && (
        <>
          <Settled label="Where" stored={scene.where ?? ""} write={onWhere} hint="on the slip, shed behind" />
          <Settled
            label="The hour wanted"
            stored={scene.hourWanted ?? ""}
            write={onHour}
            hint="when the sun clears the shed"
            most={60}
          />
        </>
      )}
      {(open || (scene.photograph !== undefined && !desk)) && <Photograph about={about} scene={scene} />}
      <div className="Camera-Words">
        <Word onPress={() => setOpen(!open)}>{open ? "Fold it" : "Where, when, a photograph"}</Word>
        <Word to={`/camera/light/${sceneId}`}>Light and hour of the day</Word>
        <Word to={`/camera/card/${sceneId}`}>Field card</Word>
      </div>
    </Section>
  );
}

function Settled(props: {
  readonly label: string;
  readonly stored: string;
  readonly write: (text: string) => void;
  readonly hint: string;
  readonly most?: number;
}) {
  const [text, onText] = useSettled(props.stored, props.write);
  return <PlainField label={props.label} text={text} onText={onText} hint={props.hint} most={props.most ?? 120} />;
}
