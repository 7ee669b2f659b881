import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";

/** The address names a thing that is not there. */
export function Absent({ thing }: { readonly thing: string }) {
  return (
    <Page title="Shelf">
      <NothingYet way={<Word to="/shelf">To the shelf</Word>}>This {thing} is not on the shelf.</NothingYet>
    </Page>
  );
}
