import { describe, expect, test } from "vitest";
import { createMirror } from "./mirror.ts";
import { wishToPersist } from "./storagePersist.ts";
import { createShaker } from "./vibrate.ts";

describe("createMirror", () => {
  test("gives back what was written; null for nothing and for bytes it cannot read", () => {
    const kept = new Map<string, string>([["broken", "{"]]);
    const mirror = createMirror(() => ({
      getItem: (name) => kept.get(name) ?? null,
      setItem: (name, value) => void kept.set(name, value),
      removeItem: (name) => void kept.delete(name),
    }));
    expect(mirror.write("cap", { phase: "off" })).toBe(true);
    expect(mirror.read("cap")).toEqual({ phase: "off" });
    expect(mirror.read("broken")).toBeNull();
    mirror.drop("cap");
    expect(mirror.read("cap")).toBeNull();
  });

  test("where the store is barred nothing breaks, and writing says so", () => {
    const mirror = createMirror(() => {
      throw new Error("SecurityError");
    });
    expect(mirror.read("cap")).toBeNull();
    expect(mirror.write("cap", 1)).toBe(false);
    expect(() => mirror.drop("cap")).not.toThrow();
  });
});

describe("wishToPersist", () => {
  test("kept, refused and missing are told apart", async () => {
    expect(await wishToPersist({ persisted: async () => true, persist: async () => false })).toBe("kept");
    expect(await wishToPersist({ persist: async () => true })).toBe("kept");
    expect(await wishToPersist({ persist: async () => false })).toBe("refused");
    expect(await wishToPersist({ persist: () => Promise.reject(new Error("no")) })).toBe("refused");
    expect(await wishToPersist({})).toBe("missing");
  });
});

describe("createShaker", () => {
  test("the end shakes otherwise than a tick, and a machine without it stays quiet", () => {
    const shaken: number[][] = [];
    const shaker = createShaker({ vibrate: (pattern) => shaken.push(pattern) > 0 });
    shaker.shake("tick");
    shaker.shake("end");
    expect(shaken[0]).not.toEqual(shaken[1]);
    expect(createShaker({}).possible).toBe(false);
    expect(() => createShaker({}).shake("end")).not.toThrow();
  });
});
