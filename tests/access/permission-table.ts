/**
 * Who may do what in which state of an item: the whole of it, one line an action and role. A column each for draft, submitted, approved,
 * published and withdrawn: "y" may, else the first letters of why not – role: not this role; state: not in this state.
 *
 *                    draft  submitted  approved  published  withdrawn
 */
export const permissionTable = `
see-bench          owner     y      y      y      y      y
see-bench          tester    y      y      y      y      y
see-bench          reviewer  role   role   role   role   role
import-readings    owner     y      y      y      y      y
import-readings    tester    y      y      y      y      y
import-readings    reviewer  role   role   role   role   role
undo-import        owner     y      y      y      y      y
undo-import        tester    y      y      y      y      y
undo-import        reviewer  role   role   role   role   role
assign-readings    owner     y      y      y      y      y
assign-readings    tester    y      y      y      y      y
assign-readings    reviewer  role   role   role   role   role
set-aside-reading  owner     y      y      y      y      y
set-aside-reading  tester    y      y      y      y      y
set-aside-reading  reviewer  role   role   role   role   role
edit-item          owner     y      y      y      y      y
edit-item          tester    y      y      y      y      y
edit-item          reviewer  role   role   role   role   role
manage-instruments owner     y      y      y      y      y
manage-instruments tester    y      y      y      y      y
manage-instruments reviewer  role   role   role   role   role
submit-item        owner     y      state  y      y      y
submit-item        tester    y      state  y      y      y
submit-item        reviewer  role   role   role   role   role
publish-item       owner     y      y      y      y      y
publish-item       tester    y      y      y      y      y
publish-item       reviewer  role   role   role   role   role
start-revision     owner     y      state  y      y      y
start-revision     tester    y      state  y      y      y
start-revision     reviewer  role   role   role   role   role
hand-in-retest     owner     y      y      y      y      y
hand-in-retest     tester    y      y      y      y      y
hand-in-retest     reviewer  role   role   role   role   role
see-review         owner     y      y      y      y      y
see-review         tester    y      y      y      y      y
see-review         reviewer  y      y      y      y      y
comment-item       owner     y      y      y      y      y
comment-item       tester    y      y      y      y      y
comment-item       reviewer  y      y      y      y      y
review-item        owner     state  y      state  state  state
review-item        tester    role   role   role   role   role
review-item        reviewer  state  y      state  state  state
ask-retest         owner     y      y      y      y      state
ask-retest         tester    role   role   role   role   role
ask-retest         reviewer  y      y      y      y      state
add-maker-answer   owner     y      y      y      y      y
add-maker-answer   tester    role   role   role   role   role
add-maker-answer   reviewer  role   role   role   role   role
set-terms          owner     y      y      y      y      y
set-terms          tester    role   role   role   role   role
set-terms          reviewer  role   role   role   role   role
manage-people      owner     y      y      y      y      y
manage-people      tester    role   role   role   role   role
manage-people      reviewer  role   role   role   role   role
`;
