import { counted } from "./formats.ts";

/** The words of sheets that are written at the table and sent when there is a connection. */
export const tableWords = {
  lead: "Write down a new item where you shoot it. Everything is kept on this phone as you go, with or without a connection, and sent when you hand it in.",
  states: {
    draft: "Kept on this phone, not handed in",
    waiting: "Kept on this phone, not sent yet",
    sent: "Sent",
  },
  waiting: (n: number): string => `${counted(n, "sheet")} kept on this phone, not sent yet.`,
  sendNow: "Send now",
  notUnderstood: (status: number): string =>
    `The registry did not take it (answer ${status}). It is still on this phone.`,
  cannotKeep:
    "This browser cannot keep anything on this phone: it may be in a private window. Do not close this page before it is sent.",
  noPicture: (name: string): string =>
    `${name} cannot be shown by this phone’s browser, so it is not taken. Take it as a JPEG: in the camera’s format settings, “Most compatible”.`,
  heading: (name: string): string => name.trim() || "New sheet",
  contents: (photos: number, spots: number, readings: number): string =>
    [counted(photos, "photo"), counted(spots, "spot"), counted(readings, "reading")].join(", "),
} as const;
