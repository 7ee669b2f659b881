import { Component, type ReactNode } from "react";
import { Button } from "../kit/Button.tsx";
import { Word } from "../kit/Word.tsx";
import "./Mishap.css";

interface MishapProps {
  readonly children: ReactNode;
  /** A new value opens the page again: the address. */
  readonly at: string;
  /** Stands for the whole app, not for one page of it. */
  readonly whole?: boolean;
}
interface MishapState {
  readonly what?: string | undefined;
  readonly at: string;
}

/** Where a page stops, this stands in its place: never a blank one. */
export class Mishap extends Component<MishapProps, MishapState> {
  override state: MishapState = { at: this.props.at };

  static getDerivedStateFromError(thrown: unknown): Partial<MishapState> {
    return { what: thrown instanceof Error ? thrown.message : String(thrown) };
  }

  static getDerivedStateFromProps(props: MishapProps, state: MishapState): MishapState | null {
    return props.at === state.at ? null : { at: props.at, what: undefined };
  }

  override render() {
    const { what } = this.state;
    if (what === undefined) return this.props.children;
    return (
      <div className="Shell-Mishap" data-whole={this.props.whole || undefined} role="alert">
        <h1>This page has stopped</h1>
        <p className="say">
          What was kept is still on this machine. Open the page again; if it stops once more, the words below say where.
        </p>
        <p className="small soft">{what}</p>
        <div className="Shell-Mishap-ways">
          <Button main onPress={() => location.reload()}>
            Open it again
          </Button>
          <Word to="/">Go to the start</Word>
        </div>
      </div>
    );
  }
}
