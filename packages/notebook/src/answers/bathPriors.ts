import type { Bath, BathRole } from "../records/index.ts";

/** A quantity known in its logarithm only: the middle, and one standard deviation of ln. */
export interface Half {
  readonly value: number;
  readonly sdLn: number;
  readonly ground: "prior" | "learnt" | "told";
}

interface Life {
  /** Hours in which it loses half its strength unused: in an open tray, and in a full bottle. */
  readonly trayH: number;
  readonly bottleH: number;
  /** Paper to a litre that halves it. */
  readonly areaM2L: number;
}

/** Until strips have told, both halves are known to a factor of two. */
const priorSdLn = 0.7;

// Middles of what is common practice for open trays and full bottles; of peroxide assumed. No source.
const developer: Life = { trayH: 8.5, bottleH: 240, areaM2L: 1.4 };
const acid: Life = { trayH: 72, bottleH: 1440, areaM2L: 4.2 };
const sulfite: Life = { trayH: 17, bottleH: 72, areaM2L: 2.8 };

const lives: Readonly<Record<BathRole, Life | undefined>> = {
  developer,
  firstDeveloper: developer,
  secondDeveloper: developer,
  stop: acid,
  acid,
  // In a bottle it does not live longer: it must not be bottled.
  peroxide: { trayH: 12, bottleH: 12, areaM2L: 1 },
  acidAndPeroxide: { trayH: 4, bottleH: 4, areaM2L: 0.5 },
  clear: sulfite,
  washAid: sulfite,
  fix: { trayH: 72, bottleH: 500, areaM2L: 2.2 },
  water: undefined,
};

/** How long a bath of this role lives and how much paper halves it, before anything was learnt of it; nothing for water. */
export function bathPriors({
  role,
  keptIn = "tray",
}: {
  readonly role: BathRole;
  readonly keptIn?: Bath["keptIn"];
}): { readonly halfLifeH: Half; readonly halfAreaM2L: Half } | undefined {
  const life = lives[role];
  return (
    life && {
      halfLifeH: { value: keptIn === "bottle" ? life.bottleH : life.trayH, sdLn: priorSdLn, ground: "prior" },
      halfAreaM2L: { value: life.areaM2L, sdLn: priorSdLn, ground: "prior" },
    }
  );
}
