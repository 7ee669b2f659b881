/** How this device shows things; never in a notebook's log. The light is kept apart, where the first frame can read it. */
export interface Settings {
  readonly lengthUnit: "mm" | "inch";
  readonly temperatureUnit: "celsius" | "fahrenheit";
  readonly sounds: boolean;
}

export interface DeviceState {
  /** Eight characters of 0–9 and a–z in the name of every change made here. */
  readonly device: string;
  readonly ownNotebookId: string;
  readonly lastNotebookId: string;
  readonly settings: Settings;
}

export const firstSettings: Settings = { lengthUnit: "mm", temperatureUnit: "celsius", sounds: true };

/** Reads what the device kept; what cannot be read or is not there yet is drawn anew. */
export function readDeviceState({
  text,
  drawDevice,
  drawId,
}: {
  readonly text: string | undefined;
  readonly drawDevice: () => string;
  readonly drawId: () => string;
}): DeviceState {
  const held = parsed(text);
  const settings = isObject(held.settings) ? held.settings : {};
  const device = named(held.device, /^[0-9a-z]{8}$/) ?? drawDevice();
  const ownNotebookId = named(held.ownNotebookId, /^[0-9A-Za-z]{1,40}$/) ?? drawId();
  return {
    device,
    ownNotebookId,
    lastNotebookId: named(held.lastNotebookId, /^[0-9A-Za-z]{1,40}$/) ?? ownNotebookId,
    settings: {
      lengthUnit: settings.lengthUnit === "inch" ? "inch" : firstSettings.lengthUnit,
      temperatureUnit: settings.temperatureUnit === "fahrenheit" ? "fahrenheit" : firstSettings.temperatureUnit,
      sounds: typeof settings.sounds === "boolean" ? settings.sounds : firstSettings.sounds,
    },
  };
}

function parsed(text: string | undefined): Readonly<Record<string, unknown>> {
  try {
    const held: unknown = JSON.parse(text ?? "{}");
    return isObject(held) ? held : {};
  } catch {
    return {};
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

function named(value: unknown, form: RegExp): string | undefined {
  return typeof value === "string" && form.test(value) ? value : undefined;
}
