import type { Bath, BathRole, FieldSet, Json, Moment, RecordId } from "../../records/index.ts";
import { onDay } from "./demoDates.ts";
import type { DemoJournal } from "./demoJournal.ts";

interface Mixed {
  readonly role: BathRole;
  readonly name: string;
  readonly at: Moment;
  readonly holds: Bath["holds"];
  readonly pours: Json;
  readonly volumeMl: number;
  /** Kept in a bottle afterwards. */
  readonly isBottled?: true;
  readonly lastHours?: number;
  readonly discarded?: readonly [Moment, NonNullable<Bath["discardedInto"]>];
  readonly strips?: readonly (readonly [Moment, timeS: number])[];
  readonly notes?: string;
}

export type DemoBaths = readonly RecordId[];

/** Jars and bottles in the shed, and the baths of that winter: bleach of one evening, and what waits in bottles. Gives the baths of each day with a run. */
export function writeBaths(journal: DemoJournal, recipeId: RecordId): (day: number) => DemoBaths {
  const bought = onDay(8, 18, 40);
  const bottle = (set: FieldSet) => ({
    id: journal.idAt(bought),
    kind: "stock" as const,
    set: { ...set, createdAt: bought },
  });
  journal.write(bought, "jars and bottles in the shed", [
    bottle({
      name: "peroxide, the brown bottle",
      what: "peroxide",
      strength: { value: 11.9, basis: "percentWw", text: "11.9 % w/w" },
      openedAt: onDay(29, 18, 30),
    }),
    bottle({ name: "citric acid, the jam jar", what: "citric", formula: "C6H8O7.H2O" }),
    bottle({ name: "sodium sulfite, the tin", what: "sulfite", formula: "Na2SO3" }),
    bottle({ name: "paper developer", what: "developer", parts: { value: 9, text: "1+9" } }),
    bottle({ name: "rapid fixer", what: "fixer", parts: { value: 4, text: "1+4" } }),
  ]);

  const byDay = new Map<number, RecordId[]>();
  for (const day of [29, 30, 31]) {
    const clears =
      day === 29
        ? ([
            [onDay(29, 19, 5), 62],
            [onDay(29, 20, 15), 81],
          ] as const)
        : [];
    const of = (mixed: Omit<Mixed, "volumeMl">) => mix({ ...mixed, volumeMl: 1000 });
    byDay.set(day, [
      of({
        role: "firstDeveloper",
        name: "first developer",
        at: onDay(day, 18, 40),
        holds: [{ what: "metol" }, { what: "hydroquinone" }],
        pours: [
          { what: "water", amountMl: 900 },
          { what: "developer", amountMl: 100 },
        ],
        discarded: [onDay(day, 22, 30), "neither"],
      }),
      of({
        role: "acid",
        name: "acid",
        at: onDay(day, 18, 50),
        holds: [{ what: "citric", percentWv: 2 }],
        pours: [
          { what: "water", amountMl: 1000 },
          { what: "citric", amountG: 21.9 },
        ],
        discarded: [onDay(day, 22, 35), "usedBleach"],
      }),
      of({
        role: "peroxide",
        name: "peroxide",
        at: onDay(day, 18, 58),
        holds: [{ what: "h2o2", percentWv: 3 }],
        pours: [
          { what: "water", amountMl: 758 },
          { what: "peroxide", amountMl: 242 },
        ],
        lastHours: 12,
        strips: clears,
        discarded: [onDay(day, 22, 36), "usedBleach"],
        ...(day === 29 && { notes: "A strip of the window sill, bleached fresh and again after the evening." }),
      }),
    ]);
  }
  mix({
    role: "fix",
    name: "fixer",
    at: onDay(28, 19, 0),
    holds: [{ what: "fixer" }],
    pours: [
      { what: "water", amountMl: 800 },
      { what: "fixer", amountMl: 200 },
    ],
    volumeMl: 1000,
    isBottled: true,
  });
  mix({
    role: "stop",
    name: "stop",
    at: onDay(29, 18, 45),
    holds: [{ what: "citric", percentWv: 1.5 }],
    pours: [
      { what: "water", amountMl: 1000 },
      { what: "citric", amountG: 16.4 },
    ],
    volumeMl: 1000,
    isBottled: true,
  });
  return (day) => byDay.get(day) ?? [];

  function mix(mixed: Mixed): RecordId {
    const { at, role, name, holds = [], pours, volumeMl, isBottled, lastHours, discarded, strips = [], notes } = mixed;
    const id = journal.idAt(at);
    journal.write(at, `${name} mixed`, [
      {
        id,
        kind: "bath",
        set: {
          name,
          role,
          recipeId,
          holds: holds.map((one) => ({ ...one })),
          mixed: { pours },
          volumeMl,
          mixedAt: at,
          ...(lastHours !== undefined && { lastHourAt: { ...at, at: at.at + lastHours * 3_600_000 } }),
          keptIn: "tray",
          createdAt: at,
          ...(notes !== undefined && { notes }),
        },
      },
    ]);
    const later = (moment: Moment, note: string, set: FieldSet) =>
      journal.write(moment, note, [{ id, kind: "bath", set }]);
    for (const [place, [moment, timeS]] of strips.entries()) {
      const kept = strips.slice(0, place).map(([when, took]) => ({ at: when, timeS: took }));
      later(moment, "a strip timed", { strips: [...kept, { at: moment, timeS }] });
    }
    if (isBottled) later(onDay(30, 22, 40), `${name} into a bottle`, { keptIn: "bottle" });
    if (discarded !== undefined)
      later(discarded[0], `${name} discarded`, { discardedAt: discarded[0], discardedInto: discarded[1] });
    return id;
  }
}
