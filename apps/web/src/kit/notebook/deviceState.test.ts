import { expect, test } from "vitest";
import { firstSettings, readDeviceState } from "./deviceState.ts";

const drawn = { drawDevice: () => "boatyard", drawId: () => "winter" };

test("a first visit draws the device's name and its notebook's, and starts in mm and °C", () => {
  expect(readDeviceState({ text: undefined, ...drawn })).toEqual({
    device: "boatyard",
    ownNotebookId: "winter",
    lastNotebookId: "winter",
    settings: firstSettings,
  });
});

test("what was kept is read as it was written [write and read]", () => {
  const kept = {
    device: "darkroom",
    ownNotebookId: "slip",
    lastNotebookId: "demo",
    settings: { lengthUnit: "inch", temperatureUnit: "fahrenheit", sounds: false },
  };
  expect(readDeviceState({ text: JSON.stringify(kept), ...drawn })).toEqual(kept);
});

test("what does not read is drawn anew, and the rest stays", () => {
  for (const text of ["", "{", "7", "null", '{"device":"x"}', '{"settings":7}', '{"ownNotebookId":"../else"}']) {
    expect(readDeviceState({ text, ...drawn }).device).toBe("boatyard");
    expect(readDeviceState({ text, ...drawn }).ownNotebookId).toBe("winter");
  }
  expect(readDeviceState({ text: '{"device":"darkroom","settings":{"sounds":"loud"}}', ...drawn })).toMatchObject({
    device: "darkroom",
    settings: firstSettings,
  });
});
