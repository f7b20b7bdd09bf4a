import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { evaluateCommand } from "./evaluateCommand";

// npm runs scripts in the project's folder; INIT_CWD is where the user stands.
const readFile = (path: string): string => readFileSync(resolve(process.env.INIT_CWD ?? ".", path), "utf8");
const { code, out, err } = evaluateCommand(process.argv.slice(2), readFile);
// Whoever reads may stop early, as "head" does; that is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
process.stdout.write(out);
process.stderr.write(err);
process.exitCode = code;
