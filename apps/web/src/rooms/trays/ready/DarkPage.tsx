import { useEffect, useRef } from "react";
import { Caution } from "../../../kit/Caution.tsx";
import { darkList } from "../../../kit/darkList.ts";
import { goTo } from "../../../kit/goTo.ts";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { Word } from "../../../kit/Word.tsx";
import { turnLight, useLight } from "../../../look/light.ts";
import { useReady } from "./useReady.ts";
import "./Ready.css";

/** The list before the lights go out, in red already; held for two seconds, the run begins. */
export default function DarkPage() {
  const ready = useReady();
  const light = useLight();
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = "Before the lights go out. Cap & Tray";
    turnLight({ to: "red" }); // also where somebody came here by its address
  }, []);
  useEffect(() => {
    if (light === "red") head.current?.focus();
  }, [light]);
  if (light !== "red") return null;
  const { view, draft, put } = ready;
  const { recipe, lanes, waits } = view;
  const first = recipe?.steps?.[0]?.name ?? "first bath";
  const back = () => {
    turnLight({ to: "day" });
    goTo({ path: "/trays/ready" });
  };
  const turn = (place: number) => {
    const ticks = draft.ticks.includes(place) ? draft.ticks.filter((one) => one !== place) : [...draft.ticks, place];
    put({ ...draft, ticks });
  };
  const seenTo = darkList.filter((_, place) => draft.ticks.includes(place)).length;
  return (
    <div className="Trays-Dark">
      <p className="Trays-Dark-top">
        <b>
          {lanes.length === 0
            ? "No sheet chosen"
            : `${lanes.map(({ code }) => code).join(", ")}, ${recipe?.name ?? ""}`}
        </b>
        <span>
          {seenTo} of {darkList.length}
        </span>
      </p>
      <h1 ref={head} tabIndex={-1}>
        Before the lights go out
      </h1>
      <ul>
        {darkList.map(([what, why], place) => (
          <li key={what}>
            <label className="Trays-Check">
              <input type="checkbox" checked={draft.ticks.includes(place)} onChange={() => turn(place)} />
              <span>
                <b>{what}</b>
                <span>{place === darkList.length - 1 ? "half a metre off; awake is held by the page" : why}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <Caution stuff="Mains and wet hands.">
        Lamp and leads out of reach of splashes; switch with a dry hand or the foot. <b>Chemistry:</b> gloves, goggles,
        air moving. Boxes shut. The supplier’s safety sheet comes first.
      </Caution>
      {waits === undefined ? (
        <div className="Trays-Dark-begin" onPointerDown={ready.wakeSound}>
          <HoldPress className="Trays-Dark-hold" onHeld={ready.begin}>
            <b>Lights are out</b>
            <span>hold for 2 s; {first} starts at the first press</span>
          </HoldPress>
        </div>
      ) : (
        <p className="Trays-Dark-waits">It cannot begin: {waits}.</p>
      )}
      {ready.failed && <p role="alert">This machine would not keep the run. Free some room on it, and hold again.</p>}
      <div className="Trays-Dark-back">
        <Word onPress={back}>Not yet: back to daylight</Word>
      </div>
    </div>
  );
}
