import { honestDigits } from "../../../kit/honestDigits.ts";
import type { LeverView, WayView } from "./waysWords.ts";

/** The ways to give the time with the cap, each with what it costs. */
export function Ways({ ways }: { readonly ways: readonly WayView[] }) {
  return (
    <ul className="Camera-Ways">
      {ways.map((way) => (
        <li key={way.name}>
          <span>
            <b>{way.name}</b>
            <span className="soft">{way.say}</span>
          </span>
          <PlusMinus sdStops={way.sdStops} />
        </li>
      ))}
    </ul>
  );
}

function PlusMinus({ sdStops }: { readonly sdStops: number }) {
  const { plusMinus } = honestDigits({ value: 0, sd: sdStops, of: "stops" });
  return (
    <span>
      <span aria-hidden="true">±{plusMinus}</span>
      <span className="unseen">give or take {plusMinus} stop</span>
    </span>
  );
}

/** What would help, each alone. */
export function Levers({ levers }: { readonly levers: readonly LeverView[] }) {
  return (
    <table className="Camera-Levers">
      <tbody>
        {levers.map(({ name, value }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
