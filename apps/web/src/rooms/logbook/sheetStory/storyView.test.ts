import type { OlderValue } from "@captray/notebook/journal";
import { type AnyRecord, type Json, kinds, newId, type Sheet } from "@captray/notebook/records";
import { planWithFacts } from "@captray/science/exposure";
import { describe, expect, test } from "vitest";
import { frozenLedger } from "./frozenLedger.ts";
import { olderWords, sayOpening, storyView } from "./storyView.ts";

const noon = Date.UTC(2026, 11, 1, 12);
let made = 0;
const id = () => newId({ now: noon + made++, random: () => 0.25 });
const moment = (hours: number) => ({ at: noon + hours * 3_600_000, offsetMin: 60 });

const input = {
  lens: { focalLengthMm: 210, fNumber: 11, fNumberMarked: true },
  focus: { extensionMm: 248 },
  paper: { exposureIndex: 1.4, sensitivity: "blue" },
  readings: [{ timeS: 1 / 16, fNumber: 8, iso: 100 }],
} as const;
const answer = planWithFacts(input);
const plain = (value: unknown) => JSON.parse(JSON.stringify(value)) as Json;

const [sceneId, boxId, lensId, stopId, holderId, sideId] = [id(), id(), id(), id(), id(), id()];
const record = (kind: keyof typeof kinds, one: string, fields: Record<string, Json>): [string, AnyRecord] => [
  one,
  kinds[kind].assemble(one, new Map(Object.entries(fields))) as AnyRecord,
];
const records = new Map([
  record("scene", sceneId, { subject: "Jug by the upturned skiff", where: "the slip" }),
  record("paperBox", boxId, { name: "box C", grade: "1" }),
  record("lens", lensId, { name: "210 mm", [`stops.${stopId}.marked`]: { value: 11.313708, text: "11", mark: true } }),
  record("holder", holderId, { name: "holder 2", [`sides.${sideId}.name`]: "A" }),
]);

function sheet(fields: Record<string, Json>): Sheet {
  const whole = {
    code: "W31",
    result: "positive",
    sceneId,
    paperBoxId: boxId,
    lensId,
    stopId,
    holderSide: { holderId, sideId },
  };
  return kinds.sheet.assemble(id(), new Map(Object.entries<Json>({ ...whole, ...fields })));
}
const opening = (givenS: number, manner: string, hours: number, more: object = {}) => ({
  plannedS: 12.6,
  givenS: { value: givenS, sd: 0.5 },
  manner,
  startedAt: moment(hours),
  ...more,
});
const story = (one: Sheet) => storyView({ sheet: one, peek: (other) => records.get(other), nowMs: noon });
const planned = {
  timeS: 12.6,
  ledger: plain(answer.ledger),
  answer: plain({ ...answer, ledger: [] }),
  input: plain(input),
};

