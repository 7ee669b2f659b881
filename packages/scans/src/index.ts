export { openPicture } from "./openPicture.ts";
export { type OverviewInput, overview } from "./overview.ts";
export type { ByteSource, Codes, DecodedJpeg, Decoders, Picture, PictureInfo, Stop, Tone, Window } from "./picture.ts";
export { type PictureFault, PictureProblem } from "./pictureProblem.ts";
export { type ReadWindowsInput, readWindows } from "./readWindows.ts";
