import type { NextConfig } from "next";

const guards = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "Content-Security-Policy", value: "base-uri 'self'; object-src 'none'; frame-ancestors 'none'; form-action 'self'" },
];

const config: NextConfig = {
  poweredByHeader: false,
  serverExternalPackages: ["pg", "graphile-worker", "pino"],
  // A lock file in a folder above would otherwise be taken for the project's.
  turbopack: { root: import.meta.dirname },
  // `npm test` checks types, once.
  typescript: { ignoreBuildErrors: true },
  // More than an import may hold, so that the app itself can say what is too much.
  experimental: { serverActions: { bodySizeLimit: "12mb" } },
  headers: async () => [{ source: "/:path*", headers: guards }],
};

export default config;
