import { meant } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { timeCell } from "#lib/sheets/cells";
import { sourcesSheet } from "#lib/sheets/sourcesSheet";
import type { Production } from "#lib/staging/staging";
import { readMoney } from "#lib/units/money";
import { compareSources, type SourceRow } from "#lib/whatif/compareSources";
import type { Quote, Quotes } from "#lib/whatif/sourceVariant";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import { searching, timeText } from "./searching";
import { tableLines } from "./sheetLines";
import type { SourcesCommand } from "./whatIfCommands";

/** Tells what one piece takes when it is made, pulled, altered, hired or bought; the exit code. */
export const sources = async (command: SourcesCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const staging = read.value;
  const piece = staging.pieces.find(({ code }) => code === command.piece);
  const quotes = quotesOf(command, staging.production.currency);
  if (!piece || !quotes.ok) {
    const codes = staging.pieces.map(({ code }) => code);
    output.words(quotes.ok ? `There is no piece "${command.piece}". ${meant(command.piece, codes, "See pieces.csv.")}` : quotes.error);
    return 2;
  }
  const options = searching(command, staging.production);
  output.words(`Planning ${piece.name} from each source from ${options.today}${timeText(command)} ...`);
  const rows = await compareSources(staging, piece, quotes.value, options);
  output.data(command.json ? `${JSON.stringify(rows.map(dated), null, 2)}\n` : wordsOf(rows, piece.name, staging.production));
  return 0;
};

const quotesOf = ({ hire, buy, hireDays, buyDays }: SourcesCommand, currency: string): Result<Quotes, string> => {
  const quote = (text: string | null, days: number | null, option: string): Result<Quote | undefined, string> => {
    if (text === null) return days === null ? ok(undefined) : failed(`--${option}-days needs the price too: --${option} PRICE.`);
    const price = readMoney(text, currency);
    return price.ok ? ok({ price: price.value, days }) : failed(`--${option}: ${price.error.problem} ${price.error.mend}`);
  };
  const hired = quote(hire, hireDays, "hire");
  if (!hired.ok) return hired;
  const bought = quote(buy, buyDays, "buy");
  if (!bought.ok) return bought;
  return ok({ ...(hired.value && { hire: hired.value }), ...(bought.value && { buy: bought.value }) });
};

const dated = ({ figures, ...row }: SourceRow) => ({
  ...row,
  figures: figures && { ...figures, finish: timeCell(figures.finish), due: timeCell(figures.due) },
});

const wordsOf = (rows: readonly SourceRow[], name: string, production: Production): string => {
  const garments = rows.find(({ figures }) => figures)?.figures?.garments ?? 0;
  const title = `${name}, ${garments === 1 ? "1 garment" : `${garments} garments`}`;
  return [title, ...tableLines(sourcesSheet(rows, title, production)), "", "* as the piece list has it", ""].join("\n");
};
