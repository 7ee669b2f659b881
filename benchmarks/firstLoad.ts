import { chunkSizes } from "../tests/house/tools/chunkSizes.ts";
import { check, type Figure, type World } from "./promise.ts";

/** What is fetched before anything shows, and what the largest screen adds: bytes, so one look is enough. */
export async function run({ app }: World): Promise<readonly Figure[]> {
  const { firstLoadKb, rooms } = chunkSizes({ dist: app });
  const largest = rooms.reduce((most, one) => (one.kb > most.kb ? one : most), { room: "", kb: 0 });
  check(firstLoadKb > 50, "React alone is more than 50 kB");
  check(rooms.length > 0 && largest.kb > 0, "there is no room");
  const bytes = { unit: "kB", checked: "read from the build's own list", limitedBy: "" } as const;
  return [
    {
      ...bytes,
      what: "first load, gzip -9: page, entry with its static imports, style sheets",
      timing: { medianMs: firstLoadKb, p95Ms: firstLoadKb, runs: 1 },
      promised: { median: 150 },
    },
    {
      ...bytes,
      what: `largest of ${rooms.length} lazy screens, gzip -9: ${largest.room.replace("src/rooms/", "")}`,
      timing: { medianMs: largest.kb, p95Ms: largest.kb, runs: 1 },
      promised: { median: 60 },
    },
  ];
}
