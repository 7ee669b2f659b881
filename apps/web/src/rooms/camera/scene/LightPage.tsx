import { readLength } from "@captray/science/notation";
import { useState } from "react";
import { Caution } from "../../../kit/Caution.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { LightHours } from "./LightHours.tsx";
import { lampWords } from "./lampWords.ts";
import { costWords, lightName } from "./lightWords.ts";
import { type LightState, useLightOfScene } from "./useLight.ts";
import "./Light.css";

/** The light of a scene: what the meter misjudges for this paper, a lamp moved, and the hour of the day. */
export default function LightPage({ id }: { readonly id: string }) {
  const state = useLightOfScene({ sceneId: id });
  if (state === undefined) {
    return (
      <Page title="Light">
        <NothingYet way={<Word to="/camera">To the camera</Word>}>This scene is not in the notebook.</NothingYet>
      </Page>
    );
  }
  return (
    <Page title="Light" closeTo={`/camera/${id}`}>
      <div className="Camera-Light">
        <div>
          <Colour state={state} />
          <LampMove state={state} />
        </div>
        <div>
          <LightHours state={state} />
        </div>
      </div>
    </Page>
  );
}

const papers = {
  blue: "a blue-sensitive paper of unknown make",
  chloride: "a chloride paper",
  chlorobromide: "a chlorobromide paper",
  bromide: "a bromide paper",
  orthochromatic: "an orthochromatic paper",
  variableContrast: "a variable-contrast paper",
} as const;

function Colour({ state }: { readonly state: LightState }) {
  const { light, offered, scene, onLight } = state;
  const cost = (source: string) => light.lights.find((one) => one.source === source);
  const options = offered
    .filter(({ source }) => cost(source) !== undefined)
    .map(({ source, name, lampId }) => ({ value: lampId ?? source, name, detail: costWords(cost(source)) }));
  const chosen = scene.light?.lampId ?? scene.light?.source;
  const now = cost(light.source);
  return (
    <Section head="Colour of the light" aside="stops of time, nine in ten">
      <p className="say">
        A meter sees as the eye does, {papers[light.sensitivity]} sees little but blue.{" "}
        {light.thenSource === undefined
          ? "An index that was told or guessed is taken to be for daylight; another light asks for this much more or less."
          : `The index of this box was found under ${lightName(light.thenSource, offered)}; only the change from that counts.`}
      </p>
      <Choice
        label={light.supposed ? "The light on the subject (nobody said: supposed)" : "The light on the subject"}
        value={chosen}
        onChoose={(value) => {
          const one = offered.find(({ source, lampId }) => (lampId ?? source) === value);
          if (one !== undefined) onLight(one.source, one.lampId);
        }}
        options={options}
      />
      {now?.stops === undefined && now?.atLeastStops !== undefined && (
        <p className="say">
          This paper hardly sees that light: more than {now.atLeastStops.toFixed(0)} stops beyond the meter, and no
          figure to trust. Take a filament lamp, or a step test with this one.
        </p>
      )}
      <p className="small soft">
        Plus is more time than the meter says. White LEDs differ by their blue; a violet-pumped or three-coloured one
        may be off by stops: a step test tells.
      </p>
    </Section>
  );
}

function LampMove({ state }: { readonly state: LightState }) {
  const { scene, lengthUnit, onLampDistance, plan } = state;
  const [from, onFrom] = useSettled(scene.lampDistanceMm?.text ?? "", (text) => {
    const read = readLength({ text });
    if (read.kind === "read" && read.value > 0) onLampDistance({ value: read.value, text: text.trim().slice(0, 60) });
  });
  const [to, setTo] = useState("");
  const [radius, setRadius] = useState("");
  const length = (text: string) => readLength({ text });
  return (
    <Section head="A lamp moved" aside="the square of its distance">
      <div className="Camera-ReadingFields-figures">
        <Field
          label="It stands at"
          text={from}
          onText={onFrom}
          read={length}
          kind="mm"
          after="mm"
          signs={6}
          hint="1.5 m"
          below
        />
        <Field
          label="Moved to"
          text={to}
          onText={setTo}
          read={length}
          kind="mm"
          after="mm"
          signs={6}
          hint="2 m"
          below
        />
        <Field
          label="Half its width, if large"
          text={radius}
          onText={setRadius}
          read={length}
          kind="mm"
          after="mm"
          signs={5}
          hint="0"
          below
        />
      </div>
      <p className="say" aria-live="polite">
        {lampWords({ from, to, radius, plan, lengthUnit })}
      </p>
      <p className="small soft">
        From the lamp to the subject. Light that walls and snow throw back does not follow; read again once it stands.
      </p>
      <Caution stuff="Mains and hot lamps.">
        Switch off and let it cool before you move one; leads and lamps out of reach of wet hands, snow and anything
        that burns. The maker's own rules and those of the place come first.
      </Caution>
    </Section>
  );
}
