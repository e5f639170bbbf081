import { writeXlsx, type XlsxSheet } from "#lib/exchange/writeXlsx";

/** A workbook to keep; never cached, since it shows what one member may see. */
export const xlsxAnswer = async (name: string, sheets: readonly XlsxSheet[]): Promise<Response> =>
  new Response(new Blob([new Uint8Array(await writeXlsx(sheets))]), {
    headers: {
      "content-type": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      "content-disposition": `attachment; filename="${name.replaceAll(/[^\w .-]/g, "_")}.xlsx"`,
      "cache-control": "private, no-store",
    },
  });
