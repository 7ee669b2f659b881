import { bathPrior, type Half } from "@captray/science/chemistry";
import type { Bath, FieldSet, Json, Moment, RecordId } from "../records/index.ts";
import { bathWearOf, type Passed } from "./bathWearOf.ts";
import type { Mixing, MixingAsked } from "./mixingTypes.ts";

export interface MixedBathInput {
  readonly asked: MixingAsked;
  readonly mixing: Extract<Mixing, { readonly kind: "mix" }>;
  readonly name: string;
  readonly recipeId?: RecordId | undefined;
  readonly now: Moment;
  /** Earlier baths: what was learnt of one with the same work is believed of the next. */
  readonly baths: readonly Bath[];
  readonly passedBy?: (bath: Bath) => readonly Passed[];
}

const hourMs = 3_600_000;
/** One mix is not the next: added to what was learnt, in the logarithm (assumed). */
const betweenMixes = 0.3;

/** What a new bath says of itself the moment it is mixed. */
export function mixedBathSet(input: MixedBathInput): FieldSet {
  const { asked, mixing, name, recipeId, now } = input;
  const { role, wants, volumeMl } = asked;
  const { lastHours } = mixing;
  const halves = halvesFor(input);
  const holds = wants.map(({ what, percentWv }) => ({ what, ...(percentWv !== undefined && { percentWv }) }));
  return {
    name: name.slice(0, 120),
    role,
    ...(recipeId !== undefined && { recipeId }),
    holds,
    // What JSON has no word for is left out.
    mixed: JSON.parse(JSON.stringify({ stocks: asked.stocks, pours: mixing.pours })) as Json,
    volumeMl,
    mixedAt: { ...now },
    ...(lastHours !== undefined && { lastHourAt: { ...now, at: now.at + lastHours * hourMs } }),
    keptIn: "tray",
    ...halves,
    createdAt: { ...now },
  };
}

/** What is believed of it: learnt of the latest bath of the same role that had its strips, or what is common practice. */
function halvesFor({ asked, baths, passedBy, now }: MixedBathInput): Pick<Bath, "halfLifeH" | "halfAreaM2L"> {
  const { role } = asked;
  if (role === "water") return {};
  const learnt = baths
    .filter((one) => one.role === role && (one.strips?.length ?? 0) > 1 && one.removedAt === undefined)
    .sort((a, b) => (b.mixedAt?.at ?? 0) - (a.mixedAt?.at ?? 0))[0];
  const halves = learnt && bathWearOf({ bath: learnt, atMs: now.at, passed: passedBy?.(learnt) ?? [] }).halves;
  if (halves === undefined) {
    const { halfLifeH, halfAreaM2L } = bathPrior({ role });
    return { halfLifeH: { ...halfLifeH, ground: "prior" }, halfAreaM2L: { ...halfAreaM2L, ground: "prior" } };
  }
  const wider = ({ value, sdLn }: Half) => ({ value, sdLn: Math.hypot(sdLn, betweenMixes), ground: "learnt" as const });
  return { halfLifeH: wider(halves.halfLifeH), halfAreaM2L: wider(halves.halfAreaM2L) };
}
