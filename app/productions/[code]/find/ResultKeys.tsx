"use client";

import { useEffect, useRef } from "react";

/** Arrows go through the results, also from the find box; Enter opens one, as links do. */
export const ResultKeys = ({ children }: { readonly children: React.ReactNode }) => {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
      const links = [...(list.current?.querySelectorAll("a") ?? [])];
      const at = links.indexOf(document.activeElement as HTMLAnchorElement);
      const inBox = document.activeElement instanceof HTMLInputElement;
      if (at < 0 && !inBox) return;
      event.preventDefault();
      if (event.key === "ArrowUp" && at === 0) document.querySelector<HTMLInputElement>('input[type="search"]')?.focus();
      else links[event.key === "ArrowDown" ? at + 1 : at - 1]?.focus();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
  return <div ref={list}>{children}</div>;
};
