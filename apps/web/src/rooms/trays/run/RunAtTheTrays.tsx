import { benchDrawing, rockingDrawing } from "@captray/drawings/trays";
import { useEffect, useId, useRef } from "react";
import { listenForHeldKey } from "../../../devices/heldKey.ts";
import { Drawing } from "../../../kit/Drawing.tsx";
import { HoldPress } from "../../../kit/HoldPress.tsx";
import { WetPress } from "../../../kit/WetPress.tsx";
import { Notices } from "./Notices.tsx";
import { RoundEnd } from "./RoundEnd.tsx";
import { useBenchRoom } from "./useBenchRoom.ts";
import type { RunAtHand } from "./useRun.ts";

/** The run: the whole screen above the foot is one press, and belongs to the one next move. */
export function RunAtTheTrays({ at, onMenu }: { readonly at: RunAtHand; readonly onMenu: () => void }) {
  const { view, press, wakeSound, notices } = at;
  const room = useBenchRoom();
  const id = useId();
  const menu = useRef(onMenu);
  menu.current = onMenu;
  const takeBack = useRef(at.takeBack);
  takeBack.current = at.takeBack;
  useEffect(() => listenForHeldKey({ key: "Backspace", forMs: 2000, onHeld: () => takeBack.current() }), []);
  const { bench, round } = view;
  return (
    <div className="Trays-Run" onPointerDown={wakeSound}>
      {round === null ? (
        <div className="Trays-Run-whole">
          <WetPress
            className="Trays-Run-press"
            main
            means={`${view.laneId}${view.move}${view.press}`}
            onPress={press}
            describedBy={`${id}means`}
          >
            <span className="unseen">{view.spoken}</span>
          </WetPress>
          <div className="Trays-Run-words">
            <p className="Trays-Run-top">
              <b>{view.top}</b>
              <span>{view.since}</span>
            </p>
            <Notices words={notices} />
            <div className="Trays-Run-bench" aria-hidden="true">
              <div ref={room.place}>
                {room.widthPx > 0 && (
                  <Drawing
                    drawing={benchDrawing({
                      ...bench,
                      widthPx: room.widthPx,
                      heightPx: Math.max(240, room.heightPx),
                      letterPx: room.letterPx,
                    })}
                  />
                )}
              </div>
            </div>
            <span className="unseen" role="timer" aria-live="off">
              {view.figure}
            </span>
            <div className="Trays-Run-move">
              <h1>{view.move}</h1>
              <div className="Trays-Run-hands" data-rocks={view.rock?.edge ? true : undefined}>
                {view.rock?.edge && (
                  <span aria-hidden="true">
                    <Drawing drawing={rockingDrawing({ edge: view.rock.edge, says: view.rock.words })} />
                  </span>
                )}
                <p>
                  {view.rock !== null && <b>{view.rock.words}</b>}
                  <span>{view.lift}</span>
                </p>
              </div>
              {view.lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
              {view.caution !== null && <p className="Trays-Run-caution">{view.caution}</p>}
            </div>
            <div className="Trays-Run-means" id={`${id}means`}>
              {view.paused ? (
                <b>Paused</b>
              ) : (
                view.means !== null && (
                  <b>
                    <span>{view.means[0]}</span> <span>{view.means[1]}</span>
                  </b>
                )
              )}
              <span>{view.noPress}</span>
            </div>
          </div>
        </div>
      ) : (
        <RoundEnd view={view} round={round} notices={notices} onPress={at.say} />
      )}
      <HoldPress className="Trays-Run-foot" onHeld={() => menu.current()}>
        <Turned />
        <span>
          <b>Hold for 2 s:</b> <b>take back, late, skip, trouble</b>
        </span>
      </HoldPress>
      <p className="unseen" role="status">
        {at.said}
      </p>
    </div>
  );
}

function Turned() {
  return (
    <svg
      width="30"
      height="30"
      viewBox="0 0 30 30"
      fill="none"
      stroke="currentColor"
      strokeWidth="3"
      aria-hidden="true"
    >
      <path d="M10 4L4 10l6 6M4 10h15a7 7 0 0 1 0 14H8" strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  );
}