describe("storyView", () => {
  const exposed = sheet({
    planned,
    loadedAt: moment(-16),
    exposedAt: moment(1),
    [`openings.${id()}.opening`]: opening(8.3, "ticks", 1),
    [`openings.${id()}.opening`]: opening(5.3, "takenAsPlanned", 1.1),
    [`mishaps.${id()}.what`]: "knocked",
  });

  test("paper, kit, holder and place, by the names on the shelf and the index reckoned with that day", () => {
    expect(story(exposed).facts).toEqual([
      { what: "paper", words: "box C, grade 1, EI 1.4" },
      { what: "kit", words: "210 mm, f/11, extension 248 mm" },
      { what: "holder", words: "holder 2, side A" },
      { what: "where", words: "the slip" },
    ]);
  });

  test("openings add up with their doubt, and are set beside the plan [8.3 + 5.3; √2 × 0.5; log2(13.6/12.6): by hand]", () => {
    const { given, openings } = story(exposed);
    expect(given?.timeS).toBeCloseTo(13.6, 9);
    expect(given?.sdS).toBeCloseTo(0.70711, 5);
    // 1.645 × 0.70711 / (13.6 ln 2) = 0.123
    expect(given?.compared).toBe("0.1 stop more than planned; hand ±0.12 stop");
    expect(openings.map(({ words }) => words)).toEqual([
      "8.3 s, to the ticks at 14:00",
      "5.3 s, taken as planned at 14:06",
    ]);
  });

  test("the way, in the order it went, with what was planned; then what can come next", () => {
    const { way, next } = story(exposed);
    expect(way.map(({ when, word, text, planned: plan }) => [when, word, text, plan])).toEqual([
      ["30 Nov, 21:00", "Loaded", "in holder 2, side A", ""],
      ["1 Dec, 14:00", "Exposed", "in 2 openings, 13.6 s together", "plan 12.6 s"],
    ]);
    expect(next.map(({ word }) => word)).toEqual(["In the trays", "Discarded"]);
  });

  test("a blank sheet goes to the cap; a discarded one nowhere", () => {
    expect(story(sheet({ planned })).atTheCap).toBe(true);
    expect(story(exposed).atTheCap).toBe(false);
    expect(story(sheet({ planned, discardedAt: moment(2) }))).toMatchObject({ atTheCap: false, next: [] });
  });

  test("faults are marked once there is a picture; it is cut from the exposure on, and not once it is kept or discarded", () => {
    const seen = (fields: Record<string, Json>) => {
      const { wasSeen, canBeCut } = story(sheet(fields));
      return [wasSeen, canBeCut];
    };
    expect(seen({ loadedAt: moment(0) })).toEqual([false, false]);
    expect(seen({ exposedAt: moment(1) })).toEqual([false, true]);
    expect(seen({ exposedAt: moment(1), inProcessAt: moment(2) })).toEqual([true, true]);
    expect(seen({ exposedAt: moment(1), keptAt: moment(3) })).toEqual([true, false]);
    expect(seen({ exposedAt: moment(1), discardedAt: moment(3) })).toEqual([false, false]);
    const pieces: Json = [{ letter: "a", cut: "half", place: { x: 0, y: 0, width: 1, height: 0.5 } }];
    expect(seen({ exposedAt: moment(1), keptAt: moment(3), pieces })).toEqual([true, true]);
  });

  test("of a sheet of which nothing is known nothing is invented", () => {
    const bare = kinds.sheet.assemble(id(), new Map());
    const view = storyView({ sheet: bare, peek: () => undefined, nowMs: noon });
    expect(view).toMatchObject({ facts: [], given: null, openings: [], mishaps: [], way: [], canGoAgain: false });
    expect(JSON.stringify(view)).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("frozenLedger", () => {
  test("gives back the lines of that day, unchanged", () => {
    const frozen = frozenLedger(sheet({ planned }));
    expect(frozen.kind).toBe("lines");
    if (frozen.kind !== "lines") return;
    expect(frozen.lines).toEqual(plain(answer.ledger));
    expect(frozen.timeStops).toEqual(answer.timeStops);
  });

  test("lines of an older form, without the numbers of their words, say what they said then", () => {
    const bare = answer.ledger.map(({ line, stops, ground }) => ({ line, stops, ground }));
    expect(frozenLedger(sheet({ planned: { timeS: 12.6, ledger: plain(bare) } })).kind).toBe("plain");
  });

  test.each([[null], [{}], [[]], [[1, "x", null]], [[{ line: "lens" }]]])("a ledger of %j is none", (ledger) => {
    expect(frozenLedger({ planned: { timeS: 12.6, ledger } }).kind).toBe("none");
  });
});

describe("olderWords", () => {
  const value = (name: string, held: unknown, stands = false): OlderValue =>
    ({ value: held, name, at: noon, device: "boatyard", note: "", stands }) as OlderValue;

  test("what stood in an opening before, newest first, without what stands now", () => {
    const values = [
      value("c", opening(14, "ticks", 1, { corrected: true }), true),
      value("b", opening(13.6, "ticks", 1)),
      value("a", opening(13, "takenAsPlanned", 1)),
    ];
    expect(olderWords({ values, say: sayOpening }).map(({ words }) => words)).toEqual([
      "13.6 s, to the ticks at 14:00",
      "13 s, taken as planned at 14:00",
    ]);
  });

  test("the same words twice are told once, and what was cleared is no value", () => {
    const values = [value("d", "snow grey", true), value("c", "snow grey"), value("b", null), value("a", "first look")];
    const say = (held: unknown) => (typeof held === "string" ? held : null);
    expect(olderWords({ values, say }).map(({ words }) => words)).toEqual(["first look"]);
  });
});
