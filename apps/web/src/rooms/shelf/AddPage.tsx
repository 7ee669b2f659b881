import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { Page } from "../../kit/Page.tsx";
import "./Shelf.css";

const things = [
  { to: "/shelf/box/new", word: "A box of paper", asks: "a name, how many sheets" },
  { to: "/shelf/lens/new", word: "A lens or a pinhole", asks: "focal length, f-number" },
  { to: "/shelf/camera/new", word: "A camera", asks: "its format, its bellows" },
  { to: "/shelf/holder/new", word: "A holder", asks: "its sides" },
  { to: "/shelf/meter/new", word: "A light meter", asks: "where its dial begins" },
  { to: "/shelf/recipes", word: "A recipe for the trays", asks: "a frame to start from" },
  { to: "/shelf/lamp/new", word: "A lamp for the subject", asks: "what glows in it" },
] as const;

/** What can be put on the shelf; each takes less than a minute, and can be said better later. */
export default function AddPage() {
  return (
    <Page title="Put something on the shelf" closeTo="/shelf">
      <p className="say Shelf-Add-say">
        Each takes less than a minute. What you leave out is taken for granted and said so; it can be put right whenever
        you know better.
      </p>
      <div className="Shelf-Add">
        {things.map(({ to, word, asks }) => (
          <Button key={to} wide aside={asks} onPress={() => goTo({ path: to })}>
            {word}
          </Button>
        ))}
      </div>
    </Page>
  );
}
