import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";

interface Service {
  readonly image: string;
  readonly ports?: readonly string[];
  readonly container_name?: string;
  readonly command?: readonly string[];
  readonly volumes?: readonly string[];
  readonly healthcheck?: { readonly test: readonly string[] };
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
}

const compose: { services: Record<string, Service>; volumes: Record<string, unknown> } = parse(readFileSync("docker-compose.yml", "utf8"), {
  merge: true,
});
const { database, prepare, app, worker } = compose.services as Record<"database" | "prepare" | "app" | "worker", Service>;

describe("the composed services", () => {
  it("keep the database in a named volume and say when it is healthy", () => {
    expect(Object.keys(compose.volumes)).toContain(database.volumes?.[0]?.split(":")[0]);
    expect(database.healthcheck?.test.join(" ")).toContain("pg_isready");
    expect(prepare.depends_on?.database?.condition).toBe("service_healthy");
  });

  it("start app and worker only on a prepared database", () => {
    for (const service of [app, worker]) expect(service.depends_on?.prepare?.condition).toBe("service_completed_successfully");
  });

  it("let the worker be scaled: it has neither a name nor a port of its own", () => {
    expect([worker.container_name, worker.ports]).toEqual([undefined, undefined]);
  });

  it("share one image, and are reached from this machine only", () => {
    expect(new Set([prepare.image, app.image, worker.image])).toEqual(new Set(["tarlatan"]));
    expect(app.ports?.every((port) => port.startsWith("127.0.0.1:"))).toBe(true);
  });

  it("run what the image carries", () => {
    const dockerfile = readFileSync("app/_start/Dockerfile", "utf8");
    const programs = [prepare, app, worker].map(({ command }) => command?.find((word) => /\.mjs$|\/next$/.test(word))?.split("/")[0]);
    for (const folder of programs) expect(dockerfile).toContain(`/app/${folder} ./${folder}`);
  });
});
