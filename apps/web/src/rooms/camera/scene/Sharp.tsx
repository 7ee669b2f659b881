import { distanceScale } from "@captray/drawings/scene";
import { readLength } from "@captray/science/notation";
import { useState } from "react";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { Field } from "../../../kit/Field.tsx";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { sharpLacks, sharpWords } from "./sharpWords.ts";
import { type SetUpState, useSetUp } from "./useSetUp.ts";
import "./Focus.css";

/** From where to where it is sharp at the taking stop, on a scale of distance, and what the sheet loses. */
export function Sharp({ sceneId }: { readonly sceneId: string }) {
  const setUp = useSetUp({ sceneId });
  const [room, letterPx, place] = useRoomFor();
  const [open, setOpen] = useState(false);
  if (setUp === undefined) return null;
  const { sharp, lengthUnit } = setUp;
  const lacks = sharpLacks(sharp, lengthUnit);
  if (sharp.kind !== "sharp") return <p className="small soft Camera-Sharp">{lacks}</p>;
  const words = sharpWords({ sharp, lengthUnit });
  const { nearMm, farMm, focusMm } = sharp;
  return (
    <div className="Camera-Sharp">
      <p>
        <b>{words.head}</b> {words.at}
      </p>
      <div ref={place} className="Camera-Sharp-scale">
        {room > 0 && (
          <Drawing
            drawing={distanceScale({
              widthPx: room,
              letterPx,
              nearMm: nearMm.value,
              farMm: farMm?.value ?? null,
              focusMm,
              lengthUnit,
            })}
          />
        )}
      </div>
      <p className="small soft">{words.below}</p>
      <Word onPress={() => setOpen(!open)}>What counts as sharp</Word>
      {open && <Confusion setUp={setUp} />}
    </div>
  );
}

const standards = [
  { value: "format", name: "looked at as a whole", detail: "diagonal by 1500" },
  { value: "inTheHand", name: "a contact print in the hand", detail: "0.2 mm" },
  { value: "typed", name: "a disc of my own", detail: "in mm" },
] as const;

function Confusion({ setUp }: { readonly setUp: SetUpState }) {
  const { scene, onConfusion } = setUp;
  const kept = scene.confusion;
  const [by, setBy] = useState(kept?.by ?? "format");
  const [text, onText] = useSettled(kept?.by === "typed" ? (kept.confusionMm.text ?? "") : "", (typed) => {
    const read = readLength({ text: typed });
    if (read.kind === "read" && read.value >= 0.001 && read.value <= 20)
      onConfusion({ by: "typed", confusionMm: { value: read.value, text: typed.trim() } });
  });
  return (
    <>
      <Choice
        label="The widest disc that passes for a point"
        value={by}
        onChoose={(chosen) => {
          setBy(chosen);
          if (chosen !== "typed") onConfusion({ by: chosen });
        }}
        options={standards}
      />
      {by === "typed" && (
        <Field
          label="Disc on the paper"
          text={text}
          onText={onText}
          read={(typed) => readLength({ text: typed })}
          kind="mm"
          after="mm"
          signs={6}
          hint="0.1"
        />
      )}
    </>
  );
}
