import "server-only";
import { countAttempts } from "./attempts";

const DEFAULT = 5;

/** Tries counted by this server. TARLATAN_SIGN_IN_TRIES is there for the browser tests, which sign in often. */
export const attempts = countAttempts(Number(process.env.TARLATAN_SIGN_IN_TRIES) || DEFAULT);
