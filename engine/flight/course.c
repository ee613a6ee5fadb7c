// course.c - courses to sail, and the headings that a sailor tries on them.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"

#define AS_COURSE_TEXT(name, text, direction, low, high) text,
#define AS_COURSE(name, text, direction, low, high) \
    {direction * LW_DEG, low * LW_DEG, high * LW_DEG},
static const char *const course_texts[] = {LW_COURSE_LIST(AS_COURSE_TEXT)};
static const lw_course courses[] = {LW_COURSE_LIST(AS_COURSE)};

const char *lw_course_text(lw_course_kind kind) { return course_texts[kind]; }
lw_course lw_course_of(lw_course_kind kind) { return courses[kind]; }

double lw_course_middle(lw_course course) { return 0.5 * (course.low + course.high); }

lw_course lw_course_to(double direction)
{
    const lw_course up = courses[LW_UPWIND], down = courses[LW_DOWNWIND];
    if (direction < 60.0 * LW_DEG) return (lw_course){direction, up.low, up.high};
    if (direction > 130.0 * LW_DEG) return (lw_course){direction, down.low, down.high};
    return (lw_course){direction, direction, direction};
}
