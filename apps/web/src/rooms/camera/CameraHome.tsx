import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { Page } from "../../kit/Page.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { SceneLineLink } from "./scenes/SceneLineLink.tsx";
import { useScenes } from "./scenes/useScenes.ts";
import "./CameraHome.css";

const mostShown = 6;

/** The Camera room's door: a reading now, a scene planned first, and the scenes there are. */
export default function CameraHome() {
  const { lines, away, onNew } = useScenes();
  return (
    <Page title="Camera">
      <div className="Camera-Home">
        <Button main wide aside="seven fields, a time" onPress={() => goTo({ path: "/camera/now" })}>
          I have a reading now
        </Button>
        <Button wide aside="set-up first, read later" onPress={onNew}>
          A new scene
        </Button>
        <Word to="/camera/flash">Flash: lamps and their strips</Word>
        <Section
          head="Scenes"
          aside={lines.length > mostShown ? `the last ${mostShown} of ${lines.length}` : undefined}
        >
          {lines.length === 0 ? (
            <NothingYet>
              A scene is a subject with its readings. The first one comes by itself with the first reading, and stands
              here for another sheet of it.
            </NothingYet>
          ) : (
            <ul className="Camera-Home-scenes">
              {lines.slice(0, mostShown).map((line) => (
                <li key={line.id}>
                  <SceneLineLink line={line} />
                </li>
              ))}
            </ul>
          )}
          {lines.length + away.length > 0 && <Word to="/camera/scenes">All scenes: copy, put away</Word>}
        </Section>
      </div>
    </Page>
  );
}
