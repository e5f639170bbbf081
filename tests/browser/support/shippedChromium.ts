import { existsSync } from "node:fs";
import { mkdir, mkdtemp, rename, rm, writeFile } from "node:fs/promises";
import { resolve } from "node:path";

/** What a browser must be given to run. */
export interface Browser {
  readonly executablePath: string;
  readonly env: Readonly<Record<string, string>>;
}

const cache = resolve("node_modules/.cache");
const home = resolve(cache, "browser");

/**
 * The Chromium that the package @sparticuz/chromium carries (Linux x64), unpacked once with its libraries and fonts.
 * It is unpacked beside its place and then moved, so that an interrupted unpacking leaves nothing half done.
 */
export async function shippedChromium(): Promise<Browser | null> {
  if (process.platform !== "linux" || process.arch !== "x64") return null;
  if (!existsSync(home)) await unpack();
  return {
    executablePath: resolve(home, "chromium"),
    env: {
      LD_LIBRARY_PATH: [resolve(home, "al2023/lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(":"),
      FONTCONFIG_FILE: resolve(home, "fonts.conf"),
    },
  };
}

async function unpack(): Promise<void> {
  await mkdir(cache, { recursive: true });
  const scratch = await mkdtemp(resolve(cache, "unpacking-"));
  const before = { ...process.env };
  // The package unpacks into the temporary folder, its libraries only where it believes itself on this platform,
  // and alters the environment as soon as it is imported.
  process.env.TMPDIR = scratch;
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs20.x";
  try {
    const { default: chromium } = await import("@sparticuz/chromium");
    await chromium.executablePath();
  } finally {
    for (const name of ["TMPDIR", "AWS_EXECUTION_ENV", "LD_LIBRARY_PATH", "FONTCONFIG_PATH", "HOME"]) {
      if (before[name] === undefined) delete process.env[name];
      else process.env[name] = before[name];
    }
  }
  await writeFile(resolve(scratch, "fonts.conf"), fontsConf());
  try {
    await rename(scratch, home);
  } catch (error) {
    await rm(scratch, { recursive: true, force: true });
    if (!existsSync(home)) throw error;
  }
}

/** With no font at all every page crashes: the package's own come first, then those of the system. */
function fontsConf(): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${resolve(home, "fonts")}</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${resolve(home, "fontcache")}</cachedir>
</fontconfig>
`;
}
