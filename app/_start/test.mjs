/**
 * `npm test`: every check there is, from a bare clone. Ends with one line, `N passed, N failed`.
 *
 *   npm test                       everything
 *   npm test -- --only unit,lint   some: lint types directions dead architecture unit published seed questions drift database browser
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildPages, bundle, generate } from "./build.mjs";
import { checks } from "./checks/checks.mjs";
import { asComplaint, Complaint } from "./complaint.mjs";
import { install } from "./install.mjs";
import { openPostgres } from "./postgres/openPostgres.mjs";
import { Steps } from "./steps.mjs";
import { stopSignal } from "./stopping.mjs";

const signal = stopSignal();
const steps = new Steps();
const total = { passed: 0, failed: 0 };

function chosen(args) {
  const at = args.indexOf("--only");
  if (at < 0) return checks;
  const wanted = (args[at + 1] ?? "").split(",");
  const unknown = wanted.find((id) => !checks.some((check) => check.id === id));
  if (unknown !== undefined) throw new Complaint(`"${unknown}" is no check. There are: ${checks.map((check) => check.id).join(", ")}.`);
  return checks.filter((check) => wanted.includes(check.id));
}

async function test(scratch) {
  const wanted = chosen(process.argv.slice(2));
  const needed = (what) => wanted.some((check) => check.needs.includes(what));
  await steps.run("Installing packages", () => install(signal));
  await steps.run("Making the database client", () => generate(signal));
  if (needed("bundle")) await prepare("Bundling the job process", () => bundle());
  if (needed("pages")) await prepare("Building the pages", () => buildPages(signal));
  const database = needed("database") ? await openPostgres(join(scratch, "postgres"), { signal, durable: false }) : null;
  const env = { ...process.env, CI: "true", NO_COLOR: "1", ...(database && { DATABASE_URL: database.url.replace(/[^/]*$/, "postgres") }) };
  try {
    for (const check of wanted) await make(check, { scratch, env, signal });
  } finally {
    await database?.stop();
  }
}

/** Something several checks stand on: when it fails, that is one failure, and they follow with their own. */
async function prepare(name, work) {
  try {
    await steps.run(name, work);
  } catch (error) {
    if (signal.aborted) throw error;
    total.failed++;
    console.log(asComplaint(error) ?? error);
  }
}

async function make(check, context) {
  const { passed, failed, notes } = await steps.run(
    check.name,
    () => check.run(context),
    ({ passed, failed }) => `${passed} passed, ${failed} failed`,
  );
  total.passed += passed;
  total.failed += failed;
  if (notes) console.log(`\n${notes.trim()}\n`);
}

const scratch = await mkdtemp(join(tmpdir(), "tarlatan-test-"));
try {
  await test(scratch);
} catch (error) {
  total.failed++;
  console.error(asComplaint(error) ?? error);
}
await rm(scratch, { recursive: true, force: true });
console.log(`\nAll of it took ${steps.total()}.\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed > 0 ? 1 : 0);
