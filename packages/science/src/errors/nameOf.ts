/** Keys whose words are not simply their own: what a photographer calls them. */
const NAMES: Readonly<Record<string, string>> = {
  a0: "fog of the first development (a0)",
  acrossMm: "side across the shift",
  actinicStops: "correction for the colour of the light",
  aimLxS: "exposure aimed at",
  alongMm: "side along the shift",
  area: "area",
  areas: "areas",
  base: "density of the bare patch",
  baseDensity: "density of the bare paper",
  baseProcessed: "density of the patch fixed first",
  baseReflectance: "reflectance of the base",
  biasS: "lean of your hand",
  bleachOnly: "density of the patch bleached only",
  clearLogExposure: "log exposure through the clear negative",
  clickStops: "click of the dial",
  commonSdStops: "doubt common to all areas",
  coneDeg: "cone of the lamp",
  confusionMm: "circle of confusion",
  constant: "pinhole constant",
  coverS: "time to cover the lens",
  Db: "density of the bare base (Db)",
  dialIso: "ISO speed on the dial",
  diameterMm: "diameter of the entrance pupil",
  divisor: "divisor of the diagonal",
  draws: "number of papers drawn",
  errorS: "timing error",
  ev: "exposure value",
  ev100: "exposure value at ISO 100",
  exponent: "reciprocity exponent",
  exposureConstant: "constant of the camera equation",
  filterStops: "stops of the filter",
  flareFraction: "share of flare",
  flareLxS: "flare",
  flashLxS: "flash",
  flashS: "time of the flash",
  fNumber: "f-number",
  fNumberFactor: "factor of the f-number",
  focusShare: "share of the focal length by which blue comes to focus nearer",
  fogged: "density of the fogged patch",
  fr: "flash in lx·s per second (fr)",
  fraction: "share",
  fromS: "time from which the paper loses speed",
  glassMm: "clear glass",
  halfAngleDeg: "half angle of view",
  hiatusMm: "distance between the principal planes",
  highlightDensity: "density wanted in the highlight",
  highlightLxS: "exposure of the highlight",
  highLxS: "exposure of the lightest part",
  holeMm: "hole",
  hourUtc: "hour (UTC)",
  illuminanceLx: "light on the subject",
  imageSizeMm: "size on the ground glass",
  internal: "transmission inside the glass",
  iso: "ISO speed",
  k1: "silver left by one round of bleach (k1)",
  latitudeDeg: "latitude",
  layerDensity: "density of the silver layer",
  logExposure: "log exposures",
  longitudeEastDeg: "longitude",
  lowLxS: "exposure of the darkest part",
  luminanceCdM2: "luminance",
  m1: "share missed by the first development (m1)",
  m2: "share missed by the second development (m2)",
  markedFNumber: "f-number as marked",
  meanLogExposure: "log of the mean exposure",
  meanLxS: "mean exposure",
  meterC: "meter constant C",
  meterCdM2: "luminance by the meter",
  meteredTimeS: "metered time",
  meterK: "meter constant K",
  minimumTimeS: "shortest time",
  motorSdS: "unevenness of your hand",
  neutralDensity: "density of the neutral filter",
  offAxisDeg: "angle off the axis",
  offsetStops: "correction of the meter",
  openingBiasS: "lean of one opening",
  openings: "number of openings",
  openingSdS: "unevenness of one opening",
  openingTimeS: "time of one opening",
  paperSpeed: "paper speed (ISO P)",
  patchSd: "unevenness of a patch",
  phi: "flare (phi)",
  pictureCdM2: "luminance by the picture",
  placeStops: "placing",
  pupilRatio: "pupil ratio",
  q: "asymmetry of the curve (q)",
  range: "range of the paper (ISO R)",
  readingFNumber: "f-number of the reading",
  readingTimeS: "time of the reading",
  reciprocityExponent: "reciprocity exponent",
  reciprocityFromS: "time from which the paper loses speed",
  roundingS: "rounding of the time you said",
  rounds: "number of bleach rounds",
  S: "density of the whole coating (S)",
  s: "stain (s)",
  saidRoundingS: "rounding of the time you said",
  saidTimeS: "time you said",
  separationMm: "distance between the lenses",
  shadowDensity: "density wanted in the shadow",
  shadowLxS: "exposure of the shadow",
  shoulderLxS: "exposure at the shoulder",
  source: "light",
  speedPointLxS: "exposure at the speed point",
  stopDistanceMm: "distance of the stop from the lens",
  surface: "light from the first surface",
  surfaces: "number of glass surfaces",
  timeS: "time",
  toeLxS: "exposure at the toe",
  toleranceStops: "tolerance",
  totalDistanceMm: "distance from subject to paper",
  travelMm: "travel of the bellows",
  u1: "dose of the first development (u1)",
  u2: "dose of the second development (u2)",
  uncoverS: "time to uncover the lens",
  usNumber: "U.S. number",
  vd: "speed gained by development (vd)",
  weber: "share by which your hand varies",
  width: "width of the curve",
  x50: "log exposure of half development (x50)",
};

const NAMES_OF_LISTS: Readonly<Record<string, string>> = {
  density: "densities",
  evs: "exposure values",
  fNumbers: "f-numbers",
  layerDensity: "layer densities",
  logExposure: "log exposures",
  luminancesCdM2: "luminances",
  offsetsStops: "offsets",
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
