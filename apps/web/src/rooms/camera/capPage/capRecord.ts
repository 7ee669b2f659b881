import type { FieldSet, Json, Mishap, Moment, Practice, Sheet } from "@captray/notebook/records";
import { openingSdS } from "./capHand.ts";
import type { CapPlan } from "./capPlan.ts";
import { type CapState, type GivenOpening, graceS, nextOpening, startCap } from "./capState.ts";

interface RecordInput {
  readonly state: CapState;
  /** The sheet as it is kept now. */
  readonly sheet: Sheet;
  readonly practice: Practice | null;
  readonly now: Moment;
  readonly newId: () => string;
}

/**
 * What is to be set on the sheet so that it says what the cap page knows; nothing where it says so already.
 *
 * The moment the cap comes off, the opening is written down as taken as planned: should everything else be lost, that is
 * what is true. A press then sets what was really given, and the log keeps what stood there before.
 */
export function capSets({ state, sheet, practice, now, newId }: RecordInput): FieldSet {
  const sets: Record<string, Json> = {};
  const wanted = openingsOf(state);
  for (const one of wanted) {
    const value = recordOpening(one, sheet, practice, now.offsetMin);
    const held = sheet.openings.find(({ id }) => id === one.id)?.opening;
    if (held === undefined || !sameOpening(held, value)) sets[`openings.${one.id}.opening`] = value as unknown as Json;
  }
  for (const { id } of sheet.openings) {
    if (!wanted.some((one) => one.id === id)) sets[`openings.${id}.removedAt`] = { ...now };
  }
  const firstMs = wanted[0]?.startedMs;
  if (firstMs === undefined) {
    if (sheet.exposedAt) sets.exposedAt = null;
  } else if (sheet.exposedAt?.at !== Math.round(firstMs)) {
    sets.exposedAt = { at: Math.round(firstMs), offsetMin: now.offsetMin };
  }
  // Mishaps said elsewhere, before this page was opened, are in the state from the start.
  for (const what of state.mishaps) {
    if (sheet.mishaps.some((held) => held.what === what)) continue;
    const id = newId();
    sets[`mishaps.${id}.what`] = what;
    sets[`mishaps.${id}.notedAt`] = { ...now };
  }
  for (const held of sheet.mishaps) {
    if (held.what && !state.mishaps.includes(held.what)) sets[`mishaps.${held.id}.removedAt`] = { ...now };
  }
  return sets;
}

/** The cap page of a sheet as it is kept: where its openings end, the page is after them, or still within the last. */
export function capFromSheet({
  sheet,
  plan,
  countIn,
  nowMs,
}: {
  readonly sheet: Sheet;
  readonly plan: CapPlan;
  readonly countIn: boolean;
  readonly nowMs: number;
}): CapState {
  const start = {
    ...startCap({ plan, countIn }),
    mishaps: sheet.mishaps.flatMap(({ what }) => (what ? [what as Mishap] : [])),
  };
  const openings = sheet.openings.flatMap(({ id, opening }): GivenOpening[] => {
    if (!opening) return [];
    const { plannedS, givenS, manner, startedAt, corrected = false } = opening;
    return [
      {
        id,
        startedMs: startedAt?.at ?? sheet.exposedAt?.at ?? nowMs,
        plannedS,
        givenS: givenS.value,
        way: manner === "counted" ? "counted" : manner === "ticks" ? "ticks" : plan.way,
        by: manner === "takenAsPlanned" ? "asPlanned" : "press",
        corrected,
      },
    ];
  });
  const last = openings.at(-1);
  if (last === undefined) return start;
  const before = openings.slice(0, -1);
  const { endsS } = nextOpening({ plan, openings: before });
  const stillOpen =
    last.by === "asPlanned" && !last.corrected && nowMs < last.startedMs + (endsS + graceS(endsS)) * 1000;
  if (stillOpen && nowMs >= last.startedMs) {
    return { ...start, openings: before, phase: { name: "off", id: last.id, openedMs: last.startedMs, auto: false } };
  }
  return {
    ...start,
    openings,
    phase: { name: "after", endedMs: last.startedMs + last.givenS * 1000, by: last.by },
    changes: [{ what: "exposed" }],
  };
}

function openingsOf(state: CapState): readonly GivenOpening[] {
  const { phase, openings, plan } = state;
  if (phase.name !== "off") return openings;
  const { givesS } = nextOpening(state);
  const open: GivenOpening = {
    id: phase.id,
    startedMs: phase.openedMs,
    plannedS: givesS,
    givenS: givesS,
    way: plan.way,
    by: "asPlanned",
    corrected: false,
  };
  return [...openings, open];
}

type RecordOpening = NonNullable<Sheet["openings"][number]["opening"]>;

function recordOpening(one: GivenOpening, sheet: Sheet, practice: Practice | null, offsetMin: number): RecordOpening {
  const sd = Number(openingSdS({ timeS: one.givenS, practice }).toFixed(4));
  return {
    plannedS: one.plannedS,
    givenS: { value: one.givenS, sd },
    manner: one.by === "asPlanned" && !one.corrected ? "takenAsPlanned" : one.way,
    ...(sheet.handId ? { handId: sheet.handId } : {}),
    startedAt: { at: Math.round(one.startedMs), offsetMin },
    ...(one.corrected ? { corrected: true } : {}),
  };
}

/** The offset and the doubt may differ where a page is opened again elsewhere: only what was given counts. */
function sameOpening(held: RecordOpening, wanted: RecordOpening): boolean {
  return (
    held.givenS.value === wanted.givenS.value &&
    held.manner === wanted.manner &&
    held.plannedS === wanted.plannedS &&
    (held.corrected ?? false) === (wanted.corrected ?? false) &&
    (held.startedAt === undefined || held.startedAt.at === wanted.startedAt?.at)
  );
}
