import { kitOf, planOf } from "@captray/notebook/answers";
import { areasOf, dial, idNumber, someKit } from "../packages/notebook/src/answers/testing.ts";
import { check, type Figure } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

/** From the records of a scene with three readings to the whole ledger: the kit put together, the plan made. */
export async function run(): Promise<readonly Figure[]> {
  // Two scenes in turn, so that nothing remembered from the call before can answer.
  const cases = [
    { kit: kitAt(1 / 16), lightS: 1 / 16 },
    { kit: kitAt(1 / 32), lightS: 1 / 32 },
  ].map(({ kit, lightS }) => {
    const records = new Map([kit.scene, kit.lens, kit.paperBox, kit.exposureIndex].map((one) => [one?.id ?? "", one]));
    const scene = {
      ...kit.scene,
      ...(kit.lens && { lensId: kit.lens.id }),
      ...(kit.paperBox && { paperBoxId: kit.paperBox.id }),
      ...(kit.exposureIndex && { exposureIndexId: kit.exposureIndex.id }),
    };
    return { scene, notebook: { peek: (id: string) => records.get(id) }, lightS };
  });

  let turn = 0;
  const once = () => {
    const one = cases[turn++ % 2] as (typeof cases)[number];
    return { plan: planOf(kitOf({ notebook: one.notebook, scene: one.scene })), lightS: one.lightS };
  };
  const before = time(9, yardstick);
  const { timing } = time(5000, once);
  const after = time(9, yardstick);

  for (let i = 0; i < 4; i++) {
    const { plan, lightS } = once();
    if (plan.kind !== "plan") throw new Error(`No plan: ${JSON.stringify(plan)}`);
    const sum = plan.answer.ledger.reduce((stops, line) => stops + line.stops.value, 0);
    const byHand = lightS * (2 ** 3.5 / 8) ** 2 * (248 / 210) ** 2 * (100 / 1.4);
    check(Math.abs(2 ** sum / plan.answer.timeS - 1) < 1e-9, "the ledger's lines add up to the time");
    check(Math.abs(plan.answer.timeS / byHand - 1) < 1e-9, `${plan.answer.timeS} s, by hand ${byHand} s`);
    check(plan.answer.areas.length === 3 && plan.answer.ledger.length === 10, "three areas, ten lines");
  }
  return [
    {
      what: "input to ledger, three readings (records to the whole plan)",
      unit: "ms",
      timing,
      promised: { median: 0.2 },
      yardstickMs: Math.min(before.timing.medianMs, after.timing.medianMs),
      checked: "time, ten lines and three areas, by hand",
      limitedBy: "the plan itself: slips and levers are worked out each time",
    },
  ];
}

function kitAt(lightS: number) {
  return someKit({
    scene: {
      ...areasOf([
        ["hull", dial(lightS)],
        ["snow", dial(lightS / 8)],
        ["shed door", dial(lightS * 16)],
      ]),
      place: { areaId: idNumber(100), stops: 0 },
    },
  });
}
