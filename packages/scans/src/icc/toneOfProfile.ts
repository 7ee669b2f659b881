import { lettersOf, viewOf } from "../bytes/view.ts";
import type { Tone } from "../picture.ts";

const CURVE_POINTS = 1024;

/**
 * What an embedded profile says of tone: its name, and how code becomes linear light, from its grey curve or else its green.
 * A profile that works through tables alone keeps its name and gives no curve.
 *
 * @source icc-1: header, tag table, curveType, parametricCurveType, textDescriptionType, multiLocalizedUnicodeType (from memory)
 */
export function toneOfProfile(profile: Uint8Array): Tone {
  const view = viewOf(profile);
  const tags = new Map<string, { at: number; size: number }>();
  const count = profile.length >= 132 ? view.getUint32(128) : 0;
  for (let i = 0; i < Math.min(count, 200) && 132 + i * 12 + 12 <= profile.length; i++) {
    const at = 132 + i * 12;
    const name = lettersOf(profile.subarray(at, at + 4));
    tags.set(name, { at: view.getUint32(at + 4), size: view.getUint32(at + 8) });
  }
  const part = (name: string): Uint8Array | undefined => {
    const tag = tags.get(name);
    return tag === undefined || tag.size < 12 || tag.at + tag.size > profile.length
      ? undefined
      : profile.subarray(tag.at, tag.at + tag.size);
  };
  const name = nameOf(part("desc"));
  const curve = curveOf(part("kTRC") ?? part("gTRC"));
  return { named: "profile", profile: name === "" ? "without a name" : name, ...curve };
}

function nameOf(part: Uint8Array | undefined): string {
  if (part === undefined) return "";
  const view = viewOf(part);
  const type = lettersOf(part.subarray(0, 4));
  if (type === "desc") return lettersOf(part.subarray(12, 12 + Math.min(view.getUint32(8), 200)));
  if (type !== "mluc" || part.length < 28) return "";
  const length = Math.min(view.getUint32(20), 400);
  const at = view.getUint32(24);
  let text = "";
  for (let i = at; i + 1 < Math.min(at + length, part.length); i += 2) {
    const sign = view.getUint16(i);
    if (sign >= 32 && sign < 0xd800) text += String.fromCharCode(sign);
  }
  return text.trim();
}

function curveOf(part: Uint8Array | undefined): { gamma?: number; curve?: readonly number[] } {
  if (part === undefined) return {};
  const view = viewOf(part);
  const type = lettersOf(part.subarray(0, 4));
  if (type === "curv") {
    const count = view.getUint32(8);
    if (count === 0) return { gamma: 1 };
    if (count === 1) return part.length >= 14 ? gammaOf(view.getUint16(12) / 256) : {};
    if (12 + count * 2 > part.length) return {};
    return risingOnly(Array.from({ length: count }, (_, i) => view.getUint16(12 + i * 2) / 65535));
  }
  if (type !== "para") return {};
  const needs = [1, 3, 4, 5, 7][view.getUint16(8)];
  if (needs === undefined || part.length < 12 + needs * 4) return {};
  const [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = Array.from(
    { length: needs },
    (_, i) => view.getInt32(12 + i * 4) / 65536,
  );
  if (needs === 1) return gammaOf(g);
  const power = (x: number) => Math.max(0, a * x + b) ** g;
  const shape = [
    power,
    (x: number) => (x >= -b / a ? power(x) : 0),
    (x: number) => (x >= -b / a ? power(x) + c : c),
    (x: number) => (x >= d ? power(x) : c * x),
    (x: number) => (x >= d ? power(x) + e : c * x + f),
  ][view.getUint16(8)] as (x: number) => number;
  return risingOnly(Array.from({ length: CURVE_POINTS }, (_, i) => shape(i / (CURVE_POINTS - 1))));
}

const gammaOf = (gamma: number) => (gamma >= 0.1 && gamma <= 10 ? { gamma } : {});

/** A curve that falls, or leads nowhere, says nothing of densities. */
function risingOnly(points: readonly number[]): { curve?: readonly number[] } {
  const sound =
    points.every((point, i) => Number.isFinite(point) && (i === 0 || point >= (points[i - 1] as number))) &&
    (points.at(-1) as number) > (points[0] as number);
  return sound ? { curve: points } : {};
}
