import { OutOfDomain } from "@captray/science/errors";
import { actinicSd, actinicStops } from "@captray/science/light";
import type { Kit } from "./kit.ts";
import { supposedSource } from "./planInputOf.ts";

/** Beyond this the model has only the tail of the paper's response left. */
const farthestStops = 4;

export interface LightFor {
  readonly source: string;
  /** What the meter misjudges: + is more time than it says. Nothing where the paper hardly sees this light. */
  readonly stops: { readonly value: number; readonly sd: number } | undefined;
  /** At least so much more time, where it is only a bound. */
  readonly atLeastStops: number | undefined;
}

export interface LightOf {
  /** The light the scene says; supposed where it says none. */
  readonly source: string;
  readonly supposed: boolean;
  /** The light the exposure index holds already; nothing for one told or guessed, which is taken for daylight. */
  readonly thenSource: string | undefined;
  readonly sensitivity: NonNullable<NonNullable<Kit["paperBox"]>["sensitivity"]>;
  readonly lights: readonly LightFor[];
}

/**
 * What a meter misjudges of each of some lights for this paper and glass, as the ledger's line of the colour would charge it.
 *
 * An index found with own sheets holds the light it was found in: only the change from that one is charged.
 */
export function lightOf({ kit, sources }: { readonly kit: Kit; readonly sources: readonly string[] }): LightOf {
  const { scene, lens, paperBox, exposureIndex } = kit;
  const found = exposureIndex?.found;
  const sensitivity = paperBox?.sensitivity ?? "blue";
  const paper = sensitivity === "blue" ? "chlorobromide" : sensitivity;
  const glass = lens?.glass ?? (lens?.sort === "pinhole" ? "none" : "standard");
  const thenSource = found?.how === "ownSheets" ? found.source : undefined;
  const thenGlass = (found?.how === "ownSheets" ? found.glass : undefined) ?? glass;
  const then = thenSource === undefined ? 0 : actinicStops({ source: thenSource, paper, lens: thenGlass });
  return {
    source: scene.light?.source ?? thenSource ?? supposedSource,
    supposed: scene.light === undefined,
    thenSource,
    sensitivity,
    lights: sources.flatMap((source): LightFor[] => {
      try {
        const now = actinicStops({ source, paper, lens: glass });
        if (Math.abs(now) > farthestStops) return [{ source, stops: undefined, atLeastStops: farthestStops + then }];
        const sd = actinicSd({
          source,
          paper: sensitivity,
          lens: glass,
          ...(thenSource !== undefined && { foundSource: thenSource, foundLens: thenGlass }),
        });
        return [{ source, stops: { value: then - now, sd }, atLeastStops: undefined }];
      } catch (fault) {
        // A lamp of the shelf may have a temperature that no table reaches: it is then not offered.
        if (fault instanceof OutOfDomain) return [];
        throw fault;
      }
    }),
  };
}
