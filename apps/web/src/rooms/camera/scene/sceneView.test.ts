import { kitOf, planOf, waysOf } from "@captray/notebook/answers";
import { openNotebook } from "@captray/notebook/journal";
import { kinds, type Scene } from "@captray/notebook/records";
import { fillDemo } from "@captray/notebook/starters";
import { openMemoryStorage } from "@captray/notebook/storage";
import { describe, expect, it } from "vitest";
import { withSet } from "../recordMerge.ts";
import { saidWords } from "../saidWords.ts";
import { readAgain } from "./readAgain.ts";
import { sceneView } from "./sceneView.ts";
import { leversTooLong, leversTooShort, waysInWords } from "./waysWords.ts";

async function demoScene(subject: string) {
  const notebook = await openNotebook({
    storage: openMemoryStorage(),
    notebookId: "test",
    now: () => 1_795_000_000_000,
    random: () => 0.5,
    device: "testtest",
  });
  await fillDemo({ notebook });
  const scene = notebook.shelf("scene").find((one) => one.subject === subject);
  if (scene === undefined) throw new Error(`The demo has no scene called ${subject}.`);
  return { notebook, scene, kit: kitOf({ notebook, scene }) };
}

const readMs = (scene: Scene) => Math.max(...scene.readings.map((one) => one.takenAt?.at ?? 0));
const skiff = "Upturned skiff before the shed";

describe("a scene of the boatyard", () => {
  it("says its areas from the placed one: snow 3 stops above the hull, the shed door 4 below [by hand: 1/125 and 1 s against 1/15]", async () => {
    const { scene, kit } = await demoScene(skiff);
    const view = sceneView({ kit, nowMs: readMs(scene), lengthUnit: "mm" });
    const from = Object.fromEntries(
      view.areas.map(({ name, fromGround, isGround }) => [name, isGround ? "placed" : fromGround]),
    );
    expect(from).toMatchObject({ snow: "+3.0", hull: "placed", rope: "−1.0", "shed door": "−4.0" });
    expect(view.frame).toBe("f/8, ISO 100");
  });

  it("asks after 10 minutes outdoors, and only then; its age is said as people say it", async () => {
    const { scene, kit } = await demoScene(skiff);
    const at = (minutes: number, change: Partial<Scene> = {}) =>
      sceneView({
        kit: { ...kit, scene: { ...scene, ...change } },
        nowMs: readMs(scene) + minutes * 60_000,
        lengthUnit: "mm",
      });
    expect([at(0).age, at(9).age, at(200).age, at(60 * 24 * 12).age]).toEqual([
      "read just now",
      "read 9 min ago",
      "read 3 h ago",
      "read 12 days ago",
    ]);
    expect([at(9).askAgain, at(10).askAgain]).toEqual([false, true]);
    expect(at(60, { outdoors: false }).askAgain).toBe(false);
  });

  it("nothing read, no lens, no index: each says what to do next", async () => {
    const { scene, kit } = await demoScene(skiff);
    const bare = sceneView({ kit: { ...kit, scene: { ...scene, areas: [] } }, nowMs: 0, lengthUnit: "mm" });
    expect(bare.problem?.head).toBe("Nothing has been read yet");
    expect(sceneView({ kit: { scene }, nowMs: 0, lengthUnit: "mm" }).problem?.head).toBe(
      "The lens has no focal length yet",
    );
    const short = { ...scene, focus: { by: "extension" as const, extensionMm: { value: 180 } } };
    expect(sceneView({ kit: { ...kit, scene: short }, nowMs: 0, lengthUnit: "mm" }).problem?.head).toMatch(
      /^The extension/,
    );
  });
});

describe("read again", () => {
  it("one stop less on the hull moves every area by a stop, keeps the older readings, and says so", async () => {
    const { scene, kit } = await demoScene(skiff);
    const held = scene.readings.find((one) => one.areaId === scene.place?.areaId)?.reading;
    if (held?.way !== "time") throw new Error("the hull was read as a time");
    const reading = { ...held, timeS: { value: held.timeS.value * 2, text: "1/8" } };
    const ids = scene.areas.map((_, i) => `01KB0000000000000000000${String(i).padStart(3, "0")}`);
    const again = readAgain({ scene, reading, takenAt: { at: 1, offsetMin: 0 }, freshIds: ids });
    expect(again?.byStops).toBeCloseTo(-1, 9);
    expect(again?.note).toBe("Light down 1.0 stop; 4 other areas moved with it");
    if (again === undefined) return;
    for (const [path, value] of Object.entries(again.set.set)) {
      expect(kinds.scene.fieldAt(path)?.safeParse(value).success, path).toBe(true);
    }
    const moved = withSet<Scene>(scene, again.set);
    expect(moved.readings).toHaveLength(scene.readings.length + scene.areas.length);
    const before = planOf(kit);
    const after = planOf({ ...kit, scene: moved });
    if (before.kind !== "plan" || after.kind !== "plan") throw new Error("both have a plan");
    expect(after.answer.timeS / before.answer.timeS).toBeCloseTo(2, 9);
    expect(after.answer.sceneRangeStops).toBeCloseTo(before.answer.sceneRangeStops, 9);
  });
});

