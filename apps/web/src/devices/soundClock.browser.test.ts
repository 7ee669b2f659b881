import { describe, expect, test } from "vitest";
import { createClock } from "./clock.ts";
import { type CueKind, setCue } from "./cueSounds.ts";
import { type Cue, createSoundClock } from "./soundClock.ts";

/** Times at which sound begins after at least 20 ms of silence, in seconds. */
function onsets(samples: Float32Array, rate: number): number[] {
  const found: number[] = [];
  let quietSince = -rate;
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs(samples[i] ?? 0) < 0.004) continue;
    if (i - quietSince > 0.02 * rate) found.push(i / rate);
    quietSince = i;
  }
  return found;
}

describe("setCue", () => {
  test("a cue sounds within 1 ms of the time it was set for, over 30 s [measured: OfflineAudioContext]", async () => {
    const rate = 48_000;
    const context = new OfflineAudioContext(1, 31 * rate, rate);
    const wanted = [0.05, 1, 2, 5.333, 12.6, 29.999];
    for (const atS of wanted) setCue({ context, out: context.destination, kind: "tick", atS });
    const heard = onsets((await context.startRendering()).getChannelData(0), rate);
    expect(heard).toHaveLength(wanted.length);
    // ±1 ms: the tone rises over 2 ms and counts as heard at a hundredth of its loudness.
    for (const [i, atS] of wanted.entries()) expect(Math.abs((heard[i] ?? 0) - atS)).toBeLessThan(0.001);
  });

  test.each<[CueKind, number]>([
    ["countIn", 1],
    ["capOff", 1],
    ["tick", 1],
    ["fifth", 1],
    ["end", 3],
    ["rock", 1],
    ["lift", 2],
    ["change", 4],
  ])("%s can be told by ear: %i sounds with a pause between", async (kind, count) => {
    const context = new OfflineAudioContext(1, 48_000, 48_000);
    setCue({ context, out: context.destination, kind, atS: 0.01 });
    const samples = (await context.startRendering()).getChannelData(0);
    expect(samples.some((sample) => Math.abs(sample) > 1)).toBe(false);
    expect(onsets(samples, 48_000)).toHaveLength(count);
  });

  test("a cue taken back is not heard", async () => {
    const context = new OfflineAudioContext(1, 48_000, 48_000);
    setCue({ context, out: context.destination, kind: "end", atS: 0.2 })();
    const samples = (await context.startRendering()).getChannelData(0);
    expect(onsets(samples, 48_000)).toEqual([]);
  });
});

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

/** An audio clock of this machine, and the times at which it was heard. */
async function listened() {
  const context = new AudioContext();
  const module = URL.createObjectURL(new Blob([listener], { type: "text/javascript" }));
  await context.audioWorklet.addModule(module);
  const ear = new AudioWorkletNode(context, "onsets");
  const heard: number[] = [];
  ear.port.onmessage = ({ data }) => heard.push(data as number);
  ear.connect(context.destination);
  return { context, ear, heard };
}

const seconds = (s: number) => new Promise((done) => setTimeout(done, s * 1000));

describe("createSoundClock", () => {
  test("ticks stand one second apart to 1 ms, though the page is busy between them [measured: AudioWorklet]", async () => {
    const { context, ear, heard } = await listened();
    const clock = createClock();
    const sound = createSoundClock({ clock, makeContext: () => context, outOf: () => ear });
    expect(await sound.wake()).toBe("sounding");
    const cues: Cue[] = [1, 2, 3].map((atS) => ({ atS, kind: "tick" as const }));
    const shown: number[] = [];
    const zeroMs = clock.nowMs() - 500;
    const stop = sound.run({
      zeroMs,
      cues,
      audible: true,
      onCue: (cue) => shown.push((clock.nowMs() - zeroMs) / 1000 - cue.atS),
    });
    // 120 ms of work in the middle: less than the look-ahead, far more than a tick may be late.
    await seconds(0.35);
    const busyUntil = performance.now() + 120;
    while (performance.now() < busyUntil);
    await seconds(2.6);
    stop();
    expect(heard).toHaveLength(3);
    expect(Math.abs((heard[1] ?? 0) - (heard[0] ?? 0) - 1)).toBeLessThan(0.001);
    expect(Math.abs((heard[2] ?? 0) - (heard[1] ?? 0) - 1)).toBeLessThan(0.001);
    expect(shown).toHaveLength(3);
    for (const lateS of shown) expect(lateS).toBeGreaterThanOrEqual(0);
    sound.close();
  });

  test("stopped, it takes back what was set ahead but not yet heard", async () => {
    const { context, ear, heard } = await listened();
    const clock = createClock();
    const sound = createSoundClock({ clock, makeContext: () => context, outOf: () => ear });
    await sound.wake();
    const stop = sound.run({ zeroMs: clock.nowMs(), cues: [{ atS: 0.15, kind: "end" }], audible: true });
    stop();
    await seconds(0.4);
    expect(heard).toEqual([]);
    sound.close();
  });

  test("without audio it still calls each cue for the eye and the hand, and says that sound is missing", async () => {
    const clock = createClock();
    const sound = createSoundClock({
      clock,
      makeContext: () => {
        throw new Error("no audio device");
      },
    });
    expect(await sound.wake()).toBe("missing");
    const called: Cue[] = [];
    sound.run({
      zeroMs: clock.nowMs(),
      cues: [{ atS: 0.1, kind: "tick" }],
      audible: true,
      onCue: (cue) => called.push(cue),
    });
    await seconds(0.25);
    expect(called).toEqual([{ atS: 0.1, kind: "tick" }]);
  });

  test("cues that were over before it began are neither heard nor called", async () => {
    const clock = createClock();
    const sound = createSoundClock({ clock });
    const called: number[] = [];
    const cues: Cue[] = [1, 2, 9.1].map((atS) => ({ atS, kind: "tick" as const }));
    sound.run({ zeroMs: clock.nowMs() - 9000, cues, audible: false, onCue: (cue) => called.push(cue.atS) });
    await seconds(0.25);
    expect(called).toEqual([9.1]);
  });
});
