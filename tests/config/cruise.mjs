/** Checks which way imports run. With the wrong compiler the tool sees nothing and is content: hence the floor. */
import { readFileSync } from "node:fs";
import { cruise } from "dependency-cruiser";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";

/** Fewer modules than this were not looked at by mistake. Raise it as the project grows. */
const floor = 450;

const { forbidden, options } = JSON.parse(readFileSync(new URL("./directions.json", import.meta.url), "utf8"));
const ruleSet = { ruleSet: { forbidden }, validate: true, ...options };
const { output } = await cruise(["app", "lib", "prisma", "tests"], ruleSet, undefined, { tsConfig: extractTSConfig("tsconfig.json") });
const { violations, totalCruised } = output.summary;

for (const { from, to, rule, cycle } of violations) {
  const way = cycle ? [from, ...cycle.map((step) => step.name)].join(" -> ") : `${from} -> ${to}`;
  console.error(`${way}\n  ${forbidden.find(({ name }) => name === rule.name).comment}`);
}
const own = output.modules.filter(({ source }) => !/node_modules|^prisma\/generated/.test(source) && /\.(tsx?|mjs)$/.test(source)).length;
if (own < floor) console.error(`Only ${own} modules were looked at, fewer than ${floor}: the check itself is broken.`);
console.log(`${own} modules (${totalCruised} with packages), ${violations.length} imports that run the wrong way.`);
process.exit(violations.length > 0 || own < floor ? 1 : 0);
