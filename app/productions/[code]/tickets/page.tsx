import type { Metadata } from "next";
import { showHours } from "#lib/units/hours";
import { words as wordsOf } from "#lib/words/words";
import { PrintThis } from "../../../_components/PrintThis";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { garmentHref } from "../../../_data/address";
import { ownAddress } from "../../../_data/ownAddress";
import { capital, plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { chosenTickets } from "./chosenTickets";
import { TicketForm } from "./TicketForm";
import { TicketPaper } from "./TicketPaper";
import styles from "./Tickets.module.css";
import { readTicketQuery } from "./ticketQuery";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

const wordOf = (usage: "uk" | "us"): string => wordsOf(usage).trade.ticket;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  const { production } = view.prepared.staging;
  return { title: `${capital(wordOf(production.words))}s, ${production.title}` };
};

const Tickets = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const query = readTicketQuery(await searchParams);
  const tickets = chosenTickets(view, query);
  const minutes = tickets.flatMap(({ lines }) => lines).reduce((sum, line) => sum + line.minutes, 0);
  const word = wordOf(staging.production.words);
  const address = await ownAddress();
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <div className="top no-print">
        <h1>{capital(word)}s</h1>
        <p className="say">
          {query.idle
            ? "Whose, and of which garments? Two go on a sheet of A4 or Letter, to be cut across."
            : tickets.length === 0
              ? "There is nothing to do on those."
              : `${plural(tickets.length, word)}, ${showHours(minutes)}. Two go on a sheet, to be cut across; the square code opens the garment's page.`}
        </p>
        {tickets.length > 0 && (
          <div className="acts">
            <PrintThis>Print them</PrintThis>
          </div>
        )}
      </div>
      <TicketForm plan={view.plan} query={query} />
      <div className={styles.papers}>
        {tickets.map((ticket) => (
          <TicketPaper
            key={`${ticket.garment.number} ${ticket.sheet}`}
            ticket={ticket}
            staging={staging}
            address={address + garmentHref(staging.production.code, ticket.garment.number)}
            today={view.today}
          />
        ))}
      </div>
    </ProductionFrame>
  );
};

export default Tickets;
