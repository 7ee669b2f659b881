import type { RecipeCautions } from "@captray/notebook/answers";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { useReadCautions } from "../../../kit/cautions/useCautions.ts";

export interface CautionListProps {
  readonly cautions: RecipeCautions["whole"];
  readonly checkedOn: string | undefined;
}

/** Cautions of a recipe; what was read in this sitting is left out, what must stay stays. */
export function CautionList({ cautions, checkedOn }: CautionListProps) {
  const read = useReadCautions();
  return (
    <Cautions
      cautions={cautions.filter(({ id, dismissible }) => !dismissible || !read.includes(id))}
      checkedOn={checkedOn}
    />
  );
}
