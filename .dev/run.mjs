// Runs the given commands in turn, names each, and stops at the first that fails.
import { spawnSync } from "node:child_process";
import { delimiter } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const PATH = `${root}node_modules/.bin${delimiter}${process.env.PATH ?? ""}`;

for (const command of process.argv.slice(2)) {
  console.log(`\n— ${command}`);
  const { status } = spawnSync(command, { cwd: root, stdio: "inherit", shell: true, env: { ...process.env, PATH } });
  if (status !== 0) {
    console.error(`"${command}" failed.`);
    process.exit(status ?? 1);
  }
}
