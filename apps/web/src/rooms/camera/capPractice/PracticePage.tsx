import { useId, useState } from "react";
import { BigPress } from "../../../kit/BigPress.tsx";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { OpeningsDrawn } from "./OpeningsDrawn.tsx";
import { openingsDrawing } from "./openingsDrawing.ts";
import { drawnWords, handName, saidWords, usedWords } from "./practiceWords.ts";
import { type PracticeInHand, usePractice } from "./usePractice.ts";
import "./PracticePage.css";

/** Cap practice: one opening after the other, each measured from press to press. The id names a hand. */
export default function PracticePage({ id }: { readonly id: string }) {
  const practice = usePractice({ handId: id });
  return (
    <Page title="Cap practice" closeTo="/camera">
      <div className="Camera-Practice">
        <div>
          <Pressing practice={practice} />
          <HowPractised practice={practice} />
        </div>
        <div>
          <HandKnown practice={practice} />
          <Openings practice={practice} />
        </div>
      </div>
    </Page>
  );
}

function Pressing({ practice }: { readonly practice: PracticeInHand }) {
  const { state, nowMs, way, wantedS } = practice;
  const id = useId();
  const off = state.openedMs !== null;
  const openS = state.openedMs === null ? 0 : Math.max(0, (nowMs - state.openedMs) / 1000);
  const ticks = way.way === "ticks";
  const figure = off && ticks ? Math.floor(openS) : wantedS;
  const press = off ? "Press as the cap goes on" : "Press as the cap comes off";
  const until = ticks ? `cap on at tick ${wantedS}` : `count ${wantedS} in your head`;
  return (
    <div className="Camera-Practice-press" data-ground={off ? "light" : "dark"}>
      <BigPress
        className="Camera-Practice-big"
        main
        means={off ? "off" : "on"}
        instant
        onPress={practice.press}
        describedBy={id}
      >
        <span className="Camera-Practice-words">
          <b>{off ? "Cap off" : "Cap on"}</b>
          <span>{until}</span>
        </span>
        <span className="Camera-Practice-figure" aria-hidden="true">
          {figure}
        </span>
        <b>{press}</b>
      </BigPress>
      <p id={id} className="Camera-Practice-said" role="status">
        {off
          ? ticks
            ? "The ticks began with your press."
            : "Nothing counts along."
          : saidWords(state.said) || "Anywhere here, or any key: a pedal too."}
      </p>
    </div>
  );
}

function HowPractised({ practice }: { readonly practice: PracticeInHand }) {
  const { hands, hand, way } = practice;
  const [name, setName] = useSettled(hand?.name ?? "", practice.name);
  const [naming, setNaming] = useState(false);
  return (
    <Section head="How it is done">
      <Choice
        label="With what"
        value={way.by}
        onChoose={(by) => practice.setWay({ by })}
        options={[
          { value: "cap", name: "with the cap", detail: "on the camera, as at an exposure" },
          { value: "touch", name: "by touch", detail: "here, without a camera" },
        ]}
      />
      <Choice
        label="What the hand goes by"
        value={way.way}
        onChoose={(chosen) => practice.setWay({ way: chosen })}
        options={[
          { value: "ticks", name: "to the ticks", detail: "heard, felt and seen" },
          { value: "counted", name: "counted in your head", detail: "silent once the cap is off" },
        ]}
      />
      <p className="small soft">These four are kept apart: each has a bias and an evenness of its own.</p>
      {hands.length > 1 && (
        <Choice
          label="Whose hand"
          value={hand?.id}
          onChoose={practice.choose}
          options={hands.slice(0, 7).map((one, place) => ({ value: one.id, name: handName(one.name, place) }))}
        />
      )}
      {hand !== undefined && (
        <div className="Camera-Practice-hands">
          {naming ? (
            <PlainField label="Its name" text={name} onText={setName} hint="the hand that helps" />
          ) : (
            <Button onPress={() => setNaming(true)}>Name this hand</Button>
          )}
          <Button
            onPress={() => {
              practice.another();
              setNaming(true);
            }}
          >
            Another hand
          </Button>
        </div>
      )}
    </Section>
  );
}

function HandKnown({ practice }: { readonly practice: PracticeInHand }) {
  const { of, way, hand } = practice;
  const { found } = of;
  const before = way.way === "ticks" ? hand?.toTicks : hand?.counted;
  const atEightS = Math.hypot(found.motorSdS, 8 * found.weber);
  return (
    <Section head="What is known of it" aside="± holds nine in ten">
      <p className="say">
        {of.counted === 0 && before !== undefined
          ? `${before.openings} openings are known from before, and the ledger goes by them. These here take their place once they are more.`
          : usedWords(of, way)}
      </p>
      {of.counted === 0 ? (
        <NothingYet>
          Each opening stands here as a dot, left of the wanted line when it was too short and right of it when too
          long. From them come the bias, the counted second and how even the hand is.
        </NothingYet>
      ) : (
        <>
          <OpeningsDrawn drawing={openingsDrawing(of)} says={drawnWords(of, way.way)} />
          <p className="small soft">
            Seconds too short and too long. A dot is an opening, a cross one struck out, a bracket where nine in ten of
            the next ones lie.
          </p>
          <dl className="Camera-Practice-facts">
            <div>
              <dt>Bias, + is too long</dt>
              <dd>
                <Estimate value={found.biasS.value} sd={found.biasS.sd} of="other" signed unit="s" />
              </dd>
            </div>
            {way.way === "counted" && (
              <div>
                <dt>One counted second</dt>
                <dd>
                  <Estimate value={found.rate.value} sd={found.rate.sd} of="other" unit="s" />
                </dd>
              </div>
            )}
            <div>
              <dt>Spread of an opening of 8 s</dt>
              <dd>
                ±{(1.645 * atEightS).toFixed(2)} s, {(1.645 * (atEightS / (8 * Math.LN2))).toFixed(2)} stop
              </dd>
            </div>
            <div>
              <dt>Unevenness, before practice 1</dt>
              <dd>
                {found.unevenness.value.toFixed(1)}, {found.unevenness.least.toFixed(1)} to{" "}
                {found.unevenness.most.toFixed(1)}
              </dd>
            </div>
          </dl>
        </>
      )}
    </Section>
  );
}

function Openings({ practice }: { readonly practice: PracticeInHand }) {
  const { openings } = practice.of;
  const [all, setAll] = useState(false);
  if (openings.length === 0) return null;
  const newest = openings.map((one, place) => ({ ...one, place })).reverse();
  const shown = all ? newest : newest.slice(0, 8);
  return (
    <Section head="Openings" aside="strike a miss out">
      <ul className="Camera-Practice-openings">
        {shown.map(({ place, wantedS, givenS, struckOut = false }) => (
          <li key={place} data-struck={struckOut || undefined}>
            <span>
              <b>{givenS.toFixed(2)} s</b> of {wantedS} s{struckOut && ", struck out"}
            </span>
            <Word
              onPress={() => practice.strikeOut(place, !struckOut)}
              spoken={`${struckOut ? "Count" : "Strike out"} opening ${place + 1}, ${givenS.toFixed(2)} of ${wantedS} seconds`}
            >
              {struckOut ? "Count it" : "Strike out"}
            </Word>
          </li>
        ))}
      </ul>
      {newest.length > shown.length && <Word onPress={() => setAll(true)}>All {newest.length} openings</Word>}
    </Section>
  );
}
