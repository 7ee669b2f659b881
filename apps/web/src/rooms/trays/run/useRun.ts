import type { RunGap } from "@captray/notebook/answers";
import type { Notebook, RecordSet } from "@captray/notebook/journal";
import type { Json, Run, RunEvent } from "@captray/notebook/records";
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { pageDevices } from "../../../devices/pageDevices.ts";
import type { SoundState } from "../../../devices/soundClock.ts";
import { holdWakeLock, type WakeState } from "../../../devices/wakeLock.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { markRun, runGoing } from "../../../look/light.ts";
import { fogsWords, soundWords, voiceWords, wakeWords } from "./deviceWords.ts";
import { firstStart } from "./firstStart.ts";
import { lastPress } from "./lastPress.ts";
import { laneInOrder } from "./nextLane.ts";
import { clockNoticeWords, passedWords } from "./noticeWords.ts";
import { addPending, readPending, settlePending } from "./pendingPresses.ts";
import { addToClock, clockAt } from "./runClock.ts";
import { runCues } from "./runCues.ts";
import { runInHand } from "./runInHand.ts";
import { type RunSettings, readRunSettings, writeRunSettings } from "./runSettings.ts";
import type { RunInHand, RunView } from "./runTypes.ts";
import { runView } from "./runView.ts";
import { codesWords } from "./runWords.ts";
import { dropSeen } from "./seenLast.ts";
import { toTellApart } from "./toTellApart.ts";
import { useFirstPage } from "./useFirstPage.ts";
import { gone, useRunClock, useTicking } from "./useRunClock.ts";
import { useRunCues } from "./useRunCues.ts";
import { useSheetsFollow } from "./useSheetsFollow.ts";
import { useThermometer } from "./useThermometer.ts";
import { useTrayKeys } from "./useTrayKeys.ts";

const { mirror, sound, shaker, speaker } = pageDevices();

/** So much longer a sheet waits that is not to go in yet. */
const laterS = 120;

/** A run as the page has it in hand, and all that can be said to it. */
export type RunAtHand = ReturnType<typeof useRun>;

