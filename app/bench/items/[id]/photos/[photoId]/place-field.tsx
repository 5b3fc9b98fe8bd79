"use client";

import { useState } from "react";
import { NumberField } from "@/app/_components/field.tsx";
import { percentText, shareTyped } from "@/lib/wording/photos.ts";

/** A place along one side of the photo as a number; taken over when the field is left or Enter is pressed. */
export function PlaceField({
  id,
  label,
  share,
  onShare,
}: {
  id: string;
  label: string;
  share: number;
  onShare: (share: number) => void;
}) {
  const [typed, setTyped] = useState<string | null>(null);
  const read = typed === null ? share : shareTyped(typed);
  const take = () => {
    if (typed !== null && read !== null) onShare(read);
    if (read !== null) setTyped(null);
  };
  return (
    <NumberField
      id={id}
      name={id}
      label={label}
      hideLabel
      width={5}
      value={typed ?? percentText(share)}
      error={read === null ? "0 to 100" : undefined}
      onChange={(event) => setTyped(event.currentTarget.value)}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === "Enter") {
          event.preventDefault();
          take();
        }
      }}
    />
  );
}
