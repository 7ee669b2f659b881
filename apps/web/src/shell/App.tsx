import { NotebookProvider } from "../kit/notebook/NotebookProvider.tsx";
import { Mishap } from "./Mishap.tsx";
import { NotOpened } from "./NotOpened.tsx";
import { WithNotebook } from "./WithNotebook.tsx";

/** The whole app: a notebook, and the shell round its rooms. */
export function App() {
  return (
    <Mishap at="" whole>
      <NotebookProvider failed={(why, message) => <NotOpened why={why} message={message} />}>
        <WithNotebook />
      </NotebookProvider>
    </Mishap>
  );
}
