import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectRefusal, seeded } from "../../fixtures/chemistry/checking.ts";
import { type CautionsForInput, cautionsFor } from "./cautionsFor.ts";
import { CAUTIONS, CAUTIONS_CHECKED_ON } from "./cautionTable.ts";
import { cautionTableAge } from "./cautionTableAge.ts";
import type { CautionAct, Substance } from "./cautionTypes.ts";

const idsFor = (input: CautionsForInput) => cautionsFor({ beside: [], ...input }).map(({ id }) => id);
const peroxide = (percentWw: number) => [{ substance: "h2o2" as const, percentWw }];
const acetic = (percentWw: number) => [{ substance: "acetic" as const, percentWw }];

const acts: readonly CautionAct[] = ["mix", "store", "run", "discard", "finish"];
const substances = [
  ...new Set(CAUTIONS.flatMap(({ when }) => [when.has, ...(when.any ?? []), ...(when.all ?? [])]).filter(Boolean)),
] as Substance[];
const anyInput = fc.record({
  held: fc.array(
    fc.record({ substance: fc.constantFrom(...substances), percentWw: fc.double({ min: 0, max: 100, noNaN: true }) }),
    { maxLength: 4 },
  ),
  beside: fc.array(fc.constantFrom(...substances), { maxLength: 3 }),
  act: fc.constantFrom(...acts),
});

describe("peroxide, by the strength really reached [echa-peroxide; eu-2019-1148]", () => {
  test.each([
    [4.9, []],
    [5, ["ox-eye5"]],
    [7.99, ["ox-eye5"]],
    [8, ["ox-eye8"]],
    [12, ["ox-eye8"]],
    [12.1, ["ox-eye8", "ox-12"]],
    [35, ["ox-eye8", "ox-12", "ox-35"]],
  ])("%d %% w/w in the tray: %j", (percentWw, wanted) => {
    const ids = idsFor({ held: peroxide(percentWw), act: "run" });
    expect(ids.filter((id) => /^ox-(eye|12|35)/.test(id))).toEqual(wanted);
  });

  test("a bottle without a figure is taken for the strongest that is sold", () => {
    const ids = idsFor({ held: [{ substance: "h2o2" }], act: "mix" });
    expect(ids).toContain("ox-eye8");
    expect(ids).not.toContain("ox-12");
  });

  test("never stoppered when mixed, put away, discarded; nothing back into the bottle at the end", () => {
    for (const act of ["mix", "store", "discard"] as const)
      expect(idsFor({ held: peroxide(3), act })).toContain("ox-vent");
    expect(idsFor({ held: peroxide(3), act: "run" })).not.toContain("ox-vent");
    expect(idsFor({ held: peroxide(3), act: "finish" })).toContain("ox-back");
  });
});

describe("other baths", () => {
  test.each([
    [9.9, []],
    [10, ["ac-10"]],
    [25, ["ac-25"]],
  ])("acetic acid of %d %%: %j [clp-acetic]", (percentWw, wanted) => {
    expect(idsFor({ held: acetic(percentWw) }).filter((id) => id.startsWith("ac-"))).toEqual(wanted);
  });

  test.each<[string, CautionsForInput, string]>([
    ["acetone in the bath", { held: [...peroxide(3), { substance: "acetone" }] }, "ox-solvent"],
    ["alcohol beside the peroxide", { held: peroxide(3), beside: ["alcohol"] }, "ox-solvent"],
    ["vinegar with peroxide", { held: [...peroxide(3), ...acetic(2)] }, "ox-acetic"],
    ["chlorine bleach in the room of a stop", { held: acetic(2), beside: ["hypochlorite"] }, "cl-acid"],
    ["a powder developer", { held: [{ substance: "metol" }], form: "powder" }, "dev-powder"],
    ["a developer poured away", { held: [{ substance: "hydroquinone" }], act: "discard" }, "dev-drain"],
    ["acid carried into sulfite", { held: [{ substance: "sulfite" }], beside: ["citric"], act: "run" }, "so2"],
    ["acid carried into fixer", { held: [{ substance: "fixer" }], beside: ["acetic"], act: "run" }, "so2"],
    ["peroxide carried into sulfite", { held: [{ substance: "sulfite" }], beside: ["h2o2"], act: "run" }, "clear-hot"],
    ["soda into rapid fixer", { held: [{ substance: "ammonium thiosulfate" }], beside: ["alkali"] }, "fix-am"],
    ["ammonia to silver", { held: [{ substance: "silver" }, { substance: "ammonia" }] }, "ag-nh3"],
    ["used fixer", { held: [{ substance: "fixer" }], act: "discard" }, "waste-apart"],
    ["used peroxide, which holds silver", { held: peroxide(3), act: "discard" }, "ag-waste"],
    ["wet hands at the trays", { held: [], act: "run" }, "mains"],
    ["dichromate", { held: [{ substance: "dichromate" }] }, "cr6"],
    ["permanganate", { held: [{ substance: "permanganate" }] }, "mn7"],
    ["sulfuric acid of 10 %", { held: [{ substance: "sulfuric", percentWw: 10 }] }, "h2so4"],
    ["citric powder", { held: [{ substance: "citric" }] }, "ci"],
    ["anything mixed", { held: [] }, "food"],
    ["vapours at the trays", { held: [{ substance: "sulfite" }], act: "run" }, "air"],
  ])("%s: %j holds %s", (_, input, id) => {
    expect(idsFor(input)).toContain(id);
  });

  test("clean water and a known, empty room bring none of them", () => {
    expect(idsFor({ held: [], act: "discard" })).toEqual(["help"]);
  });

  test("where nobody said what is in the room, chlorine bleach is warned of", () => {
    expect(cautionsFor({ held: acetic(2) }).map(({ id }) => id)).toContain("cl-acid");
    expect(idsFor({ held: acetic(2) })).not.toContain("cl-acid");
  });
});

