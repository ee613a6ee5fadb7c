// practice.h - what the facts of the trade are held with: the demo boat, its outlooks, its rides.
// SPDX-License-Identifier: MIT
//
// Facts of the trade, common practice without a source. Each is printed with the model's figure
// and the difference. Directions and orders must hold exactly. Pins here: P4 the most lift .. P1
// the least; A .. D in the file. Unless a fact says otherwise: sailor of 79 kg with gear, windward
// and leeward legs, wind as read at 3 m, puffs 4.5 kn above the lulls.

#ifndef LW_TEST_PRACTICE_H
#define LW_TEST_PRACTICE_H

#include <stdio.h>
#include <string.h>

#include "lullwise/choice.h"
#include "lullwise/hold.h"
#include "lullwise/range.h"
#include "lullwise/swims.h"
#include "test/demo.h"

enum { P4, P3, P2, P1 };  // as indices of the demo boat's pins

#define KNOTS(speed) ((speed) / LW_KN)

static lw_outlook usual, uneven, gentle;
static int held, missed;

// What is not usual of an outlook: how long the rides of drawn boats are [s], and which draws.
typedef struct drawing {
    double seconds;
    unsigned first;
} drawing;

static void prepare_drawn(lw_outlook *outlook, double mass, const double wind[3], drawing of)
{
    lw_person person = demo.sailor.person;
    lw_day then = demo.day;
    person.mass = mass - person.gear;
    then.wind.lull = wind[0] * LW_KN;
    then.wind.mean = wind[1] * LW_KN;
    then.wind.puff = wind[2] * LW_KN;
    lw_outlook_begin(outlook, &demo.boat, &demo.sections, &person, &then);
    outlook->effort.drawn = of.seconds;
    outlook->effort.first_draw = of.first;
    lw_outlook_work_out(outlook);
}

static void prepare(lw_outlook *outlook, double mass, double lull, double mean, double puff)
{
    const double wind[3] = {lull, mean, puff};
    prepare_drawn(outlook, mass, wind, (drawing){lw_effort_usual().drawn, 0});
}

static void row(const char *fact, double trade, double model, double allowed, bool direction)
{
    const double off = model - trade;
    const bool holds = direction && fabs(off) <= allowed;
    printf("  %-52s %6.1f %6.1f %+6.1f  %s\n", fact, trade, model, off, holds ? "holds" : "OFF");
    if (holds) held++;
    if (!holds) missed++;
}

// Fact k holds when all the rows printed since `before` missed counts do.
static bool all_held(int before) { return missed == before; }

static lw_setup setup_of(const lw_outlook *outlook, size_t pin)
{
    return lw_craft_setup(&outlook->craft, &demo.boat, pin);
}

static const lw_course reach = {100.0 * LW_DEG, 100.0 * LW_DEG, 100.0 * LW_DEG};

#define PUFF (2.5 * LW_KN)  // of the usual day

// The range of a pin on a course in the usual day: sailed with what it says.
static const lw_range *range_on(size_t pin, lw_course course)
{
    static lw_range ranges[LW_PINS_MOST][LW_COURSE_COUNT];
    static bool known[LW_PINS_MOST][LW_COURSE_COUNT];
    const int kind = course.direction == 0.0    ? LW_UPWIND
                     : course.high > course.low ? LW_DOWNWIND
                                                : LW_REACH;
    const lw_setup setup = setup_of(&usual, pin);
    lw_range *range = &ranges[pin][kind];
    if (!known[pin][kind]) lw_range_of(&usual.craft, &setup, course, PUFF, range);
    known[pin][kind] = true;
    return range;
}

#endif
