"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";

const EVERY = 1000;

/** What an address answers, asked for each second while it is active; once it is not, the page is shown anew. */
export const usePolled = <T extends { readonly active: boolean }>(address: string, first: T): T => {
  const router = useRouter();
  const [known, setKnown] = useState(first);
  useEffect(() => {
    if (!known.active) return;
    const ask = async () => {
      const answer = await fetch(address).catch(() => null);
      if (!answer?.ok) return;
      const next = (await answer.json()) as T;
      setKnown(next);
      if (!next.active) router.refresh();
    };
    const timer = setInterval(() => void ask(), EVERY);
    return () => clearInterval(timer);
  }, [known.active, address, router]);
  return known;
};
