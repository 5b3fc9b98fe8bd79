/** Words of the account's own pages. */
export const roleWords = { owner: "owner", tester: "tester", reviewer: "reviewer" } as const;

export const newPassword = {
  least: 15,
  hint: "At least 15 characters: a few words that do not belong together, or what a password manager makes. Spaces and every sign count.",
} as const;

export const signInWords = {
  forgotten:
    "Forgotten your password? The owner of this registry can make you a link for a new one; an owner who is alone makes it at the machine.",
} as const;

export const joinWords = {
  anyTitle: "A link that works once",
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
  openTitle: "Open links",
  none: "No link is open.",
  kind: "For",
  kindOf: (role: string, name: string | undefined): string =>
    name === undefined ? `joining as ${role}` : `a new password of ${name}`,
  withdraw: "Take back",
  withdrawn: "The link is taken back; it works no more.",
  made: (email: string, link: string): string => `For ${email}, shown this once: ${link}`,
} as const;

export const passwordLinkWords = {
  column: "Password",
  ask: "Link for a new password",
  askTitle: (name: string): string => `A link for a new password of ${name}?`,
  lead: "For somebody who has forgotten theirs. Be sure that it is they who ask, and hand the link over by a way you trust: whoever holds it can set the password, once, within a day. An older link of theirs works no more. Until it is used their old password stays, and it is written down that you made it.",
  submit: "Make the link",
  close: "Close",
  own: "yours: on your account’s page",
  made: (name: string, link: string): string => `For ${name}, good once and for a day, shown this once: ${link}`,
  title: "Your new password",
  for: (name: string, email: string): string =>
    `For ${name}, ${email}. The link works once. Every browser that is signed in as you is signed out; then you sign in with the new password. A second step stays as it is.`,
  password: "New password",
  set: "Set it",
} as const;

export const passwordWords = {
  title: "Your password",
  current: "Password as it stands",
  next: "New password",
  submit: "Change it",
  changed: "Your password is changed. Every other browser that was signed in as you is signed out.",
} as const;

export const secondStepWords = {
  title: "Second step at sign-in",
  lead: "A code from your phone after the password. Whoever learns your password alone then stays outside.",
  on: "It is on: after your password a code is asked for.",
  off: "It is off: your password alone lets you in.",
  toPage: (on: boolean): string => (on ? "Second step: codes, or turn it off" : "Turn a second step on"),
  onTitle: "Turn it on",
  onLead:
    "You need an app that shows one-time codes, on your phone or in your password manager. Any that keeps to RFC 6238 will do.",
  password: "Your password",
  makeKey: "Make a key",
  keyTitle: "Give the key to your app",
  keyLead: "Let the app scan this picture, or type the key. It is shown only now; nobody else should see it.",
  keyPicture: "The key as a QR code; the same key stands beside it as text",
  keyName: "The key",
  keyKind: "Kind",
  keyKindText: "by time, six digits, every 30 seconds",
  firstCode: "The code that the app shows now",
  firstCodeHint: "Six digits. The second step is on once it is right.",
  confirm: "Turn it on",
  again: "Leaving this page before that changes nothing; you then begin with a new key.",
  codesTitle: "Your recovery codes",
  codesLead:
    "Print them or write them down now; they are not shown again. Each lets you in once, in place of a code of the app, should you lose your phone. Keep them away from it.",
  codesOn: "The second step is on. Every other browser that was signed in as you is signed out.",
  codesRenewed: "These are new; the codes you had before are worth nothing.",
  codesFor: (email: string, host: string): string => `Recovery codes of ${email} at ${host}`,
  print: "Print them",
  kept: "I have kept them",
  renewTitle: "Recovery codes",
  left: (n: number): string =>
    n === 0 ? "None is left: make new ones now." : n === 1 ? "One is left." : `${n} are left.`,
  renew: "Make new ones",
  offTitle: "Turn it off",
  offLead: "The key and the recovery codes are deleted. You can turn it on again at any time, with a new key.",
  offSubmit: "Turn it off",
  isOff: "The second step is off. To have it again, turn it on here: it takes a new key.",
  enterTitle: "Now the code",
  enterLead: "Your password was right. The second step is a code.",
  code: "Code",
  codeHint: "The six digits that your app shows now, or one of your recovery codes, which have ten",
  enter: "Sign in",
  lost: "No phone and no recovery code? The owner of this registry can take the second step away; an owner who is alone does it at the machine.",
  anew: "Start anew with the password",
  column: "Second step",
  state: (on: boolean): string => (on ? "on" : "off"),
  remove: "Take away",
  removeTitle: (name: string): string => `Take the second step of ${name} away?`,
  removeLead:
    "For somebody who has lost phone and recovery codes. Be sure that it is they who ask. Their sign-ins end, their password alone lets them in again, and it is written down that you did it.",
  removeSubmit: "Take it away",
  removed: (name: string): string => `The second step of ${name} is gone. Ask them to turn it on again.`,
} as const;
