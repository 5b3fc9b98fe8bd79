/** Who knocks: nobody; a cookie made up; a tester who has made nothing; tester, reviewer, owner; the owner's browser on a page of another site. */
export const callers = ["nobody", "forged", "stranger", "tester", "reviewer", "owner", "elsewhere"] as const;

/**
 * Every way into the product and how it answers each caller: the whole of it, in the order of the tree of `app/`. "sign in" and "role" are refusals
 * by permission; "yes" is an action that went on past it, whatever it then said of its arguments; a number is the status. A page of another
 * site reaches no action at all (500, the framework's own answer) and acts for nobody elsewhere. 404 where the scenario holds nothing behind a
 * door that is open. `tests/browser/role-routes.test.ts` asks every one of them over HTTP.
 *
 *                                                                 nobody  forged  strangertester  reviewerowner   elsewhere
 */
export const routeTable = `
GET    /amounts/drawing.png                                       200     200     200     200     200     200     -
GET    /amounts/drawing.svg                                       200     200     200     200     200     200     -
page   /amounts                                                   200     200     200     200     200     200     -
page   /corrections                                               200     200     200     200     200     200     -
GET    /items/[slug]/card.svg                                     200     200     200     200     200     200     -
GET    /items/[slug]/label.svg                                    200     200     200     200     200     200     -
page   /items/[slug]/labels                                       200     200     200     200     200     200     -
page   /items/[slug]                                              200     200     200     200     200     200     -
page   /items/[slug]/report                                       200     200     200     200     200     200     -
page   /items/[slug]/revisions/[n]/difference                     404     404     404     404     404     404     -
page   /items/[slug]/revisions/[n]                                200     200     200     200     200     200     -
page   /items/[slug]/revisions/[n]/recompute                      200     200     200     200     200     200     -
page   /items/compare                                             200     200     200     200     200     200     -
page   /items                                                     200     200     200     200     200     200     -
GET    /items/suggestions                                         200     200     200     200     200     200     -
page   /limits/[id]                                               200     200     200     200     200     200     -
page   /limits                                                    200     200     200     200     200     200     -
page   /log                                                       200     200     200     200     200     200     -
page   /methods                                                   200     200     200     200     200     200     -
page   /not-here                                                  200     200     200     200     200     200     -
page   /                                                          200     200     200     200     200     200     -
GET    /requests/[id]/feed.xml                                    200     200     200     200     200     200     -
page   /requests/[id]                                             200     200     200     200     200     200     -
page   /requests/new                                              200     200     200     200     200     200     -
POST   /requests/send                                             303     303     303     303     303     303     303
page   /scan                                                      200     200     200     200     200     200     -
action _draft/actions.ts submitItem                               sign in sign in yes     yes     role    yes     500
action _draft/actions.ts startRevision                            sign in sign in yes     yes     role    yes     500
action _draft/actions.ts dropRevision                             sign in sign in yes     yes     role    yes     500
action _draft/actions.ts commentItem                              sign in sign in yes     yes     yes     yes     500
action _draft/actions.ts settleComment                            sign in sign in yes     yes     yes     yes     500
action _draft/actions.ts handInRetest                             sign in sign in yes     yes     role    yes     500
action account/actions.ts changePassword                          sign in sign in yes     yes     yes     yes     500
action account/join/[token]/actions.ts join                       yes     yes     yes     yes     yes     yes     500
action account/join/[token]/actions.ts setNewPassword             yes     yes     yes     yes     yes     yes     500
page   /account/join/[token]                                      200     200     200     200     200     200     -
page   /account                                                   sign in sign in 200     200     200     200     -
action account/people/actions.ts addMember                        sign in sign in role    role    role    yes     500
action account/people/actions.ts inviteMember                     sign in sign in role    role    role    yes     500
action account/people/actions.ts withdrawInvitation               sign in sign in role    role    role    yes     500
action account/people/actions.ts removeSecondStep                 sign in sign in role    role    role    yes     500
action account/people/actions.ts makePasswordLink                 sign in sign in role    role    role    yes     500
page   /account/people                                            sign in sign in role    role    role    200     -
action account/second-step/actions.ts makeSecondStepKey           sign in sign in yes     yes     yes     yes     500
action account/second-step/actions.ts turnOnSecondStep            sign in sign in yes     yes     yes     yes     500
action account/second-step/actions.ts renewRecoveryCodes          sign in sign in yes     yes     yes     yes     500
action account/second-step/actions.ts turnOffSecondStep           sign in sign in yes     yes     yes     yes     500
page   /account/second-step                                       sign in sign in 200     200     200     200     -
action account/set-up/actions.ts makeOwner                        yes     yes     yes     yes     yes     yes     500
page   /account/set-up                                            sign in sign in sign in sign in sign in sign in -
action account/sign-in/actions.ts signIn                          yes     yes     yes     yes     yes     yes     500
action account/sign-in/actions.ts enterSignInCode                 yes     yes     yes     yes     yes     yes     500
action account/sign-in/actions.ts signOut                         yes     yes     yes     yes     yes     yes     500
page   /account/sign-in/code                                      sign in sign in sign in sign in sign in sign in -
page   /account/sign-in                                           200     200     200     200     200     200     -
action account/terms/actions.ts setTerms                          sign in sign in role    role    role    yes     500
page   /account/terms                                             sign in sign in role    role    role    200     -
GET    /api/v1/[...rest]                                          404     404     404     404     404     404     -
GET    /api/v1/items/[slug]/readings.csv                          200     200     200     200     200     200     -
GET    /api/v1/items/[slug]                                       200     200     200     200     200     200     -
GET    /api/v1/items                                              200     200     200     200     200     200     -
GET    /api/v1/limits                                             200     200     200     200     200     200     -
GET    /api/v1/log                                                200     200     200     200     200     200     -
GET    /api/v1/openapi.json                                       200     200     200     200     200     200     -
action bench/by-hand/actions.ts saveSheet                         sign in sign in yes     yes     role    yes     500
page   /bench/by-hand                                             sign in sign in 200     200     role    200     -
GET    /bench/check-standards/[id]/certificate                    403     403     404     404     403     404     -
POST   /bench/check-standards/[id]/certificate                    403     403     303     303     403     303     403
page   /bench/check-standards/[id]/edit                           sign in sign in 200     200     role    200     -
page   /bench/check-standards/[id]                                sign in sign in 200     200     role    200     -
action bench/check-standards/actions.ts saveCheckStandard         sign in sign in yes     yes     role    yes     500
action bench/check-standards/actions.ts retireCheckStandard       sign in sign in yes     yes     role    yes     500
action bench/check-standards/actions.ts markCheckReadings         sign in sign in yes     yes     role    yes     500
page   /bench/check-standards/new                                 sign in sign in 200     200     role    200     -
page   /bench/check-standards                                     sign in sign in 200     200     role    200     -
page   /bench/import                                              sign in sign in 200     200     role    200     -
POST   /bench/import/upload                                       403     403     400     400     403     400     403
action bench/imports/[id]/actions.ts undoImport                   sign in sign in yes     yes     role    yes     500
action bench/imports/[id]/actions.ts redoImport                   sign in sign in yes     yes     role    yes     500
action bench/imports/[id]/actions.ts mendRow                      sign in sign in yes     yes     role    yes     500
POST   /bench/imports/[id]/load                                   403     403     200     200     403     200     403
page   /bench/imports/[id]                                        sign in sign in 200     200     role    200     -
GET    /bench/imports/[id]/set-aside.csv                          403     403     200     200     403     200     -
action bench/instruments/actions.ts saveInstrument                sign in sign in yes     yes     role    yes     500
page   /bench/instruments                                         sign in sign in 200     200     role    200     -
action bench/items/[id]/actions.ts editItem                       sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts addSpecimen                    sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts editSpecimen                   sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts addPart                        sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts editPart                       sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts takeAway                       sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts putBack                        sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts move                           sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts handleReadings                 sign in sign in yes     yes     role    yes     500
action bench/items/[id]/actions.ts publishItem                    sign in sign in yes     yes     role    yes     500
page   /bench/items/[id]                                          sign in sign in 200     200     role    200     -
page   /bench/items/[id]/photos/[photoId]                         sign in sign in 200     200     role    200     -
action bench/items/[id]/photos/actions.ts describePhoto           sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts movePhoto               sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts takePhotoAway           sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts putPhotoBack            sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts markSpot                sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts unmarkSpot              sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts markScale               sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts joinSpots               sign in sign in yes     yes     role    yes     500
action bench/items/[id]/photos/actions.ts unjoinSpots             sign in sign in yes     yes     role    yes     500
page   /bench/items/[id]/photos                                   sign in sign in 200     200     role    200     -
POST   /bench/items/[id]/photos/upload                            403     403     422     422     403     422     403
action bench/items/[id]/test-actions.ts addTest                   sign in sign in yes     yes     role    yes     500
action bench/items/[id]/test-actions.ts removeTest                sign in sign in yes     yes     role    yes     500
GET    /bench/items/[id]/tests/[testId]/certificate               403     403     404     404     403     404     -
POST   /bench/items/[id]/tests/[testId]/certificate               403     403     303     303     403     303     403
action bench/items/new/actions.ts createItem                      sign in sign in yes     yes     role    yes     500
page   /bench/items/new                                           sign in sign in 200     200     role    200     -
page   /bench                                                     sign in sign in 200     200     role    200     -
action bench/readings/actions.ts assignReadings                   sign in sign in yes     yes     role    yes     500
action bench/readings/actions.ts setAside                         sign in sign in yes     yes     role    yes     500
action bench/readings/actions.ts undo                             sign in sign in yes     yes     role    yes     500
action bench/readings/new-items/actions.ts makeItems              sign in sign in yes     yes     role    yes     500
action bench/readings/new-items/actions.ts undoItems              sign in sign in yes     yes     role    yes     500
page   /bench/readings/new-items                                  sign in sign in 200     200     role    200     -
page   /bench/readings                                            sign in sign in 200     200     role    200     -
GET    /bench/requests/[id]/photo                                 404     404     404     404     404     404     -
action bench/requests/actions.ts tieRequest                       sign in sign in yes     yes     role    yes     500
page   /bench/requests                                            sign in sign in 200     200     role    200     -
page   /bench/sessions/[id]/edit                                  sign in sign in 200     200     role    200     -
page   /bench/sessions/[id]                                       sign in sign in 200     200     role    200     -
action bench/sessions/actions.ts saveSession                      sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts shiftClock                       sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts confirmTraining                  sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts askCorrections                   sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts allowDoubtful                    sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts pickSession                      sign in sign in yes     yes     role    yes     500
action bench/sessions/actions.ts removeSession                    sign in sign in yes     yes     role    yes     500
page   /bench/sessions/new                                        sign in sign in 200     200     role    200     -
page   /bench/sessions                                            sign in sign in 200     200     role    200     -
page   /bench/table                                               sign in sign in 200     200     role    200     -
POST   /bench/table/send                                          403     403     400     400     403     400     403
GET    /corrections/feed.xml                                      200     200     200     200     200     200     -
GET    /data/datapackage.json                                     200     200     200     200     200     200     -
GET    /data/log.json                                             200     200     200     200     200     200     -
GET    /data/readings.csv                                         200     200     200     200     200     200     -
GET    /data/results.csv                                          200     200     200     200     200     200     -
page   /es/[...rest]                                              404     404     404     404     404     404     -
page   /es/amounts                                                200     200     200     200     200     200     -
GET    /es/corrections/feed.xml                                   200     200     200     200     200     200     -
page   /es/corrections                                            200     200     200     200     200     200     -
GET    /es/feed.json                                              200     200     200     200     200     200     -
GET    /es/feed.xml                                               200     200     200     200     200     200     -
GET    /es/items/[slug]/card.svg                                  200     200     200     200     200     200     -
GET    /es/items/[slug]/label.svg                                 200     200     200     200     200     200     -
page   /es/items/[slug]/labels                                    200     200     200     200     200     200     -
page   /es/items/[slug]                                           200     200     200     200     200     200     -
page   /es/items/[slug]/report                                    200     200     200     200     200     200     -
page   /es/items/[slug]/revisions/[n]/difference                  404     404     404     404     404     404     -
page   /es/items/[slug]/revisions/[n]                             200     200     200     200     200     200     -
page   /es/items/[slug]/revisions/[n]/recompute                   200     200     200     200     200     200     -
page   /es/items/compare                                          200     200     200     200     200     200     -
page   /es/items                                                  200     200     200     200     200     200     -
page   /es/limits/[id]                                            200     200     200     200     200     200     -
page   /es/limits                                                 200     200     200     200     200     200     -
page   /es/log                                                    200     200     200     200     200     200     -
page   /es/methods                                                200     200     200     200     200     200     -
page   /es/not-here                                               200     200     200     200     200     200     -
page   /es                                                        200     200     200     200     200     200     -
GET    /es/requests/[id]/feed.xml                                 200     200     200     200     200     200     -
page   /es/requests/[id]                                          200     200     200     200     200     200     -
page   /es/requests/new                                           200     200     200     200     200     200     -
page   /es/scan                                                   200     200     200     200     200     200     -
GET    /feed.json                                                 200     200     200     200     200     200     -
GET    /feed.xml                                                  200     200     200     200     200     200     -
GET    /healthz                                                   200     200     200     200     200     200     -
GET    /photos/[key]                                              404     404     200     200     200     200     -
action review/[id]/actions.ts claimItem                           sign in sign in role    role    yes     yes     500
action review/[id]/actions.ts releaseItem                         sign in sign in role    role    yes     yes     500
action review/[id]/actions.ts reviewItem                          sign in sign in role    role    yes     yes     500
action review/[id]/actions.ts askRetest                           sign in sign in role    role    yes     yes     500
action review/[id]/actions.ts callOffRetest                       sign in sign in role    role    yes     yes     500
action review/[id]/actions.ts addMakerAnswer                      sign in sign in role    role    role    yes     500
page   /review/[id]/consistency                                   sign in sign in 200     200     200     200     -
page   /review/[id]/history                                       sign in sign in 200     200     200     200     -
page   /review/[id]                                               sign in sign in 200     200     200     200     -
page   /review/consistency                                        sign in sign in 200     200     200     200     -
page   /review                                                    sign in sign in 200     200     200     200     -
page   /review/retests                                            sign in sign in 200     200     200     200     -
GET    /robots.txt                                                200     200     200     200     200     200     -
GET    /sitemap.xml                                               200     200     200     200     200     200     -
page   /style                                                     200     200     200     200     200     200     -
`;
