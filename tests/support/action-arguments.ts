import { sheetSettings } from "./sheet-settings.ts";
/** Ids of the scenario that an address or an argument may need. */
export type Known = Record<
  | "item"
  | "slug"
  | "specimen"
  | "part"
  | "reading"
  | "spot"
  | "photo"
  | "photoKey"
  | "batch"
  | "instrument"
  | "session"
  | "standard"
  | "test"
  | "request"
  | "retest"
  | "comment"
  | "person",
  string
>;

/** What a form sends, as a list of its fields. */
export type Form = { form: Record<string, string> };
const form = (fields: Record<string, string> = {}): Form => ({ form: fields });
const empty = { errors: [] };
const item = { name: "Cup of the scan", category: "mug-or-cup", ageGroup: "unknown" };
const object = { label: "cup 1", howGot: "given", whoPaid: "nobody" };
const part = { name: "glaze", material: "glaze", form: "coating" };
const words = { text: "A remark of the scan", ties: "none" };

/**
 * Arguments that each action takes for right, so that what refuses it is the permission and nothing before it. A refusal names
 * itself in the answer; an action that refuses for another reason fails the scan.
 */
export const actionArguments = (k: Known): Record<string, unknown[]> => ({
  submitItem: [k.item, empty, form(words)],
  startRevision: [k.item, empty, form({ kind: "update", reason: "The scan asks for one." })],
  dropRevision: [k.item, empty, form()],
  commentItem: [k.item, null, empty, form(words)],
  settleComment: [k.comment, empty, form()],
  handInRetest: [k.retest, empty, form()],
  addMember: [
    empty,
    form({ name: "Scan", email: "scan@example.org", password: "a long phrase of the scan", role: "tester" }),
  ],
  inviteMember: [empty, form({ email: "invited@example.org", role: "tester" })],
  withdrawInvitation: ["none", empty, form()],
  join: [empty, form({ token: "none", name: "Scan", password: "a long phrase of the scan" })],
  setNewPassword: [empty, form({ token: "none", password: "a long phrase of the scan" })],
  changePassword: [empty, form({ current: "not theirs", password: "a long phrase of the scan" })],
  makeSecondStepKey: [empty, form({ "key-password": "not theirs" })],
  turnOnSecondStep: [empty, form({ code: "000000" })],
  renewRecoveryCodes: [empty, form({ "renew-password": "not theirs" })],
  turnOffSecondStep: [empty, form({ "off-password": "not theirs" })],
  removeSecondStep: ["none", empty, form()],
  makePasswordLink: ["none", empty, form()],
  enterSignInCode: [empty, form({ code: "000000", next: "/bench" })],
  makeOwner: [
    empty,
    form({ token: "0", name: "Scan", email: "scan@example.org", password: "a long phrase of the scan" }),
  ],
  signIn: [empty, form({ email: "nobody@example.org", password: "not theirs", next: "/bench" })],
  signOut: [],
  setTerms: [empty, form({ licence: "CC-BY-4.0", rightOfReply: "Write to us.", approvalsNeeded: "1" })],
  saveSheet: [
    {
      instrumentId: null,
      settings: sheetSettings,
      elements: ["Pb"],
      show: { error: true, limit: true },
      rows: [{ sample: "scan", spot: "a", "Pb value": "12", "Pb error": "3" }],
    },
  ],
  saveCheckStandard: [
    empty,
    form({
      name: "Scan tile",
      matrix: "glazed tile",
      material: "glaze",
      certified: "Pb 100 ± 5",
      unit: "mg/kg",
      k: "2",
    }),
  ],
  retireCheckStandard: [empty, form({ id: k.standard, retired: "no" })],
  markCheckReadings: [empty, form({ readingIds: k.reading, checkStandardId: k.standard })],
  undoImport: [empty, form({ batchId: k.batch })],
  redoImport: [empty, form({ batchId: k.batch })],
  mendRow: [empty, form({ batchId: k.batch, rowId: "none", "cell-0": "1" })],
  saveInstrument: [empty, form({ name: "Scan", kind: "handheld XRF", serial: "SCAN-1" })],
  editItem: [k.item, empty, form(item)],
  addSpecimen: [k.item, empty, form(object)],
  editSpecimen: [k.item, k.specimen, empty, form(object)],
  addPart: [k.item, k.specimen, empty, form(part)],
  editPart: [k.item, k.part, empty, form(part)],
  takeAway: [k.item, "part", "none"],
  putBack: [k.item, { specimens: [], components: [], spots: [], assignments: [], otherTests: [] }],
  move: [k.item, "part", k.part, "up"],
  handleReadings: [k.part, empty, form({ readingId: k.reading, do: "restore" })],
  publishItem: [k.item, empty, form()],
  describePhoto: [k.item, k.photo, empty, form({ alt: "What the scan says of it" })],
  movePhoto: [k.item, k.photo, 1],
  takePhotoAway: [k.item, "none"],
  putPhotoBack: [k.item, k.photo],
  markSpot: [k.item, k.photo, { componentId: k.part, label: "scan", x: 0.5, y: 0.5 }],
  unmarkSpot: [k.item, "none"],
  markScale: [k.item, k.photo, null],
  joinSpots: [k.item, { componentId: k.part, join: { how: "by-hand", pairs: [] } }],
  unjoinSpots: [k.item, [{ readingId: k.reading, componentId: null, spotId: null }]],
  addTest: [
    k.item,
    k.specimen,
    empty,
    form({
      kind: "laboratory",
      element: "Pb",
      valueText: "12",
      unit: "mg/kg",
      laboratory: "Invented",
      method: "digestion",
      componentId: k.part,
    }),
  ],
  removeTest: [k.item, k.test, false, empty, form()],
  createItem: [empty, form(item)],
  assignReadings: [{ readingIds: [k.reading], componentId: null, spot: { how: "as-written" } }],
  setAside: [{ readingIds: [k.reading], reason: null }],
  undo: [{ aside: [{ readingId: k.reading, reason: null }] }],
  makeItems: [
    {
      by: "sample",
      batchId: null,
      howGot: "given",
      whoPaid: "nobody",
      rows: [{ group: "scan", item: "Scan", part: "all", category: "mug-or-cup", material: "glaze", form: "bulk" }],
    },
  ],
  undoItems: [["none"]],
  tieRequest: [empty, form({ requestId: k.request, closed: "yes" })],
  saveSession: [
    empty,
    form({
      instrumentId: k.instrument,
      "startedAt-date": "2026-11-01",
      "startedAt-time": "10:00",
      "startedAt-zone": "UTC",
    }),
  ],
  shiftClock: [empty, form({ id: k.session, minutes: "0" })],
  confirmTraining: [empty, form({ id: k.session })],
  askCorrections: [empty, form({ id: k.session })],
  allowDoubtful: [empty, form({ id: k.session, leaveOut: "on" })],
  pickSession: [empty, form({ readingIds: k.reading })],
  removeSession: [empty, form({ id: "none" })],
  claimItem: [k.item, empty, form(words)],
  releaseItem: [k.item, empty, form()],
  reviewItem: [k.item, "0".repeat(64), empty, form({ decision: "sent-back", note: "The scan sends it back." })],
  askRetest: [k.item, empty, form({ value: `${k.part}:Pb`, testerId: k.person })],
  callOffRetest: [k.retest, empty, form()],
  addMakerAnswer: [k.item, empty, form({ receivedOn: "2026-11-20", fromWhom: "the maker", answer: "We thank you." })],
});
