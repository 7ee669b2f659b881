import type { Scene } from "@captray/notebook/records";
import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { Page } from "../../kit/Page.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { readingWords } from "./scene/sceneView.ts";
import { useShelfView } from "./useShelfView.ts";
import "./CameraHome.css";

/** The Camera room's door: a reading now, and the scenes read before. */
export default function CameraHome() {
  const { scenes } = useShelfView();
  return (
    <Page title="Camera">
      <div className="Camera-Home">
        <Button main wide aside="seven fields, a time" onPress={() => goTo({ path: "/camera/now" })}>
          I have a reading now
        </Button>
        <Word to="/camera/flash">Flash: lamps and their strips</Word>
        <Section head="Scenes">
          {scenes.length === 0 ? (
            <NothingYet>
              A scene is a subject with its readings. The first one comes by itself with the first reading, and stands
              here for another sheet of it.
            </NothingYet>
          ) : (
            <ul className="Camera-Home-scenes">
              {[...scenes].reverse().map((scene) => (
                <li key={scene.id}>
                  <a href={`#/camera/${scene.id}`}>
                    <b>{scene.subject === "" ? "Scene without a name" : scene.subject}</b>
                    <span className="soft">{sceneWords(scene)}</span>
                  </a>
                </li>
              ))}
            </ul>
          )}
        </Section>
      </div>
    </Page>
  );
}

const dates = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" });

function sceneWords(scene: Scene): string {
  const placed = scene.areas.find((area) => area.id === scene.place?.areaId) ?? scene.areas[0];
  const reading = scene.readings.find((one) => one.id === placed?.readingId);
  const when = reading?.takenAt === undefined ? "" : `, ${dates.format(reading.takenAt.at)}`;
  const areas = scene.areas.length > 1 ? `, ${scene.areas.length} areas` : "";
  return `${readingWords(reading?.reading)}${areas}${when}`;
}