describe("how they are shown", () => {
  test("help is always last, of each family one, in the order of the table [property]", () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const shown = cautionsFor(input);
        expect(shown.at(-1)?.id).toBe("help");
        expect(new Set(shown.map(({ family }) => family)).size).toBe(shown.length);
        const places = shown.map(({ id }) => CAUTIONS.findIndex((each) => each.id === id));
        expect(places).toEqual(places.toSorted((one, other) => one - other));
      }),
      seeded,
    );
  });

  test("a stronger bath never loses a family [property]", () => {
    fc.assert(
      fc.property(anyInput, fc.double({ min: 0, max: 100, noNaN: true }), (input, more) => {
        const stronger = input.held.map((each) => ({ ...each, percentWw: Math.min(100, each.percentWw + more) }));
        const families = cautionsFor({ ...input, held: stronger }).map(({ family }) => family);
        expect(families).toEqual(expect.arrayContaining(cautionsFor(input).map(({ family }) => family)));
      }),
      seeded,
    );
  });

  test("five stay however often they were read", () => {
    const lasting = CAUTIONS.filter(({ dismissible }) => !dismissible).map(({ id }) => id);
    expect(lasting.sort()).toEqual(["cl-acid", "help", "ox-solvent", "ox-vent", "waste-apart"]);
    const all = CAUTIONS.map(({ id }) => id);
    expect(idsFor({ held: peroxide(6), act: "discard", seen: all })).toEqual(["ox-vent", "waste-apart", "help"]);
  });

  test("what was read comes back when it has got worse", () => {
    expect(idsFor({ held: peroxide(6), act: "run", seen: ["ox-eye5"] })).not.toContain("ox-eye5");
    expect(idsFor({ held: peroxide(9), act: "run", seen: ["ox-eye5"] })).toContain("ox-eye8");
    expect(idsFor({ held: peroxide(6), act: "run", seen: ["ox-eye8"] })).not.toContain("ox-eye5");
  });

  test("what is no strength or no substance is refused", () => {
    expectRefusal(() => cautionsFor({ held: peroxide(150) }), "outOfRange", "percentWw");
    expectRefusal(() => cautionsFor({ held: [{ substance: "soup" as "h2o2" }] }), "unknownWord", "held/0/substance");
    expectRefusal(() => cautionsFor({ held: [], beside: ["soup" as "h2o2"] }), "unknownWord", "beside/0");
  });
});

describe("the table", () => {
  test("tells its day, and is old after two years", () => {
    expect(cautionTableAge({ today: CAUTIONS_CHECKED_ON })).toEqual({
      checkedOn: CAUTIONS_CHECKED_ON,
      years: 0,
      isOld: false,
    });
    expect(cautionTableAge({ today: "2028-11-25" }).isOld).toBe(false);
    expect(cautionTableAge({ today: "2028-11-26" }).isOld).toBe(true);
    expect(cautionTableAge({ today: "2020-01-01" }).years).toBe(0);
    expectRefusal(() => cautionTableAge({ today: "yesterday" }), "unreadable", "today");
  });

  test("each has words, a source and an id of its own", () => {
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(CAUTIONS.length);
    for (const { id, text, source } of CAUTIONS) {
      expect(text, id).toMatch(/^[A-Z].*\.$/);
      expect(source, id).not.toBe("");
    }
  });
});
