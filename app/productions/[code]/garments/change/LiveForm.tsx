"use client";

import { useRouter } from "next/navigation";
import { useEffect, useRef, useTransition } from "react";

const PAUSE = 250;

const filledIn = (form: HTMLFormElement): URLSearchParams =>
  new URLSearchParams([...new FormData(form)].filter((pair): pair is [string, string] => typeof pair[1] === "string" && pair[1] !== ""));

const sorted = (pairs: URLSearchParams): string =>
  [...pairs]
    .map(([name, value]) => `${name}=${value}`)
    .toSorted()
    .join("&");

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
  const own = useRef<HTMLFormElement>(null);
  const ask = (form: HTMLFormElement, pause: number) => {
    clearTimeout(waiting.current);
    waiting.current = setTimeout(() => begin(() => router.replace(`${address}?${filledIn(form)}`, { scroll: false })), pause);
  };
  // What was filled in before scripts came is asked for now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when scripts have come.
  useEffect(() => {
    const asked = new URLSearchParams([...new URLSearchParams(window.location.search)].filter(([, value]) => value !== ""));
    if (own.current && sorted(filledIn(own.current)) !== sorted(asked)) ask(own.current, 0);
  }, []);
  return (
    <form
      ref={own}
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
