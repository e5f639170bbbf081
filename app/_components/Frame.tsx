import type { Member } from "../_gate/member";
import { signOut } from "../sign-in/actions";
import { ActionForm } from "./ActionForm";
import { Mark } from "./Mark";
import { Rail, type Room } from "./Rail";

/** Said at the foot of every printed sheet. */
const footOfEachSheet = (said: string): string =>
  `@page { @bottom-left { content: "${said.replaceAll(/[^\p{L}\p{N} .,]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"; font: 9pt sans-serif } }`;

/** The page around a room: skip link, mast, the rail with its rooms, the tape when there is one, the sheet, and the foot that is only printed. */
export const Frame = ({
  member,
  heading,
  rooms,
  room,
  tools,
  tape,
  printed,
  children,
}: {
  readonly member: Member;
  /** Name of the production, and a few words on it; the company's name elsewhere. */
  readonly heading: { readonly title: string; readonly small: string };
  readonly rooms: readonly Room[];
  /** Address of the room one stands in. */
  readonly room: string;
  /** Between the heading and who one is. */
  readonly tools?: React.ReactNode;
  readonly tape?: React.ReactNode;
  /** Day of printing, in words. */
  readonly printed: string;
  readonly children: React.ReactNode;
}) => (
  <>
    <a className="skip" href="#room">
      Straight to the room
    </a>
    <header className="frame">
      <div className="mast">
        <Mark />
        <span className="prod">
          {heading.title}
          <small>{heading.small}</small>
        </span>
        {tools}
        <div className="who">
          <span>
            {member.user.name}
            <small>{member.role}</small>
          </span>
          <ActionForm action={signOut} press="Sign out" busy="Signing out" look="plain" />
        </div>
      </div>
      <Rail rooms={rooms} room={room} />
      {tape && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, and what scrolls must be reached by keyboard.
        <section className="tape" aria-label="Working days" tabIndex={0}>
          {tape}
        </section>
      )}
    </header>
    <style>{footOfEachSheet(`${heading.title}. Printed ${printed}.`)}</style>
    <main id="room" className="page" tabIndex={-1}>
      {children}
    </main>
  </>
);
