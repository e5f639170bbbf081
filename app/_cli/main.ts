import { ask } from "./ask";
import { check } from "./check";
import { type Command, readCommand } from "./commandLine";
import { compare } from "./compare";
import { HELP } from "./help";
import type { Output } from "./output";
import { plan } from "./plan";
import { remedies } from "./remedies";
import { sources } from "./sources";
import { VERSION } from "./version";
import { versions } from "./versions";

const output: Output = {
  data: (text) => void process.stdout.write(text),
  words: (text) => void process.stderr.write(`${text}\n`),
};

const run = (command: Command): number | Promise<number> => {
  switch (command.name) {
    case "help":
      output.data(HELP[command.about]);
      return 0;
    case "version":
      output.data(`${VERSION}\n`);
      return 0;
    case "check":
      return check(command.folder, output);
    case "ask":
      return ask(command, output);
    case "plan":
      return plan(command, output);
    case "compare":
      return compare(command, output);
    case "sources":
      return sources(command, output);
    case "remedies":
      return remedies(command, output);
    case "versions":
      return versions(command, output);
  }
};

// A reader that has seen enough (`| head`) is no defect.
process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 1));

try {
  const command = readCommand(process.argv.slice(2));
  if (command.ok) process.exitCode = await run(command.value);
  else {
    output.words(command.error);
    process.exitCode = 2;
  }
} catch (error) {
  const { code, path, message } = error as NodeJS.ErrnoException;
  if (code !== undefined && path !== undefined) {
    output.words(`${path}: ${message} Look at the folder, its permissions and the space left.`);
    process.exitCode = 2;
  } else {
    output.words(
      `This is a defect of Tarlatan, not of your folder. Please report it with these lines:\n${error instanceof Error ? error.stack : error}`,
    );
    process.exitCode = 1;
  }
}
