import type { Station } from "./benchTypes.ts";

export interface BenchRow {
  readonly stations: readonly Station[];
  /** Under the bracket of the bleach round. */
  readonly isRound: boolean;
  /** The station drawn large, where it is in this row. */
  readonly open?: Station | undefined;
}

export interface BenchRows {
  readonly rows: readonly BenchRow[];
  /** Stations that are not drawn, before and after the next move. */
  readonly before: number;
  readonly after: number;
}

const mostInRow = 5;
/** Beside a large tray there is room for two upright ones. */
const mostBesideOpen = 3;
const mostRows = 5;

/**
 * The stations in rows: before the round, the round, after it. The row of the next move opens: up to three stations stand
 * beside each other; of more, the large one takes the row, with those before it over it and those after it under it.
 *
 * Of a bench with more rows than there is room for, those nearest to the next move are drawn.
 */
export function benchRows({
  stations,
  openId,
  takesWhole,
}: {
  readonly stations: readonly Station[];
  readonly openId?: string | undefined;
  /** The figure is so wide that the large tray takes the row in any case. */
  readonly takesWhole: boolean;
}): BenchRows {
  const rows: BenchRow[] = [];
  for (const group of groupsOf(stations)) {
    const isRound = group[0]?.isInRound === true;
    for (const part of parts(group)) {
      const place = part.findIndex(({ id }) => id === openId);
      const open = part[place];
      if (open === undefined || (part.length <= mostBesideOpen && !takesWhole)) {
        rows.push({ stations: part, isRound, ...(open && { open }) });
        continue;
      }
      if (place > 0) rows.push({ stations: part.slice(0, place), isRound });
      rows.push({ stations: [open], isRound, open });
      if (place < part.length - 1) rows.push({ stations: part.slice(place + 1), isRound });
    }
  }
  const at = Math.max(
    0,
    rows.findIndex(({ open }) => open !== undefined),
  );
  const from = Math.max(0, Math.min(at - Math.floor(mostRows / 2), rows.length - mostRows));
  const count = (some: readonly BenchRow[]) => some.reduce((sum, row) => sum + row.stations.length, 0);
  return {
    rows: rows.slice(from, from + mostRows),
    before: count(rows.slice(0, from)),
    after: count(rows.slice(from + mostRows)),
  };
}

/** Neighbours that are in the round together, or not. */
function groupsOf(stations: readonly Station[]): readonly (readonly Station[])[] {
  const groups: Station[][] = [];
  for (const station of stations) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && last[0].isInRound === station.isInRound) last.push(station);
    else groups.push([station]);
  }
  return groups;
}

/** As many even parts as it needs. */
function parts(group: readonly Station[]): readonly (readonly Station[])[] {
  const count = Math.ceil(group.length / mostInRow);
  const long = Math.ceil(group.length / Math.max(1, count));
  return Array.from({ length: count }, (_, place) => group.slice(place * long, (place + 1) * long));
}
