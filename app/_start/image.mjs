/** What the container image is made of: the client, the bundles, the pages. Installing is the step before; a database is not needed. */
import { buildPages, bundle, generate } from "./build.mjs";
import { asComplaint } from "./complaint.mjs";
import { Steps } from "./steps.mjs";

const steps = new Steps();
try {
  await steps.run("Making the database client", () => generate());
  await steps.run("Bundling the job process", () => bundle());
  await steps.run("Building the pages", () => buildPages());
} catch (error) {
  console.error(asComplaint(error) ?? error);
  process.exit(1);
}
