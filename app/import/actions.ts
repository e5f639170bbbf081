"use server";

import { z } from "zod";
import { compareStagings } from "#lib/staging/compare";
import { readStaging } from "#lib/staging/readStaging";
import { keptConstructions } from "#prisma/stagings/constructions";
import { loadStaging } from "#prisma/stagings/load";
import { loadRevision } from "#prisma/stagings/revision";
import { saveStaging } from "#prisma/stagings/save";
import { trySaving } from "#prisma/stagings/trySaving";
import { productionHref } from "../_data/address";
import { memberAction } from "../_gate/action";
import { done, faulty, refused, shown } from "../_gate/outcome";
import { withConstructions } from "./library";
import { pack, unpack } from "./pack";
import type { Preview } from "./preview";
import { readUpload } from "./readUpload";

const MENDED = "Nothing was written. Mend the files and choose them again.";

const oneOrMore = z.union([z.instanceof(File).transform((file) => [file]), z.array(z.instanceof(File))]);

/** Reads the files and says what they would change; writes nothing. */
export const lookAtFiles = memberAction({
  act: "import",
  name: null,
  input: z.object({ files: oneOrMore }),
  run: async (member, { files }) => {
    const sent = await readUpload(files);
    if (!sent.ok) return faulty(MENDED, sent.error);
    const read = readStaging(await withConstructions(sent.value, await keptConstructions(member.company)));
    if (!read.ok) return faulty(MENDED, read.error);
    const { production } = read.value;
    const before = await loadStaging(member.company, production.code);
    const would = await trySaving(member.company, read.value);
    if (!would.ok) return faulty(MENDED, would.error);
    const changes = before ? compareStagings(before.staging, would.value) : compareStagings(null, read.value);
    const preview: Preview = {
      code: production.code,
      title: production.title,
      changes,
      revision: before?.inputRevision ?? null,
      packed: pack(sent.value),
    };
    return shown("The files have no fault.", preview);
  },
});

/** Reads the same files again, from the start, and makes the production equal to them in one transaction. */
export const keepFiles = memberAction({
  act: "import",
  name: null,
  input: z.object({ packed: z.string().min(1), revision: z.string().regex(/^\d*$/) }),
  run: async (member, { packed, revision }) => {
    const sent = unpack(packed);
    if (!sent.ok) return faulty(MENDED, sent.error);
    const read = readStaging(await withConstructions(sent.value, await keptConstructions(member.company)));
    if (!read.ok) return faulty(MENDED, read.error);
    const { code, title } = read.value.production;
    const now = await loadRevision(member.company, code);
    if (String(now?.inputRevision ?? "") !== revision)
      return refused("Somebody has changed this production since the files were looked at. Nothing was written: look at them again.");
    const saved = await saveStaging(member.company, member.user.id, read.value);
    if (!saved.ok) return faulty(MENDED, saved.error);
    return done(`${title} is kept.`, productionHref(code));
  },
});
