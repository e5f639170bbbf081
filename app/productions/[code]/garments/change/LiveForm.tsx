"use client";

import { useRouter } from "next/navigation";
import { useRef, useTransition } from "react";

const PAUSE = 250;

/** A form that asks for the page again with what is filled in: by its press before scripts load, then at each change. Empty fields are left out. */
export const LiveForm = ({
  address,
  className,
  press,
  children,
}: {
  readonly address: string;
  readonly className?: string;
  readonly press: string;
  readonly children: React.ReactNode;
}) => {
  const router = useRouter();
  const [busy, begin] = useTransition();
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  const ask = (form: HTMLFormElement, pause: number) => {
    clearTimeout(waiting.current);
    waiting.current = setTimeout(() => {
      const filled = [...new FormData(form)].filter((pair): pair is [string, string] => typeof pair[1] === "string" && pair[1] !== "");
      begin(() => router.replace(`${address}?${new URLSearchParams(filled)}`, { scroll: false }));
    }, pause);
  };
  return (
    <form
      method="get"
      action={address}
      className={className}
      aria-busy={busy}
      onChange={(event) => ask(event.currentTarget, PAUSE)}
      onSubmit={(event) => {
        event.preventDefault();
        ask(event.currentTarget, 0);
      }}
    >
      {children}
      <button type="submit" className="press second">
        {press}
      </button>
    </form>
  );
};
