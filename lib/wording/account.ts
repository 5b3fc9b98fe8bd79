/** Words of the account's own pages. */
export const roleWords = { owner: "owner", tester: "tester", reviewer: "reviewer" } as const;

export const newPassword = {
  least: 15,
  hint: "At least 15 characters: a few words that do not belong together, or what a password manager makes. Spaces and every sign count.",
} as const;

export const joinWords = {
  title: "Join the registry",
  as: (email: string, role: string): string =>
    `The owner has invited ${email} as ${role}. The link works once; with it you make your account, then you sign in.`,
  name: "Your name",
  nameHint: "Shown beside what you test and publish",
  password: "Your password",
  submit: "Make my account",
  toSignIn: "To the sign-in",
} as const;

export const inviteWords = {
  title: "Invite somebody",
  submit: "Make a link",
  lead: "The link works once, for a week. Whoever holds it can join under the address and role written here, so hand it over by a way you trust.",
  openTitle: "Open invitations",
  none: "No invitation is open.",
  withdraw: "Take back",
  withdrawn: "The invitation is taken back; its link works no more.",
  made: (email: string, link: string): string => `For ${email}, shown this once: ${link}`,
} as const;

export const passwordWords = {
  title: "Your password",
  current: "Password as it stands",
  next: "New password",
  submit: "Change it",
  changed: "Your password is changed. Every other browser that was signed in as you is signed out.",
} as const;
