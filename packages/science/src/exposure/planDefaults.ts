/**
 * What `plan` takes for granted where nothing was said: one table for the terminal, the notebook and the screens.
 *
 * The doubts (sd, in stops) are common practice and a person may change them; nothing here was measured by anybody.
 */
export const planDefaults = {
  lens: {
    kind: "lens",
    pupilRatio: 1,
    transmission: 0.9,
    transmissionSdStops: 0.1,
    /** Of a measured aperture; of one marked on the lens `markedApertureSdStops`. */
    apertureSdStops: 0.07,
    markedApertureSdStops: 0.1,
    glass: "standard",
  },
  pinhole: { transmission: 1, transmissionSdStops: 0, apertureSdStops: 0.07, glass: "none" },
  /** `sdStops` is 0 where the magnification is 0. */
  focus: { hiatusMm: 0, larger: false, sdStops: 0.05 },
  paper: { exposureIndexSdStops: 0.7, sensitivity: "blue", reciprocity: { fromS: 1 } },
  /** Without a word, how an index was found says how sure it is. */
  exposureIndexSdStops: { guessed: 0.7, told: 0.5, stepTest: 0.3, threeSheets: 0.15 },
  /** First guesses for a box nobody has tested. */
  exposureIndex: { negative: 2, directPositive: 0.7 },
  reading: { kind: "reflected" },
  place: { stops: 0 },
  meter: {
    meterK: 12.5,
    meterC: 250,
    sdStops: 0.1,
    incidentSdStops: 0.33,
    readingSdStops: 0.15,
    offsetStops: 0,
    clickStops: 1,
  },
  filter: { sdStops: 0 },
  hand: { biasS: 0, motorSdS: 0.1, weber: 0.05, errorS: 0.3, toleranceStops: 1 / 3 },
} as const;
