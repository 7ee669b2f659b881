import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { SceneLineLink } from "./SceneLineLink.tsx";
import { useScenes } from "./useScenes.ts";

/** Every scene by itself: begun from nothing, read or not, with the sheets made of it. */
export default function Scenes() {
  const { lines, away, onNew, onCopy, onAway, onBack } = useScenes();
  const [shown, setShown] = useState(false);
  return (
    <Page title="Scenes" closeTo="/camera">
      <div className="Camera-Scenes">
        <Button main wide aside="set-up first" onPress={onNew}>
          A new scene
        </Button>
        {lines.length === 0 ? (
          <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
            A scene is a subject with its set-up and its readings. Plan one before you go out, or let the first reading
            make it.
          </NothingYet>
        ) : (
          <ul>
            {lines.map((line) => (
              <li key={line.id}>
                <SceneLineLink line={line} />
                <span className="Camera-Scenes-acts">
                  <Word onPress={() => onCopy(line.id)} spoken={`Copy ${line.subject} as a new scene`}>
                    Copy as a new scene
                  </Word>
                  <Word onPress={() => onAway(line.id)} spoken={`Put ${line.subject} away`}>
                    Put away
                  </Word>
                </span>
              </li>
            ))}
          </ul>
        )}
        {away.length > 0 && (
          <Section head="Put away" aside={String(away.length)}>
            <Word onPress={() => setShown(!shown)}>{shown ? "Fold them" : "Show them"}</Word>
            {shown && (
              <ul>
                {away.map((line) => (
                  <li key={line.id}>
                    <span>
                      <b>{line.subject}</b> <span className="soft">{line.sheets}</span>
                    </span>
                    <Word onPress={() => onBack(line.id)} spoken={`Fetch ${line.subject} back`}>
                      Fetch it back
                    </Word>
                  </li>
                ))}
              </ul>
            )}
          </Section>
        )}
      </div>
    </Page>
  );
}
