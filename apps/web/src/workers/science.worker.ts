/** A switchboard: long sums of the science, off the page's own thread. A question has a number, its answer bears the same. */
import { OutOfDomain } from "@captray/science/errors";
import { type DrawnPapers, type DrawPapersInput, drawPapers } from "@captray/science/tone";

declare const self: DedicatedWorkerGlobalScope;

self.addEventListener(
  "message",
  ({ data }: MessageEvent<{ readonly number: number; readonly input: DrawPapersInput }>) => {
    const { number, input } = data;
    try {
      const papers = drawPapers(input);
      // The tables change hands instead of being copied.
      self.postMessage({ number, papers }, tablesOf(papers));
    } catch (fault) {
      if (!(fault instanceof OutOfDomain)) throw fault;
      // Whoever asked finds out by asking again, and then has the whole refusal with its class.
      self.postMessage({ number });
    }
  },
);

function tablesOf({ curves, lightFactors, patchErrors, band }: DrawnPapers): Transferable[] {
  const tables = [curves.facts, curves.densities, lightFactors, patchErrors];
  return [...tables, band.logExposure, band.density, band.low, band.high].map(({ buffer }) => buffer as ArrayBuffer);
}
