"use client";

import { useRouter } from "next/navigation";
import { FileDrop } from "@/app/_components/file-drop.tsx";

/** Photos by drop, by choice and by the phone's camera; the list below takes them up when all are through. */
export function PhotoDrop({
  action,
  hint,
  largest,
  problem,
}: {
  action: string;
  hint: string;
  largest: number;
  problem?: string | undefined;
}) {
  const router = useRouter();
  return (
    <FileDrop
      action={action}
      name="photo"
      label="Photos"
      hint={hint}
      accept="image/jpeg,image/png,image/webp,image/avif"
      submit="Send the photos"
      nextText="Mark spots on it"
      camera="Or take one now"
      largest={largest}
      problem={problem}
      onAllSent={() => router.refresh()}
    />
  );
}
