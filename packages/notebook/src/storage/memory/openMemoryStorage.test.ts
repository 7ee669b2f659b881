import { expect, test } from "vitest";
import { commonTests } from "../commonTests.ts";
import { newMemoryBase, openMemoryStorage } from "./openMemoryStorage.ts";

for (const { title, run } of commonTests) {
  test(`memory: ${title}`, async () => {
    const base = newMemoryBase();
    await run({ open: () => openMemoryStorage({ base }), expect });
  });
}

test("memory: reading may not write", async () => {
  const storage = openMemoryStorage();
  await expect(storage.transact("read", (t) => t.put("row", "a", "b"))).rejects.toThrow("write transaction");
});
