import { type CueKind, setCue } from "./cueSounds.ts";

/** Sounds one cue at once; false where this machine has no sound, or keeps it back. */
export type Tone = (kind: CueKind) => boolean;

/** A loudspeaker that is made at the first tone, which has to follow a press. */
export function createTone(contextOf: () => AudioContext = () => new AudioContext()): Tone {
  let context: AudioContext | undefined;
  return (kind) => {
    try {
      context ??= contextOf();
      void context.resume().catch(() => undefined);
      setCue({ context, out: context.destination, kind, atS: context.currentTime + 0.02 });
      return true;
    } catch {
      return false;
    }
  };
}
