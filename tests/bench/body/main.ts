import { surveyBodies } from "../../published/body/bodies";
import { spreadTable } from "../../published/body/spread";
import { surveyed } from "../../published/body/survey";
import { library } from "../../seed/constructions/library";

/** Every construction for every body of the survey: median, spread and what is absurd. Needs no options. */
const bodies = surveyBodies();
const began = performance.now();
const surveys = surveyed(library, bodies);
const seconds = (performance.now() - began) / 1000;
const absurd = surveys.flatMap((survey) => survey.absurd);
process.stdout.write(
  `${bodies.length} bodies, ${library.length} constructions: ${seconds.toFixed(1)} s\n${spreadTable(surveys)}\n${absurd.length} absurd\n${absurd.slice(0, 20).join("\n")}\n`,
);
process.exitCode = absurd.length > 0 ? 1 : 0;
