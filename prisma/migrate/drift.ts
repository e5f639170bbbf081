import { drift } from "./replay";
import { databaseUrlOrExit } from "./scratch";

const missing = await drift(databaseUrlOrExit());
if (missing !== null) {
  console.error("The migrations and the schema files differ. Make a migration with prisma/migrate/create.ts. What is missing:\n");
  console.log(missing);
  process.exitCode = 1;
}
