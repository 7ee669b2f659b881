export type ReducedPhotograph =
  | { readonly kind: "photograph"; readonly dataAddress: string }
  /** No picture this browser can read, or one that stays too large however it is reduced. */
  | { readonly kind: "unreadable" }
  | { readonly kind: "tooLarge" };

const longSidePx = [1000, 800, 600] as const;
const qualities = [0.8, 0.65, 0.5] as const;
/** A file larger than this is no photograph of a phone, and would fill the memory of one. */
const mostFileBytes = 80_000_000;

/**
 * Makes a photograph small enough to be kept in the notebook: at most 1000 points long, as a JPEG, upright as it was taken, and without
 * what cameras write beside it (place, hour, name).
 */
export async function reducePhotograph({
  file,
  mostBytes,
}: {
  readonly file: Blob;
  readonly mostBytes: number;
}): Promise<ReducedPhotograph> {
  if (file.size > mostFileBytes) return { kind: "tooLarge" };
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (picture === undefined || picture.width === 0 || picture.height === 0) return { kind: "unreadable" };
  try {
    for (const most of longSidePx) {
      const scale = Math.min(1, most / Math.max(picture.width, picture.height));
      const canvas = new OffscreenCanvas(
        Math.max(1, Math.round(picture.width * scale)),
        Math.max(1, Math.round(picture.height * scale)),
      );
      const drawing = canvas.getContext("2d");
      if (drawing === null) return { kind: "unreadable" };
      // What is see-through in a drawing would turn black in a JPEG.
      drawing.fillStyle = "#ffffff";
      drawing.fillRect(0, 0, canvas.width, canvas.height);
      drawing.drawImage(picture, 0, 0, canvas.width, canvas.height);
      for (const quality of qualities) {
        const small = await canvas.convertToBlob({ type: "image/jpeg", quality });
        if (small.type !== "image/jpeg") return { kind: "unreadable" };
        if (small.size <= mostBytes)
          return { kind: "photograph", dataAddress: `data:image/jpeg;base64,${base64(await small.arrayBuffer())}` };
      }
    }
  } catch {
    return { kind: "unreadable" };
  } finally {
    picture.close();
  }
  return { kind: "tooLarge" };
}

function base64(bytes: ArrayBuffer): string {
  let text = "";
  for (const byte of new Uint8Array(bytes)) text += String.fromCharCode(byte);
  return btoa(text);
}
