// Loaded with --import into the web server and the job process: when the process that started them is killed, they end too,
// and the next start finds its port free.
import { onOrphaned } from "./stopping.mjs";

onOrphaned(() => process.exit(1));
