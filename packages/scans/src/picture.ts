/** Bytes that are read piece by piece: a file, a Blob, a folder of the notebook. */
export interface ByteSource {
  readonly size: number;
  /** The bytes from `offset` on, `length` of them; fewer only where the file ends. They belong to the reader, who may change them. */
  readonly read: (offset: number, length: number) => Promise<Uint8Array>;
}

/** 8-bit samples of a decoded JPEG, interleaved: one (grey) or three (red, green, blue) a pixel. */
export interface DecodedJpeg {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly samples: 1 | 3;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** What a reader needs of the machine, handed in: it does nothing outside itself. */
export interface Decoders {
  /** Unpacks one zlib stream (RFC 1950), as it comes. Whoever reads may stop early. */
  readonly inflate: (pieces: AsyncIterable<Uint8Array>) => AsyncIterable<Uint8Array>;
  /** Decodes one whole JPEG as stored: not turned, no profile applied, its long side at most `longSidePx`. */
  readonly decodeJpeg?: (bytes: Uint8Array, longSidePx: number) => Promise<DecodedJpeg>;
}

/** What the file itself says about how its codes stand for light. */
export type Tone =
  | { readonly named: "srgb" }
  | { readonly named: "gamma"; readonly gamma: number }
  /** An embedded profile: its name, and the curve of its grey or green from code to linear light, 0 to 1. */
  | { readonly named: "profile"; readonly profile: string; readonly gamma?: number; readonly curve?: readonly number[] }
  | { readonly named: "nothing" };

export interface PictureInfo {
  readonly format: "tiff" | "png" | "jpeg";
  /** Upright, as it is looked at; of a reduced JPEG the reduced size. */
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bits: 8 | 16;
  readonly kind: "grey" | "rgb";
  /** There is a channel beside the colours; it is not read. */
  readonly alpha: boolean;
  readonly compression: "none" | "lzw" | "deflate" | "packBits" | "jpeg";
  /** How the stored picture is turned to stand upright: 1 to 8, as TIFF and Exif number it. */
  readonly orientation: number;
  readonly tone: Tone;
  /** Pixels an inch, where the file says so. */
  readonly dpi?: number;
  /** The scanner and its program, in the file's own words. */
  readonly madeBy?: string;
  /** The size stored in the file, where less of it was decoded. */
  readonly reducedFrom?: { readonly widthPx: number; readonly heightPx: number };
}

/** Whole pixels of the upright picture, counted from its top left. */
export interface Window {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The codes of a window, upright: row by row, `samples` a pixel (grey 1, rgb 3), 0 to 255 or 65535. */
export interface Codes extends Window {
  readonly samples: 1 | 3;
  readonly data: Uint8Array | Uint16Array;
}

/** A word to stop at: an AbortSignal, or anything that says so. */
export interface Stop {
  readonly aborted: boolean;
}

/** Rows of a block that are wanted, counted from the block's own top: from … up to, not including, `to`. */
export interface Rows {
  readonly from: number;
  readonly to: number;
}

/** A strip or a tile as stored: its place in the stored picture. */
export interface Block {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** The first channel in it, and how many: all of them, or one where channels are stored apart. */
  readonly channel: number;
  readonly channels: number;
}

/** Some rows of a block: `data` holds `block.channels` samples a pixel. It is good only until the next rows come. */
export interface BlockRows {
  readonly row: number;
  readonly rows: number;
  readonly data: Uint8Array | Uint16Array;
}

/** An opened picture: what it says of itself, and how its blocks are had. */
export interface Picture {
  readonly info: PictureInfo;
  /** As stored, before it is turned upright. */
  readonly stored: { readonly widthPx: number; readonly heightPx: number; readonly channels: number };
  /** Highest code stands for black. */
  readonly inverted: boolean;
  /** Rows can be had from anywhere in a block without reading those above. */
  readonly seeks: boolean;
  readonly blocks: readonly Block[];
  /** Gives the wanted rows of a block, in their order: `wanted` rises and does not overlap. */
  readonly rowsOf: (block: Block, wanted: readonly Rows[], stop?: Stop) => AsyncIterable<BlockRows>;
}
