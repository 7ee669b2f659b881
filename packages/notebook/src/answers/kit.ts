import type { ExposureIndex, FlashLamp, Hand, Lens, Meter, PaperBox, Recipe, Scene } from "../records/index.ts";

/** The records a cap time is worked out from. What is not known yet is left out, and the answer says what it misses. */
export interface Kit {
  readonly scene: Scene;
  readonly lens?: Lens | undefined;
  readonly meter?: Meter | undefined;
  readonly paperBox?: PaperBox | undefined;
  readonly exposureIndex?: ExposureIndex | undefined;
  readonly hand?: Hand | undefined;
  readonly recipe?: Recipe | undefined;
  /** The flash planned for the sheet, else wished for the scene. */
  readonly flash?: Scene["flash"] | undefined;
  /** The set-up that it is to come from. */
  readonly flashLamp?: FlashLamp | undefined;
  /** The meter that an exposure index of one's own sheets was found with, where it is another one. */
  readonly meterThen?: Meter | undefined;
}
