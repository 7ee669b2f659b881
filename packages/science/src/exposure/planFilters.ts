import type { FiltersFacts } from "../errors/ledgerFacts.ts";
import { planDefaults } from "./planDefaults.ts";
import type { PlanFilter } from "./planTypes.ts";
import { stopsFromDensity } from "./stopsFromDensity.ts";
import { stopsFromFactor } from "./stopsFromFactor.ts";
import { finiteAt, missing, notNegativeAt, oneWayOf, positiveAt } from "./valuesAt.ts";

const ways = ["neutralDensity", "factor", "stops"] as const;

/** The ledger's line of the filters. Inner helper of `plan`. */
export function filtersLine(filters: readonly PlanFilter[]): FiltersFacts {
  let stops = 0;
  let variance = 0;
  const facts = filters.map((filter, index) => {
    const path = `filters/${index}`;
    const way = oneWayOf(filter, ways, path);
    if (way === undefined) throw missing(path, "neutralDensity", ways);
    const value = filter[way] as number;
    const cost = stopsOf(way, value, path);
    const sd = notNegativeAt(filter.sdStops ?? planDefaults.filter.sdStops, path, "sdStops");
    stops += cost;
    variance += sd ** 2;
    return { name: filter.name ?? null, way, value, stops: cost };
  });
  return { stops, sd: Math.sqrt(variance), filters: facts };
}

function stopsOf(way: (typeof ways)[number], value: number, path: string): number {
  if (way === "stops") return finiteAt(value, path, way);
  if (way === "factor") return stopsFromFactor({ factor: positiveAt(value, path, way) });
  return stopsFromDensity({ density: notNegativeAt(value, path, way) });
}
