import { useEffect, useRef, useState } from "react";
import { BeforeDaylight } from "../../../kit/BeforeDaylight.tsx";
import { Button } from "../../../kit/Button.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { turnLight } from "../../../look/light.ts";
import type { RunAtHand } from "./useRun.ts";

/** What can be the matter, in words short enough for the dark. */
const troubles = [
  "dropped or scratched",
  "into the wrong bath",
  "floated, not covered",
  "light came on",
  "bath spent or spilt",
] as const;

/** Trouble: pause, what was the matter, the thermometer, the light, sound, and the way out of the run. */
export function RunTrouble({ at, onBack }: { readonly at: RunAtHand; readonly onBack: () => void }) {
  const [asks, setAsks] = useState<"daylight" | "leave">();
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  const { view, settings, set, thermometer } = at;
  if (asks === "daylight") {
    return (
      <BeforeDaylight
        fogs={at.fogs}
        onBack={() => setAsks(undefined)}
        onGoOn={() => {
          turnLight({ to: "day" });
          onBack();
        }}
      />
    );
  }
  if (asks === "leave") {
    return (
      <div className="Trays-Menu">
        <header className="Trays-Run-top">
          <h1>Leave the run?</h1>
        </header>
        <p className="say">
          What was done so far is kept. The sheets that are still in a bath count as taken out now; their run is marked
          as left early.
        </p>
        <div className="Trays-Menu-words">
          <Button big wide main onPress={() => setAsks(undefined)}>
            Stay with it
          </Button>
        </div>
        <HoldPress
          className="Trays-Run-foot"
          onHeld={() => {
            at.leave();
            goTo({ path: "/trays" });
          }}
        >
          <span>
            <b>Hold for 2 s:</b> <b>the run ends here</b>
          </span>
        </HoldPress>
      </div>
    );
  }
  return (
    <div className="Trays-Trouble">
      <header className="Trays-Run-top">
        <h1 ref={head} tabIndex={-1}>
          Trouble
        </h1>
        <b className="Trays-Run-figure">{view.figure}</b>
      </header>
      <div className="Trays-Trouble-ways">
        <Button big wide main onPress={onBack}>
          Back to the trays
        </Button>
        <Button
          big
          wide
          aside="no cues; the baths go on working"
          onPress={() => {
            at.say(view.paused ? "resume" : "pause");
            onBack();
          }}
        >
          {view.paused ? "Go on" : "Pause"}
        </Button>
        <section aria-labelledby="Trays-what">
          <h2 id="Trays-what">What was the matter</h2>
          {troubles.map((words) => (
            <Button
              key={words}
              big
              wide
              onPress={() => {
                at.trouble(words);
                onBack();
              }}
            >
              {words}
            </Button>
          ))}
        </section>
        {thermometer !== null && (
          <section aria-labelledby="Trays-thermo">
            <h2 id="Trays-thermo">The thermometer now, in {thermometer.bath}</h2>
            <div className="Trays-Step">
              <Button big spoken="colder" onPress={() => thermometer.step(-1)}>
                −
              </Button>
              <b>{thermometer.words}</b>
              <Button big spoken="warmer" onPress={() => thermometer.step(1)}>
                +
              </Button>
            </div>
            {thermometer.changed && (
              <Button big wide onPress={thermometer.keep}>
                Keep {thermometer.words}: the times follow
              </Button>
            )}
          </section>
        )}
        <section aria-labelledby="Trays-cues">
          <h2 id="Trays-cues">Cues</h2>
          <Switch on={at.waits} words="Wait for me" onPress={() => at.say(at.waits ? "waitOff" : "waitOn")} />
          <Switch
            on={settings.voice}
            words="Voice"
            aside={at.voiceWords}
            onPress={() => set({ ...settings, voice: !settings.voice })}
          />
          <Switch
            on={settings.tones}
            words="Tones"
            aside={at.soundWords}
            onPress={() => set({ ...settings, tones: !settings.tones })}
          />
          <Switch
            on={settings.shakes}
            words="Shakes"
            aside={at.shakeWords}
            onPress={() => set({ ...settings, shakes: !settings.shakes })}
          />
        </section>
        <section aria-labelledby="Trays-screen">
          <h2 id="Trays-screen">This screen</h2>
          <p>{at.wakeWords}</p>
          {at.fullScreen !== null && (
            <Button big wide onPress={at.fullScreen.turn}>
              {at.fullScreen.on ? "Leave full screen" : "Full screen"}
            </Button>
          )}
          <Button big wide onPress={() => setAsks("daylight")}>
            Out of red light
          </Button>
        </section>
        <section aria-labelledby="Trays-out">
          <h2 id="Trays-out">The way out</h2>
          <Button big wide onPress={() => setAsks("leave")}>
            Leave the run
          </Button>
        </section>
      </div>
    </div>
  );
}

function Switch({
  on,
  words,
  aside,
  onPress,
}: {
  readonly on: boolean;
  readonly words: string;
  readonly aside?: string | undefined;
  readonly onPress: () => void;
}) {
  const more = aside === undefined || !on ? (on ? "on" : "off") : `on; ${aside}`;
  return (
    <Button big wide aside={more} onPress={onPress}>
      {words}
    </Button>
  );
}
