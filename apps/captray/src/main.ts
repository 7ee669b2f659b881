import { runTerminal } from "./terminal/runTerminal.ts";

// A reader that has seen enough (| head) closes the pipe: that is no fault of anybody.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  process.exit(error.code === "EPIPE" ? 0 : 1);
});

process.stdin.setEncoding("utf8");

process.exitCode = await runTerminal(process.argv.slice(2), {
  input: process.stdin as AsyncIterable<string>,
  inputIsTyped: process.stdin.isTTY === true,
  outputIsSeen: process.stdout.isTTY === true,
  write: (text) =>
    new Promise((taken) => {
      if (process.stdout.write(text)) taken();
      else process.stdout.once("drain", taken);
    }),
  note: (text) => void process.stderr.write(text),
});
