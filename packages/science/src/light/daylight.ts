import { requireInteger, requireWithin } from "../errors/require.ts";
import { type AirMassRule, airMass } from "./airMass.ts";
import { requireSunUp } from "./requireSunUp.ts";
import { requireWord } from "./requireWord.ts";

export type Sky = "clear" | "partlyCloudy" | "overcast";

export interface DaylightInput {
  readonly altitudeDeg: number;
  /** 1 is 1 January. */
  readonly dayOfYear: number;
  readonly sky?: Sky;
  readonly airMassRule?: AirMassRule;
}

export interface Daylight {
  /** Of the sun alone, on a surface turned to it. */
  readonly directNormalLx: number;
  readonly directHorizontalLx: number;
  readonly skyHorizontalLx: number;
  readonly horizontalLx: number;
}

/** Extinction c of the sun (none comes through an overcast sky) and A, B, C of the sky on the ground, in klx. */
const skies = {
  clear: { extinction: 0.21, base: 0.8, height: 15.5, power: 0.5 },
  partlyCloudy: { extinction: 0.8, base: 0.3, height: 45, power: 1 },
  overcast: { extinction: null, base: 0.3, height: 21, power: 1 },
} as const;

/**
 * How much light sun and sky give on level ground.
 *
 * Formula  direct = 127.5 · (1 + 0.034 · cos(2π (J − 2) / 365)) · e^(−c M);  on the ground direct · sin a;  sky = A + B · sin^C a.
 *          (c, A, B, C): clear (0.21, 0.8, 15.5, 0.5), partly cloudy (0.80, 0.3, 45, 1), overcast (no sun, 0.3, 21, 1).
 * Units    the answer in lx (the formula in klx); a, the altitude of the sun, in degrees; J the day of the year; M, the air
 *          mass, has none.
 * Holds    for a above 0 and up to 90, in open country; J from 1 to 366.
 * Error    what is measured at one moment may be half or twice as much: sd 0.5 stop under a clear sky, 1 stop under clouds.
 *
 * @throws {OutOfDomain} sunBelowHorizon, outOfRange, wrongType, unknownWord
 * @source ies-1984: extinction and sun outside the air (second hand); ies-1984: A, B, C (from memory); kasten-young-1989: air mass (second hand)
 * @example daylight({ altitudeDeg: 30, dayOfYear: 172 }).horizontalLx // 52304.147
 */
export function daylight({
  altitudeDeg,
  dayOfYear,
  sky = "clear",
  airMassRule = "kastenYoung",
}: DaylightInput): Daylight {
  requireSunUp({ altitudeDeg });
  requireInteger({ dayOfYear });
  requireWithin({ dayOfYear }, { least: 1, most: 366 });
  requireWord({ sky }, Object.keys(skies));
  const { extinction, base, height, power } = skies[sky];
  const sine = Math.sin((altitudeDeg * Math.PI) / 180);
  const outsideLx = 127_500 * (1 + 0.034 * Math.cos((2 * Math.PI * (dayOfYear - 2)) / 365));
  const air = airMass({ altitudeDeg, airMassRule });
  const directNormalLx = extinction === null ? 0 : outsideLx * Math.exp(-extinction * air);
  const directHorizontalLx = directNormalLx * sine;
  const skyHorizontalLx = 1000 * (base + height * sine ** power);
  return { directNormalLx, directHorizontalLx, skyHorizontalLx, horizontalLx: directHorizontalLx + skyHorizontalLx };
}
