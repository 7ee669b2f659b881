/** Keys whose words are not simply their own: what a photographer calls them. */
const NAMES: Readonly<Record<string, string>> = {
  actinicStops: "correction for the colour of the light",
  acrossMm: "side across the shift",
  aimLxS: "exposure aimed at",
  alongMm: "side along the shift",
  area: "area",
  areas: "areas",
  biasS: "lean of your hand",
  clickStops: "click of the dial",
  coneDeg: "cone of the lamp",
  confusionMm: "circle of confusion",
  constant: "pinhole constant",
  coverS: "time to cover the lens",
  diameterMm: "diameter of the entrance pupil",
  dialIso: "ISO speed on the dial",
  divisor: "divisor of the diagonal",
  errorS: "timing error",
  ev: "exposure value",
  ev100: "exposure value at ISO 100",
  exponent: "reciprocity exponent",
  exposureConstant: "constant of the camera equation",
  fNumber: "f-number",
  fNumberFactor: "factor of the f-number",
  flareFraction: "share of flare",
  flareLxS: "flare",
  flashLxS: "flash",
  focusShare: "share of the focal length by which blue comes to focus nearer",
  fraction: "share",
  fromS: "time from which the paper loses speed",
  glassMm: "clear glass",
  halfAngleDeg: "half angle of view",
  hiatusMm: "distance between the principal planes",
  highLxS: "exposure of the lightest part",
  holeMm: "hole",
  hourUtc: "hour (UTC)",
  illuminanceLx: "light on the subject",
  imageSizeMm: "size on the ground glass",
  internal: "transmission inside the glass",
  iso: "ISO speed",
  logExposure: "log exposures",
  longitudeEastDeg: "longitude",
  latitudeDeg: "latitude",
  lowLxS: "exposure of the darkest part",
  luminanceCdM2: "luminance",
  markedFNumber: "f-number as marked",
  meanLxS: "mean exposure",
  meterC: "meter constant C",
  meterCdM2: "luminance by the meter",
  meterK: "meter constant K",
  meteredTimeS: "metered time",
  minimumTimeS: "shortest time",
  motorSdS: "unevenness of your hand",
  neutralDensity: "density of the neutral filter",
  offAxisDeg: "angle off the axis",
  offsetStops: "correction of the meter",
  openingBiasS: "lean of one opening",
  openingSdS: "unevenness of one opening",
  openingTimeS: "time of one opening",
  openings: "number of openings",
  paperSpeed: "paper speed (ISO P)",
  pictureCdM2: "luminance by the picture",
  placeStops: "placing",
  pupilRatio: "pupil ratio",
  reciprocityExponent: "reciprocity exponent",
  reciprocityFromS: "time from which the paper loses speed",
  readingFNumber: "f-number of the reading",
  readingTimeS: "time of the reading",
  saidRoundingS: "rounding of the time you said",
  roundingS: "rounding of the time you said",
  saidTimeS: "time you said",
  separationMm: "distance between the lenses",
  shoulderLxS: "exposure at the shoulder",
  source: "light",
  speedPointLxS: "exposure at the speed point",
  stopDistanceMm: "distance of the stop from the lens",
  surfaces: "number of glass surfaces",
  timeS: "time",
  toeLxS: "exposure at the toe",
  toleranceStops: "tolerance",
  totalDistanceMm: "distance from subject to paper",
  travelMm: "travel of the bellows",
  uncoverS: "time to uncover the lens",
  usNumber: "U.S. number",
  weber: "share by which your hand varies",
};

const NAMES_OF_LISTS: Readonly<Record<string, string>> = {
  density: "densities",
  evs: "exposure values",
  fNumbers: "f-numbers",
  logExposure: "log exposures",
  luminancesCdM2: "luminances",
};

/** Units at the end of a key, longest first; they stand with the value, not in the name. */
const UNITS = /(?:CdM2|PerMm|LxS|Stops|Deg|Mm|Um|Nm|Lx|Cd|Lm|Ms|M|S|K)$/;

/**
 * What a key of the input is called in a sentence: extension for `focus/extensionMm`, second of the readings for
 * `readings/1`. Inner helper of the words.
 */
export function nameOf(path: string): string {
  const parts = path.split("/").filter((part) => part !== "");
  const last = parts.at(-1) ?? "";
  if (/^\d+$/.test(last)) {
    const list = parts.slice(0, -1).findLast((part) => !/^\d+$/.test(part)) ?? "list";
    return `number ${Number(last) + 1} of the ${listName(list)}`;
  }
  return own(NAMES, last) ?? spaced(last);
}

/** The word for a list as a whole. */
export function listName(path: string): string {
  const last = path.split("/").at(-1) ?? "";
  return own(NAMES_OF_LISTS, last) ?? own(NAMES, last) ?? spaced(last);
}

function spaced(key: string): string {
  const doubt = /^(.*)Sd([A-Z]\w*)?$/.exec(key);
  if (doubt?.[1]) return `doubt of the ${nameOf(doubt[1])}`;
  if (key === "sd" || /^sd[A-Z]/.test(key)) return "doubt";
  const bare = key.replace(UNITS, "");
  return (bare === "" ? key : bare).replace(/([a-z\d])([A-Z])/g, "$1 $2").toLowerCase();
}

function own(names: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(names, key) ? names[key] : undefined;
}
