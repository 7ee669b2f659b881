import { describe, expect, test } from "vitest";
import { pressKey } from "./pressKeys.ts";

const plain = {
  key: "b",
  repeat: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  isComposing: false,
  target: null,
};
/** An element that answers `closest` for the selectors it stands in. */
const inside = (...names: string[]) => ({
  closest: (selector: string) => (selector.split(",").some((one) => names.includes(one.trim())) ? {} : null),
});

describe("pressKey", () => {
  test.each(["b", "1", "PageDown", "PageUp", "ArrowRight", "Enter", " ", "Home", ".", "MediaPlayPause"])(
    "%s, as a foot pedal may send it, is the press [common practice, no source]",
    (key) => expect(pressKey({ ...plain, key })).toBe("press"),
  );

  test.each(["Tab", "Escape", "Backspace", "Shift", "F5", "F12", "AudioVolumeUp"])("%s keeps its own meaning", (key) =>
    expect(pressKey({ ...plain, key })).toBe("left"),
  );

  test("a key held down is one press", () => {
    expect(pressKey({ ...plain, repeat: true })).toBe("swallowed");
    expect(pressKey({ ...plain, key: "Enter", repeat: true, target: inside("button", "[data-press]") })).toBe(
      "swallowed",
    );
  });

  test("a shortcut of the browser is not a press", () => {
    expect(pressKey({ ...plain, ctrlKey: true })).toBe("left");
    expect(pressKey({ ...plain, metaKey: true })).toBe("left");
  });

  test("Space and Enter belong to the button that has the focus, other keys to the big target", () => {
    const onFoot = inside("button");
    expect(pressKey({ ...plain, key: " ", target: onFoot })).toBe("left");
    expect(pressKey({ ...plain, key: "Enter", target: onFoot })).toBe("left");
    expect(pressKey({ ...plain, key: "b", target: onFoot })).toBe("press");
    expect(pressKey({ ...plain, key: " ", target: inside("button", "[data-press]") })).toBe("press");
  });

  test("what is typed into a field is no press", () => {
    expect(pressKey({ ...plain, key: "4", target: inside("input") })).toBe("left");
  });
});
