import { dayDrawing } from "@captray/drawings/scene";
import type { Hours } from "@captray/notebook/answers";
import { readTime } from "@captray/science/notation";
import { useState } from "react";
import { whereHere } from "../../../devices/whereHere.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { Field } from "../../../kit/Field.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useRoomFor } from "../../../kit/useRoomFor.ts";
import { useSettled } from "../../../kit/useSettled.ts";
import { faces, hourLacks, skies, timeTyped, today, withFace } from "./hourForm.ts";
import { hourWords, readDegrees } from "./lightWords.ts";
import type { LightState } from "./useLight.ts";

/** The hour of the day: where, which day and sky, and between which cap times; answered as a drawing of the day. */
export function LightHours({ state }: { readonly state: LightState }) {
  const { scene, hours, lengthUnit } = state;
  const lacks = hourLacks(hours, lengthUnit);
  return (
    <Section head="The hour of the day" aside="by sun and sky, without the meter">
      <Site state={state} />
      <Day state={state} />
      <Wanted state={state} />
      {lacks !== undefined && <p className="say">{lacks}</p>}
      {hours.kind === "hours" && (
        <Answer hours={hours} leastS={scene.timeWanted?.leastS?.value} mostS={scene.timeWanted?.mostS?.value} />
      )}
      {hours.kind === "noSun" && (
        <ProblemNote head="No hour that day">
          The sun stays below the horizon, or so near it that no daylight can be reckoned.
        </ProblemNote>
      )}
    </Section>
  );
}

function Answer(props: {
  readonly hours: Hours;
  readonly leastS: number | undefined;
  readonly mostS: number | undefined;
}) {
  const { hours, leastS, mostS } = props;
  const [room, letterPx, place] = useRoomFor();
  const words = hourWords(props);
  return (
    <>
      {hours.noHour === undefined ? (
        <div role="status">
          <h3>{words.head}</h3>
          <p className="say">{words.say}</p>
        </div>
      ) : (
        <ProblemNote head={words.head}>{words.say}</ProblemNote>
      )}
      <div ref={place} className="Camera-Sharp-scale">
        {room > 0 && (
          <Drawing
            drawing={dayDrawing({ widthPx: room, letterPx, moments: hours.moments, spans: hours.spans, leastS, mostS })}
          />
        )}
      </div>
      <p className="small soft">
        Cap time over the hours of this device's clock. Hatching: the doubt, nine in ten. Broken line: the time wanted.
        Bar: the hours that give it.
      </p>
    </>
  );
}

function Site({ state }: { readonly state: LightState }) {
  const { scene, onSite } = state;
  const [asked, setAsked] = useState<string | undefined>(undefined);
  const kept = (value: number | undefined) => (value === undefined ? "" : String(Number(value.toFixed(3))));
  const [north, onNorth] = useSettled(kept(scene.site?.latitudeDeg), (text) => keep(text, east));
  const [east, onEast] = useSettled(kept(scene.site?.longitudeEastDeg), (text) => keep(north, text));
  function keep(latitude: string, longitude: string): void {
    const [lat, lon] = [readDegrees(latitude, "latitude"), readDegrees(longitude, "longitude")];
    if (lat.kind === "read" && lon.kind === "read") onSite({ latitudeDeg: lat.value, longitudeEastDeg: lon.value });
  }
  return (
    <>
      <div className="Camera-ReadingFields-figures">
        <Field
          label="Latitude"
          text={north}
          onText={onNorth}
          read={(text) => readDegrees(text, "latitude")}
          kind="ev"
          signs={7}
          hint="52.4"
          below
        />
        <Field
          label="Longitude"
          text={east}
          onText={onEast}
          read={(text) => readDegrees(text, "longitude")}
          kind="ev"
          signs={7}
          hint="−3.1"
          below
        />
        <Button
          onPress={() => {
            setAsked("Asking this device …");
            void whereHere().then((found) => {
              setAsked(found.kind === "here" ? undefined : found.say);
              if (found.kind === "here") onSite(found.site);
            });
          }}
        >
          Where I stand
        </Button>
      </div>
      <p className="small soft" role="status">
        {asked ?? "A degree is near enough. It stays in this notebook and goes nowhere."}
      </p>
    </>
  );
}

function Day({ state }: { readonly state: LightState }) {
  const { scene, onDaylight } = state;
  const said = scene.daylight ?? { day: today(), sky: "clear" as const };
  const [day, onDay] = useSettled(scene.daylight?.day ?? "", (text) => {
    if (/^\d{4}-\d{2}-\d{2}$/.test(text)) onDaylight({ ...said, day: text });
  });
  return (
    <>
      <label className="Kit-PlainField Camera-Light-day">
        <span>
          Day <small className="soft">year-month-day</small>
        </span>
        <input
          value={day}
          placeholder={today()}
          inputMode="numeric"
          autoComplete="off"
          maxLength={10}
          onChange={(event) => onDay(event.currentTarget.value)}
        />
      </label>
      {scene.daylight === undefined && (
        <div className="Camera-ReadingFields-acts">
          <Button onPress={() => onDaylight(said)}>Today, under a clear sky</Button>
        </div>
      )}
      <Choice
        label="The sky"
        value={scene.daylight?.sky}
        onChoose={(sky) => onDaylight({ ...said, sky })}
        options={skies}
      />
      <Choice
        label="The subject"
        value={faces.find(({ facesDeg }) => facesDeg === scene.daylight?.facesDeg)?.value}
        onChoose={(face) => onDaylight(withFace(said, face))}
        options={faces}
      />
      {scene.daylight?.facesDeg !== undefined && (
        <Choice
          label="The ground before it"
          value={scene.daylight.snow === true ? "snow" : "bare"}
          onChoose={(ground) => onDaylight({ ...said, snow: ground === "snow" })}
          options={[
            { value: "bare", name: "bare" },
            { value: "snow", name: "snow" },
          ]}
        />
      )}
    </>
  );
}

function Wanted({ state }: { readonly state: LightState }) {
  const { scene, onTimeWanted } = state;
  const wanted = scene.timeWanted;
  const [least, onLeast] = useSettled(wanted?.leastS?.text ?? "", (text) => onTimeWanted(timeTyped(text, most)));
  const [most, onMost] = useSettled(wanted?.mostS?.text ?? "", (text) => onTimeWanted(timeTyped(least, text)));
  const read = (text: string) => readTime({ text });
  return (
    <div className="Camera-ReadingFields-figures">
      <Field
        label="Cap time at least"
        text={least}
        onText={onLeast}
        read={read}
        kind="time"
        after="s"
        signs={6}
        hint="4"
        below
      />
      <Field
        label="Cap time at most"
        text={most}
        onText={onMost}
        read={read}
        kind="time"
        after="s"
        signs={6}
        hint="any"
        below
      />
    </div>
  );
}