describe("ways and levers in words", () => {
  it("12.6 s: cap on at the 13th tick, 0.04 stop over [by hand: log2(13 / 12.64) = 0.04]", async () => {
    const { kit } = await demoScene(skiff);
    const plan = planOf(kit);
    if (plan.kind !== "plan") throw new Error(plan.kind);
    const [ticks] = waysInWords(waysOf({ kit, plan }).byHand);
    expect(ticks?.say).toMatch(/^Cap on at the 13th tick: 0\.0[34] stop over\.$/);
  });

  it("a tenth of a second is too short: density, stop and distance each say their number [x = log2(shortest / t)]", async () => {
    const { kit, scene } = await demoScene(skiff);
    const quick = {
      ...scene,
      areas: scene.areas.slice(0, 1),
      place: { areaId: scene.areas[0]?.id ?? "", stops: -6 },
    } as Scene;
    const plan = planOf({ ...kit, scene: quick });
    if (plan.kind !== "plan") throw new Error(plan.kind);
    const { byHand } = waysOf({ kit: { ...kit, scene: quick }, plan });
    if (byHand.kind !== "tooShort") throw new Error(byHand.kind);
    const stops = Math.log2(byHand.shortestS / plan.answer.timeS);
    const levers = leversTooShort(byHand, plan.answer.optics.fNumber);
    expect(levers[0]?.value).toBe(`density ${(stops * 0.30103).toFixed(2)}`);
    expect(levers.map(({ value }) => value).join(" ")).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("a subject still for 3 s against 12.6 s: two stops and a little, five openings [by hand]", async () => {
    const { kit, scene } = await demoScene(skiff);
    const restless = { ...kit, scene: { ...scene, stillS: { value: 3 } } };
    const plan = planOf(restless);
    if (plan.kind !== "plan") throw new Error(plan.kind);
    const { still } = waysOf({ kit: restless, plan });
    if (still?.kind !== "tooLong") throw new Error("it does not keep still");
    const levers = leversTooLong(still, plan.answer.optics.fNumber);
    expect(levers.at(-1)?.value).toMatch(/^5 of 2\.5 s$/);
  });
});

describe("“I worked it out as” in words", () => {
  const ranked = (slips: string[], share: number, stops: number) => ({ slips, share, stops });

  it("agrees, names a slip, lists what could be, or says honestly that none explains it", () => {
    const base = { offStops: -0.5, sdStops: 0.15, unknownShare: 0.05 };
    const say = (verdict: "agrees" | "slip" | "unknown", list: ReturnType<typeof ranked>[]) =>
      saidWords({ said: { ...base, verdict, ranked: list }, saidTimeS: 9, timeS: 12.64 });
    expect(say("agrees", [ranked([], 0.99, 0)])).toBe("9 s agrees with this sum.");
    expect(say("slip", [ranked(["bellows-forgotten"], 0.7, -0.48)])).toBe(
      "9 s is 0.5 stop short of this sum. Leaving out the extension (0.48) would explain it.",
    );
    expect(say("slip", [ranked(["glass-not-counted"], 0.6, -0.53)])).toBe(
      "9 s is 0.5 stop short of this sum. You left out the glass (0.53), which this ledger counts.",
    );
    expect(say("slip", [ranked(["glass-not-counted"], 0.41, -0.53), ranked(["bellows-forgotten"], 0.32, -0.5)])).toBe(
      "9 s is 0.5 stop short of this sum. It could be leaving out the glass, which this ledger counts, or leaving out the extension.",
    );
    expect(say("unknown", [ranked(["bellows-inverted"], 0.27, -0.9)])).toMatch(
      /No known slip explains it \(you have 9 s, the ledger 13 s\); nearest: counting the extension the wrong way/,
    );
  });
});
