import type { Holder, PaperBox } from "../records/index.ts";
import type { LoadingDoubt } from "./planLoading.ts";

/** What is to be said of a loading before it is planned: too few sheets by the count, or a box of another size. */
export function loadingDoubts({
  holders,
  sideIds,
  paperBox,
}: {
  readonly holders: readonly Holder[];
  readonly sideIds: readonly string[];
  readonly paperBox: PaperBox;
}): readonly LoadingDoubt[] {
  const doubts: LoadingDoubt[] = [];
  const { sheetsLeft, size } = paperBox;
  if (sheetsLeft !== undefined && sheetsLeft < sideIds.length) {
    doubts.push({ kind: "fewLeft", left: sheetsLeft, wanted: sideIds.length });
  }
  const wanted = holders.filter(({ sides }) => sides.some(({ id }) => sideIds.includes(id)));
  const other = wanted.find(({ format }) => size && format && !sameSize(size, format));
  if (other) doubts.push({ kind: "otherSize", holder: other, paperBox });
  return doubts;
}

type Size = NonNullable<PaperBox["size"]>;

/** Upright or lying, to 3 mm: paper is cut, and named, to about as much. */
function sameSize(a: Size, b: Size): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) <= 3;
  return (
    (near(a.widthMm, b.widthMm) && near(a.heightMm, b.heightMm)) ||
    (near(a.widthMm, b.heightMm) && near(a.heightMm, b.widthMm))
  );
}
