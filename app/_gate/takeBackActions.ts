"use server";

import { z } from "zod";
import { takeBackAction } from "./takeBackAction";

const idOrNone = z.object({ edit: z.uuid() });

/** Takes one edit of the history back. */
export const takeEditBack = takeBackAction(idOrNone, ({ edit }) => ({ id: edit }));

/** Takes back what the person did last. */
export const undoLast = takeBackAction(z.object({}), () => "last");

/** Does again what the person took back last. */
export const redoLast = takeBackAction(z.object({}), () => "last taken back");
