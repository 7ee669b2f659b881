import { useEffect, useRef, useState } from "react";
import { pageDevices } from "../../../devices/pageDevices.ts";
import { clockAt, type RunClock } from "./runClock.ts";
import type { TrayCue } from "./runCues.ts";
import type { RunSettings } from "./runSettings.ts";

const { clock: pageClock, sound, shaker, speaker } = pageDevices();

/** Sets cues ahead on the audio clock, and says and shakes them as they fall due. Gives the last that was said. */
export function useRunCues({
  cues,
  clock,
  sounds,
  settings,
}: {
  readonly cues: readonly TrayCue[];
  readonly clock: { readonly current: RunClock };
  readonly sounds: boolean;
  readonly settings: RunSettings;
}): string {
  const [said, setSaid] = useState("");
  const cueKey = JSON.stringify(cues.map(({ atS, kind, says }) => [Math.round(atS * 1000), kind, says]));
  const sounding = useRef<readonly TrayCue[]>([]);
  sounding.current = cues;
  const dropsOnly = useDropsOnly(cueKey);
  useEffect(() => {
    const all = sounding.current;
    if (dropsOnly.length === 0 || all.length === 0) return;
    const stop = sound.run({
      zeroMs: pageClock.nowMs() - clockAt({ clock: clock.current, pageMs: performance.now() }),
      cues: all,
      audible: sounds && settings.tones,
      onCue: (cue) => {
        const { kind, says } = cue as TrayCue;
        if (settings.shakes) shaker.shake(kind);
        if (settings.voice && kind !== "rock" && speaker.state() === "voice") speaker.say(says);
        setSaid(says);
      },
    });
    return () => {
      stop();
      shaker.still();
    };
  }, [dropsOnly, clock, sounds, settings]);
  useEffect(() => () => speaker.hush(), []);
  return said;
}

/** The cues as text, anew only when something was added or moved: those that have sounded drop out by themselves. */
function useDropsOnly(cueKey: string): string {
  const held = useRef("[]");
  const was = JSON.parse(held.current) as readonly unknown[];
  const is = JSON.parse(cueKey) as readonly unknown[];
  const tail = was.slice(was.length - is.length);
  if (is.length > was.length || JSON.stringify(tail) !== cueKey) held.current = cueKey;
  return held.current;
}
