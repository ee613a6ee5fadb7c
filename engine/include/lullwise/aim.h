// aim.h - what a choice is for.
// SPDX-License-Identifier: MIT

#ifndef LW_AIM_H
#define LW_AIM_H

// clang-format off
// What the ranking is for. For `race` time decides, flown or not; for the others, what flies stands
// before what does not.
#define LW_AIM_LIST(X)                                                     \
    X(RACE,   "race",   "least expected time round the course")            \
    X(STEADY, "steady", "least expected time, swims counted threefold")    \
    X(EASY,   "easy",   "widest hold of those that fly")
// clang-format on

#define LW_AS_AIM(name, text, doc) LW_AIM_##name,
typedef enum lw_aim { LW_AIM_LIST(LW_AS_AIM) LW_AIM_COUNT } lw_aim;
const char *lw_aim_text(lw_aim aim);
const char *lw_aim_doc(lw_aim aim);
lw_aim lw_aim_of(const char *text);  // LW_AIM_COUNT when there is none of that name

#endif
