import type { ExposureIndex, Hand, Lens, Meter, PaperBox, Scene } from "../records/index.ts";

/** The records a cap time is worked out from. What is not known yet is left out, and the answer says what it misses. */
export interface Kit {
  readonly scene: Scene;
  readonly lens?: Lens | undefined;
  readonly meter?: Meter | undefined;
  readonly paperBox?: PaperBox | undefined;
  readonly exposureIndex?: ExposureIndex | undefined;
  readonly hand?: Hand | undefined;
  /** The meter that an exposure index of one's own sheets was found with, where it is another one. */
  readonly meterThen?: Meter | undefined;
}
