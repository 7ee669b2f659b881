import { sunPosition } from "@captray/science/light";
import { Body, Equator, Horizon, Observer } from "astronomy-engine";
import { getPosition } from "suncalc";
import { check, type Figure } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

const latitudeDeg = 52;
const longitudeEastDeg = 5;
/** Every seventh hour of a year. */
const dates = Array.from({ length: 1250 }, (_, n) => new Date(Date.UTC(2026, 0, 1, n * 7)));

/** Where the sun stands, 1250 times: ours and two peers. */
export async function run(): Promise<readonly Figure[]> {
  const inputs = dates.map((date) => ({
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hourUtc: date.getUTCHours(),
    latitudeDeg,
    longitudeEastDeg,
  }));
  const ours = time(21, () => inputs.map((input) => sunPosition(input).altitudeDeg));
  const observer = new Observer(latitudeDeg, longitudeEastDeg, 0);
  const full = time(21, () =>
    dates.map((date) => {
      const { ra, dec } = Equator(Body.Sun, date, observer, true, true);
      return Horizon(date, observer, ra, dec).altitude;
    }),
  );
  const short = time(21, () => dates.map((date) => getPosition(date, latitudeDeg, longitudeEastDeg).altitude));
  const loop = time(9, yardstick);
  const apartDeg = Math.max(...ours.answer.map((altitude, n) => Math.abs(altitude - (full.answer[n] ?? Number.NaN))));
  // The almanac's 0.01° and the peer's parallax, 0.0024°.
  check(apartDeg < 0.015, `the sun's height is ${apartDeg}° from the full theory's`);
  return [
    {
      what: "sun's place at 1250 hours of a year",
      unit: "ms",
      timing: ours.timing,
      promised: {},
      yardstickMs: loop.timing.medianMs,
      peers: [
        { name: "astronomy-engine", medianMs: full.timing.medianMs },
        { name: "suncalc", medianMs: short.timing.medianMs },
      ],
      checked: "within 0.015° of astronomy-engine's heights",
      limitedBy: "",
    },
  ];
}
