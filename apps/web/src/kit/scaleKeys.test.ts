import { expect, test } from "vitest";
import { keyMove } from "./scaleKeys.ts";

const scale = { least: -6, most: 4, arrow: 1 / 12, page: 1 / 3, home: 0 };
const from = (value: number, key: string) => keyMove({ ...scale, value, key });

test("arrows a twelfth of a stop, page keys a third, Home to the advice [the look's page of parts: cap time]", () => {
  expect(from(0, "ArrowRight")).toBeCloseTo(1 / 12, 9);
  expect(from(0, "ArrowUp")).toBeCloseTo(1 / 12, 9);
  expect(from(1 / 12, "ArrowRight")).toBeCloseTo(2 / 12, 9);
  expect(from(0, "ArrowLeft")).toBeCloseTo(-1 / 12, 9);
  expect(from(-0.5, "PageUp")).toBeCloseTo(-1 / 6, 9);
  expect(from(0, "PageDown")).toBeCloseTo(-1 / 3, 9);
  expect(from(2.7, "Home")).toBe(0);
  expect(from(2.7, "End")).toBe(4);
  expect(from(2.7, "Tab")).toBeUndefined();
});

test("from between two steps a key goes on to the next whole one, and never past the ends [by hand]", () => {
  expect(from(0.1, "ArrowRight")).toBeCloseTo(2 / 12, 9);
  expect(from(0.1, "ArrowLeft")).toBeCloseTo(1 / 12, 9);
  expect(from(4, "ArrowRight")).toBe(4);
  expect(from(-5.9, "PageDown")).toBe(-6);
  expect(keyMove({ ...scale, home: 9, value: 1, key: "Home" })).toBe(4);
});

test("a walk of arrows there and back ends where it began [property]", () => {
  let value = 0;
  for (let i = 0; i < 30; i++) value = from(value, "ArrowRight") ?? Number.NaN;
  expect(value).toBeCloseTo(2.5, 9);
  for (let i = 0; i < 30; i++) value = from(value, "ArrowLeft") ?? Number.NaN;
  expect(value).toBeCloseTo(0, 9);
});
