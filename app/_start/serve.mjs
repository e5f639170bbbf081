import { join } from "node:path";
import { Complaint, complaintIn } from "./complaint.mjs";
import { bundles } from "./folders.mjs";
import { pause } from "./postgres/postmaster.mjs";
import { startService } from "./service.mjs";

const next = "node_modules/next/dist/bin/next";

/** Starts the job process and the web server, and waits until pages are served. @returns the two services */
export async function serve({ host, port, dev, logs, env, signal }) {
  const own = { ...env, NODE_ENV: dev ? "development" : "production", NEXT_TELEMETRY_DISABLED: "1" };
  const file = (name) => (dev ? null : join(logs, `${name}.log`));
  const services = [
    startService("job process", [join(bundles, "worker.mjs")], { env: own, logFile: file("worker") }),
    startService("web server", [next, dev ? "dev" : "start", "--port", String(port), "--hostname", host], {
      env: own,
      logFile: file("web"),
    }),
  ];
  try {
    await Promise.race([untilServed(host, port, signal), ...services.map(mustNotEnd)]);
    return services;
  } catch (error) {
    await Promise.all(services.map((service) => service.stop()));
    throw error;
  }
}

/** Rejects when the service ends by itself. */
export async function mustNotEnd(service) {
  const code = await service.ended;
  const words = await service.lastWords();
  throw new Complaint(complaintIn(words) ?? `The ${service.name} ended (exit code ${code}).\n${words}`);
}

async function untilServed(host, port, signal) {
  const address = `http://${host === "0.0.0.0" ? "127.0.0.1" : host === "::" ? "[::1]" : host}:${port}/`;
  for (const until = Date.now() + 60_000; Date.now() < until && !signal.aborted; await pause(40)) {
    const answer = await fetch(address, { redirect: "manual" }).catch(() => null);
    if (answer) return;
  }
  if (!signal.aborted) throw new Complaint("The web server did not answer within a minute.");
}
