/**
 * `npm start`: from a bare clone to a served app. Only Node's own modules, since nothing else is installed yet.
 *
 *   npm start                      PORT, HOST, DATABASE_URL, TARLATAN_DATA change the obvious
 *   npm start -- --empty           no demonstration: the web asks for the first supervisor
 *   npm start -- --dev             pages are rebuilt as they are edited
 */
import { buildPages, bundle, generate } from "./build.mjs";
import { claim } from "./claim.mjs";
import { asComplaint } from "./complaint.mjs";
import { openDatabase, prepareDatabase } from "./database.mjs";
import { install } from "./install.mjs";
import { needPort } from "./ports.mjs";
import { authSecret } from "./secret.mjs";
import { mustNotEnd, serve } from "./serve.mjs";
import { readSettings } from "./settings.mjs";
import { Steps } from "./steps.mjs";
import { stopSignal } from "./stopping.mjs";
import { newUsers, welcome } from "./welcome.mjs";

const signal = stopSignal();
/** What must be undone at the end, last first. */
const undo = [];

async function start() {
  const settings = readSettings(process.env, process.argv.slice(2));
  const { port, host, data } = settings;
  const steps = new Steps();
  undo.push(await claim(data));
  await needPort(port, host);
  await steps.run("Installing packages", () => install(signal));
  await steps.run("Making the database client", () => generate(signal));
  await steps.run("Bundling the job process", () => bundle());
  const database = await steps.run("Opening the database", () => openDatabase({ ...settings, signal }));
  undo.push(database.stop);
  const prepared = await steps.run("Preparing tables and data", () => prepareDatabase(database, { ...settings, signal }));
  // Said at once: should the build or the start then fail, they are not lost.
  if (prepared.loaded) console.log(newUsers(prepared.users));
  if (!settings.dev) await steps.run("Building the pages", () => buildPages(signal));
  const env = {
    ...process.env,
    DATABASE_URL: database.url,
    BETTER_AUTH_SECRET: process.env.BETTER_AUTH_SECRET || (await authSecret(data)),
  };
  const services = await steps.run("Starting the app", () => serve({ ...settings, logs: data, env, signal }));
  undo.push(() => Promise.all(services.map((service) => service.stop())));
  if (!signal.aborted) console.log(welcome(settings, prepared, steps.total()));
  await Promise.race([...services.map(mustNotEnd), stopped()]);
}

const stopped = () => new Promise((done) => (signal.aborted ? done() : signal.addEventListener("abort", done)));

async function end() {
  for (const work of undo.reverse()) await work();
}

try {
  await start();
} catch (error) {
  if (!signal.aborted) {
    console.error(asComplaint(error) ?? error);
    process.exitCode = 1;
  }
}
await end();
if (signal.aborted) console.log("Stopped.");
process.exit();