/** Binds a run to the notebook and the devices. Every press is written down before it is drawn. */
export function useRun({
  notebook,
  run,
  keysOn,
}: {
  readonly notebook: Notebook;
  readonly run: Run;
  readonly keysOn: boolean;
}) {
  const latest = useRef(run);
  latest.current = run;
  const { clock, now: clockNow, nowMs, hand: clockHand } = useRunClock(run);
  const [settings, setSettings] = useState(() => readRunSettings(mirror));
  const [heard, setHeard] = useState<SoundState>(sound.state);
  const [wake, setWake] = useState<WakeState | null>(null);
  const [failed, setFailed] = useState(false);
  const speech = useSyncExternalStore(speaker.follow, speaker.state);
  const { sounds, temperatureUnit } = useSettings();

  const nowS = nowMs / 1000;
  const inHand = runInHand({ run, sinceStartMs: nowMs }) ?? nothingInHand;
  const { lanes } = inHand;
  const view = runView(inHand);
  const next = laneInOrder(inHand, 0);
  const events = useMemo(() => run.events.flatMap(({ event }) => (event === undefined ? [] : [event])), [run.events]);
  const takesBack = lastPress({ lanes, events });
  const isOver = (view.over && lanes.length > 0) || run.endedAt !== undefined;
  const isAsked = !isOver && clock.notice?.kind === "awayUnknown";

  const change = useCallback(
    (sets: readonly RecordSet[], note: string, onKept: () => void = () => undefined) => {
      if (sets.length === 0) return;
      try {
        notebook.change(sets, note).kept.then(
          () => {
            setFailed(false);
            onKept();
          },
          () => setFailed(true),
        );
      } catch {
        setFailed(true);
      }
    },
    [notebook],
  );

  /** Writes events down: in the small store at once, in the notebook as soon as it can. */
  const write = useCallback(
    (made: readonly RunEvent[], note: string, more: Readonly<Record<string, Json>> = {}) => {
      const set: Record<string, Json> = { ...more };
      const ids: string[] = [];
      for (const event of made) {
        const id = notebook.newId();
        ids.push(id);
        addPending(mirror, run.id, { id, event });
        set[`events.${id}.event`] = event;
      }
      change([{ id: run.id, kind: "run", set }], note, () => {
        for (const id of ids) settlePending(mirror, run.id, id);
      });
    },
    [notebook, run.id, change],
  );

  const sinceAt = useCallback(
    (stampMs?: number) => {
      const lateMs = stampMs === undefined ? 0 : Math.max(0, performance.now() - stampMs);
      const atMs = clockAt({ clock: clockNow.current, pageMs: performance.now() }) - lateMs;
      const lastMs = Math.max(0, ...latest.current.events.map(({ event }) => event?.sinceStartMs ?? 0));
      return Math.max(lastMs, Math.round(atMs));
    },
    [clockNow],
  );

  const say = useCallback(
    (
      press: RunEvent["press"],
      stampMs?: number,
      more: { readonly laneId?: string | undefined; readonly note?: string } = {},
    ) => {
      const sinceStartMs = sinceAt(stampMs);
      const now = viewAt(latest.current, sinceStartMs);
      const everyone = press === "pause" || press === "resume" || press === "waitOn" || press === "waitOff";
      const laneId = everyone ? undefined : (more.laneId ?? now.laneId ?? undefined);
      if (!everyone && laneId === undefined) return;
      const event = {
        press,
        sinceStartMs,
        wallMs: Date.now(),
        ...(laneId !== undefined && { laneId }),
        ...(more.note !== undefined && { note: more.note }),
      } as RunEvent;
      const begins = press === "start" && laneId !== undefined;
      const moved = begins ? firstStart({ run: latest.current, laneId, atS: sinceStartMs / 1000 }) : {};
      write([event], noteOf(press, now), moved);
      clockHand.look();
      clockHand.dismiss();
    },
    [clockHand, sinceAt, write],
  );

  const press = useCallback(
    (stampMs: number) => {
      const means = viewAt(latest.current, sinceAt(stampMs));
      // Paused, the press goes on again; nothing is moved by it.
      if (means.paused) return say("resume", stampMs);
      if (means.round !== null) return say("another", stampMs);
      if (means.press !== null) say(means.press, stampMs);
    },
    [say, sinceAt],
  );

  // Presses that were not durable when the page was killed, and the gap itself.
  useEffect(() => {
    const held = new Set(latest.current.events.map(({ id }) => id as string));
    for (const { id, event } of readPending(mirror, run.id)) {
      if (held.has(id)) settlePending(mirror, run.id, id);
      else {
        const set = { [`events.${id}.event`]: event };
        change([{ id: run.id, kind: "run", set }], "a press kept from before", () => settlePending(mirror, run.id, id));
      }
    }
    if (clockHand.wasAlive() || clockNow.current.notice?.kind === "awayUnknown") return;
    if (latest.current.events.length > 0 && latest.current.endedAt === undefined)
      write(gone(run.id, clockNow.current), "the page came back");
    clockHand.keep();
  }, [run.id, change, write, clockHand, clockNow]);

  const puts = useFirstPage(run.id);

  useTicking({ runId: run.id, hand: clockHand, now: clockNow, stopped: isOver || isAsked });

  // Red from the first frame of the next start, until everything is out.
  useEffect(() => {
    if (!isOver) markRun({ id: run.id });
    else {
      // Another run may go on while this one is looked at again.
      if (runGoing() === run.id) markRun({ id: null });
      dropSeen(mirror, run.id);
    }
  }, [run.id, isOver]);

  useEffect(() => (isOver ? undefined : holdWakeLock({ onState: setWake })), [isOver]);

  const said = useRunCues({
    cues: isOver || isAsked || !puts ? [] : runCues({ lanes, next, nowS }),
    clock: clockNow,
    sounds,
    settings,
  });

  // What the sheets say follows the run.
  const allIds = run.lanes.flatMap(({ sheetIds = [], pieces = [] }) => [
    ...sheetIds,
    ...pieces.map(({ sheetId }) => sheetId),
  ]);
  useSheetsFollow({ notebook, run, lanes, sheetIds: allIds, change });
  const endsAtS =
    lanes.length > 0 && lanes.every(({ state }) => state.state === "done")
      ? Math.max(...lanes.map(({ state }) => state.endedAtS ?? 0))
      : null;
  useEffect(() => {
    const { startedAt, endedAt, leftBecause, id } = latest.current;
    if (leftBecause !== undefined) return;
    if (endsAtS !== null && endedAt === undefined && startedAt !== undefined) {
      change(
        [
          {
            id,
            kind: "run",
            set: { endedAt: { at: Math.round(startedAt.at + endsAtS * 1000), offsetMin: startedAt.offsetMin } },
          },
        ],
        "the run is over",
      );
    } else if (endsAtS === null && endedAt !== undefined)
      change([{ id, kind: "run", set: { endedAt: null } }], "the run goes on");
  }, [change, endsAtS]);

  const wakeSound = useCallback(() => {
    if (sounds) void sound.wake().then(setHeard);
  }, [sounds]);

  useTrayKeys({
    on: keysOn && !isOver && !isAsked,
    isRoundEnd: () => viewAt(latest.current, sinceAt()).round !== null,
    onPress: press,
    onClear: (stampMs) => say("clear", stampMs),
    wakeSound,
  });

  const thermometer = useThermometer({
    run,
    step: next?.steps[next.state.stay?.at ?? 0],
    unit: temperatureUnit,
    onKeep: (bath, bathC) =>
      change(
        [
          {
            id: run.id,
            kind: "run",
            set: { [`readings.${notebook.newId()}.reading`]: { bath, bathC, sinceStartMs: sinceAt() } },
          },
        ],
        `${bathC} °C`,
      ),
  });
  const target = next?.state.means;

  return {
    run,
    view: { ...view, over: isOver },
    /** The page was gone, and only the person knows how long. */
    askedWords: isAsked && clock.notice !== null ? clockNoticeWords(clock.notice) : null,
    notices: [
      ...(clock.notice === null || isAsked
        ? []
        : [
            clockNoticeWords(clock.notice),
            ...passedWords(clock.notice.kind === "away" ? inHand.gaps.at(-1) : undefined),
          ]),
      ...(puts ? [] : ["This run is open on another page of this machine too: that one sounds the cues."]),
      ...(failed
        ? [
            "This machine would not keep the last press in the notebook. It is kept on this page, and tried again with the next.",
          ]
        : []),
    ],
    started: next?.state.stay !== null && next !== undefined,
    skips: target?.kind === "next" ? target.to.step : null,
    waits: lanes.some(({ state }) => state.waitForMe),
    takesBack: takesBack && {
      ...takesBack,
      who: codesWords(lanes.find(({ id }) => id === takesBack.laneId)?.codes ?? []),
    },
    codes: lanes.flatMap(({ codes }) => codes),
    sheetIds: allIds,
    fogs: fogsWords(lanes),
    tellApart: toTellApart({
      lanes,
      toldApart: new Set(run.lanes.flatMap(({ id, toldApartAt }) => (toldApartAt ? [id as string] : []))),
    }),
    settings,
    said,
    thermometer,
    voiceWords: voiceWords(speech),
    soundWords: soundWords(heard, sounds),
    shakeWords: shaker.possible ? undefined : "this machine has none",
    wakeWords: wakeWords(wake),
    fullScreen: document.fullscreenEnabled
      ? {
          on: document.fullscreenElement !== null,
          turn: () => {
            const turning =
              document.fullscreenElement === null
                ? document.documentElement.requestFullscreen()
                : document.exitFullscreen();
            turning.catch(() => undefined);
          },
        }
      : null,
    press,
    say,
    wakeSound,
    takeBack: () => {
      if (takesBack !== null) say("takeBack", undefined, { laneId: takesBack.laneId });
    },
    /** A sheet that is to go in waits a little longer, and the hands are free for the others. */
    later: () => {
      const lane = next?.state.stay === null ? next : undefined;
      if (lane === undefined) return;
      const plannedStartS = Math.round(nowS) + laterS;
      change(
        [{ id: run.id, kind: "run", set: { [`lanes.${lane.id}.plannedStartS`]: plannedStartS } }],
        `${codesWords(lane.codes)} goes in later`,
      );
    },
    trouble: (note: string) => say("trouble", undefined, { note }),
    toldApart: (laneIds: readonly string[]) =>
      change(
        [
          {
            id: run.id,
            kind: "run",
            set: Object.fromEntries(laneIds.map((id) => [`lanes.${id}.toldApartAt`, { ...momentNow() }])),
          },
        ],
        "told apart",
      ),
    wasAway: (awayS: number) => {
      const before = clockNow.current;
      const told = addToClock({ clock: before, byMs: awayS * 1000 });
      write(gone(run.id, told, before.sinceMs), "the page came back");
      clockHand.put(told);
    },
    leave: () => {
      const now = momentNow();
      change(
        [{ id: run.id, kind: "run", set: { endedAt: { ...now }, leftBecause: "left before the end" } }],
        "the run was left",
      );
      markRun({ id: null });
    },
    set: (chosen: RunSettings) => {
      writeRunSettings(mirror, chosen);
      setSettings(chosen);
    },
  };
}

const nothingInHand: RunInHand & { readonly gaps: readonly RunGap[] } = {
  recipeName: "",
  lanes: [],
  order: [],
  nowS: 0,
  gaps: [],
};

/** The page at another second than the one that is shown. */
function viewAt(run: Run, sinceStartMs: number): RunView {
  return runView(runInHand({ run, sinceStartMs }) ?? nothingInHand);
}

function noteOf(press: RunEvent["press"], { move }: RunView): string {
  return press === "takeBack" ? "a press at the trays taken back" : `${move}, ${press}`;
}
