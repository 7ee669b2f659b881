/** What the benchmark of the cues does inside the browser; `cueJitter.ts` builds it, serves it and asks it. */

import { createClock } from "../apps/web/src/devices/clock.ts";
import { type Cue, createSoundClock } from "../apps/web/src/devices/soundClock.ts";
import { yardstick } from "./yardstick.ts";

/** Tells when sound begins after at least 20 ms of silence, on the audio clock itself. */
const listener = `registerProcessor("onsets", class extends AudioWorkletProcessor {
  process(inputs) {
    const samples = inputs[0][0];
    if (samples) for (let i = 0; i < samples.length; i++) {
      if (Math.abs(samples[i]) < 0.004) continue;
      const at = (currentFrame + i) / sampleRate;
      if (this.last === undefined || at - this.last > 0.02) this.port.postMessage(at);
      this.last = at;
    }
    return true;
  }
});`;

/** Sounds a row of cues while the page has work to do, and gives how far each onset lies from its place, in ms. */
async function jitter(count: number, everyS: number): Promise<readonly number[]> {
  const context = new AudioContext();
  await context.audioWorklet.addModule(URL.createObjectURL(new Blob([listener], { type: "text/javascript" })));
  const ear = new AudioWorkletNode(context, "onsets");
  const heard: number[] = [];
  ear.port.onmessage = ({ data }) => heard.push(data as number);
  ear.connect(context.destination);
  const clock = createClock();
  const sound = createSoundClock({ clock, makeContext: () => context, outOf: () => ear });
  await sound.wake();
  const cues = Array.from({ length: count }, (_, place): Cue => ({ atS: (place + 1) * everyS, kind: "tick" }));
  const stop = sound.run({ zeroMs: clock.nowMs() - 100, cues, audible: true });
  // Drawing and keeping, as the page of a run has it: 60 ms of work four times a second.
  const work = setInterval(() => {
    const untilMs = performance.now() + 60;
    while (performance.now() < untilMs);
  }, 250);
  await new Promise((over) => setTimeout(over, (count * everyS + 0.6) * 1000));
  clearInterval(work);
  stop();
  await context.close();
  const [first = 0] = heard;
  return heard.map((at, place) => Math.abs(at - first - place * everyS) * 1000);
}

function loopMs(): number {
  const startMs = performance.now();
  yardstick();
  return performance.now() - startMs;
}

export type CueBench = { readonly jitter: typeof jitter; readonly loopMs: typeof loopMs };
Object.assign(globalThis, { bench: { jitter, loopMs } satisfies CueBench });
