import { useState, useSyncExternalStore } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Caution } from "../../../kit/Caution.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { turnLight } from "../../../look/light.ts";
import { readVoice, speaker, writeVoice } from "./darkDevices.ts";
import { voiceWords } from "./darkView.ts";

/** What is to be ready before the dark, how it is read out, and the press that begins it. */
export function ReadingOut({ waits }: { readonly waits: string | undefined }) {
  const [voice, setVoice] = useState(readVoice);
  const speech = useSyncExternalStore(speaker.follow, speaker.state);
  return (
    <>
      <p className="say">
        Turn each empty side’s slide so that its <b>unexposed face</b> is out, commonly the white or bright one. After
        the exposure it goes back in with the other face out. Where yours are marked otherwise, keep to your own way.
      </p>
      <Choice
        label="It is read out"
        value={voice ? "voice" : "silent"}
        onChoose={(chosen) => {
          setVoice(chosen === "voice");
          writeVoice(chosen === "voice");
        }}
        options={[
          { value: "voice", name: "aloud", detail: voiceWords(speech) },
          { value: "silent", name: "on the screen only", detail: "no sound" },
        ]}
      />
      <Caution stuff="Paper in the open.">
        Every point of the screen will be red. Until a test of your own says otherwise, take it that this very screen
        fogs your paper: at its least, half a metre off, facing away. Room dark before the box is opened, box shut
        before any other light.
      </Caution>
      <Button
        main={waits === undefined}
        wide
        waits={waits}
        onPress={() => {
          turnLight({ to: "red" }); // at once: no frame of the next page is white
          goTo({ path: "/shelf/loading/dark" });
        }}
      >
        Read it out in the dark
      </Button>
    </>
  );
}
