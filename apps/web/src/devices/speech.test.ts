import { describe, expect, test } from "vitest";
import { createSpeaker, type SpeechMachine } from "./speech.ts";

type Spoken = Parameters<SpeechMachine["speak"]>[0] & { readonly words: string };

/** A machine with these voices that notes what it is given, and can be made to fail. */
function machineWith(voices: ReturnType<SpeechMachine["voices"]>) {
  const spoken: Spoken[] = [];
  const heard: string[] = [];
  let told = 0;
  const machine: SpeechMachine = {
    voices: () => voices,
    speak: (utterance) => void spoken.push(utterance as Spoken),
    cancel: () => undefined,
    utter: (words) => ({ words, lang: "", rate: 1, voice: null, onerror: null }) as Spoken,
    onVoices: () => undefined,
  };
  const tone = (kind: string) => heard.push(kind) > 0;
  const speaker = createSpeaker({ machine, tone });
  speaker.follow(() => told++);
  return { speaker, spoken, heard, told: () => told };
}
const own = { lang: "en-GB", localService: true };

describe("reading out in the dark", () => {
  test("by the machine's own voice, which needs no network; British before others", () => {
    const { speaker, spoken, heard } = machineWith([{ lang: "en-US", localService: true }, own]);
    expect(speaker.state()).toBe("voice");
    speaker.say("Side A, from box C.");
    expect(spoken.map(({ words, lang }) => [words, lang])).toEqual([["Side A, from box C.", "en-GB"]]);
    expect(heard).toEqual([]);
  });

  test.each([
    ["no voice at all", []],
    ["only voices of the network", [{ lang: "en-GB", localService: false }]],
    ["only voices of another language", [{ lang: "fr-FR", localService: true }]],
  ])("%s: tones, and it says so", (_, voices) => {
    const { speaker, spoken, heard } = machineWith(voices);
    expect(speaker.state()).toBe("tones");
    speaker.say("Side A.");
    speaker.say("All loaded.", "end");
    expect([spoken, heard]).toEqual([[], ["fifth", "end"]]);
  });

  test("a voice that fails falls back to tones, and is not asked again; one that is cut short has not failed [seen: headless Chromium, synthesis-failed]", () => {
    const { speaker, spoken, heard, told } = machineWith([own]);
    speaker.say("Side A.");
    const fail = spoken[0]?.onerror as (event: { error: string }) => void;
    fail({ error: "interrupted" });
    expect([speaker.state(), told()]).toEqual(["voice", 0]);
    fail({ error: "synthesis-failed" });
    expect([speaker.state(), heard]).toEqual(["tones", ["fifth"]]);
    expect(told()).toBeGreaterThan(0);
    speaker.say("Side B.");
    expect(spoken).toHaveLength(1);
  });

  test("neither voice nor sound: none, and it says so", () => {
    const speaker = createSpeaker({ machine: undefined, tone: () => false });
    speaker.say("Side A.");
    expect(speaker.state()).toBe("none");
  });
});
