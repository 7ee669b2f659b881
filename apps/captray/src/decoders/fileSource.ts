import { open } from "node:fs/promises";
import type { ByteSource } from "@captray/scans";

/** A file, read piece by piece; `bytesRead` says how much of it was. Close it when done. */
export interface FileSource extends ByteSource {
  readonly bytesRead: () => number;
  readonly close: () => Promise<void>;
}

/** Opens a file to be read piece by piece. */
export async function fileSource(path: string): Promise<FileSource> {
  const file = await open(path, "r");
  const stat = await file.stat();
  if (!stat.isFile()) {
    await file.close();
    throw new Error(`${path} is no file`);
  }
  const { size } = stat;
  let bytesRead = 0;
  return {
    size,
    bytesRead: () => bytesRead,
    close: () => file.close(),
    read: async (offset, length) => {
      const room = Buffer.allocUnsafeSlow(Math.max(0, Math.min(length, size - offset)));
      let filled = 0;
      while (filled < room.length) {
        const { bytesRead: got } = await file.read(room, filled, room.length - filled, offset + filled);
        if (got === 0) break;
        filled += got;
      }
      bytesRead += filled;
      return new Uint8Array(room.buffer, room.byteOffset, filled);
    },
  };
}
