// flown.c - what is said about one steady flight.
// SPDX-License-Identifier: MIT

#include "answer/words/flown.h"

#include <math.h>

#include "answer/words/margin_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, unit)

#define APART 0.25  // [turns] less is the same to a hand on the grip  [judged]

bool lw_flown_turns(const lw_flown *a, char text[LW_FLOWN_LENGTH])
{
    const double turns = a->answer.flight.turns, more = a->most_turns - turns;
    if (a->answer.outcome != LW_FLIES || a->has_turns) return false;
    if (fabs(more) < APART)
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "Rudder lift on: %+.1f turns, for speed and to hold most alike.", turns);
    else
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "Rudder lift on: %+.1f turns for speed; %+.1f hold most: %.1f %s.", turns,
                    a->most_turns, fabs(more), more > 0.0 ? "more on" : "off");
    return true;
}

void lw_flown_question(const lw_flown *a, lw_unit unit, char text[LW_FLOWN_LENGTH])
{
    char heading[60];
    const lw_pin *pin = &a->inputs->boat.pins[a->pin];
    LW_FIT(heading, "%s%s", lw_course_text(a->course),
           a->course == LW_REACH ? "" : ", heading chosen for the best VMG");
    if (a->has_heading) LW_FIT(heading, "heading %s", LW_ANGLE_TEXT(fabs(a->heading), 0));
    lw_text_fit(text, LW_FLOWN_LENGTH, "%s, %s. Pin %s (%s), wind %s, %s%s.", a->inputs->boat.name,
                a->inputs->sailor.name, pin->label, LW_ANGLE_TEXT(pin->incidence, 1),
                SPEED(a->wind), heading,
                a->heading < 0.0 ? " (starboard tack; port is its mirror)" : "");
}

void lw_flown_freedom(const lw_flown *a, char text[LW_FLOWN_LENGTH])
{
    static const char *const wound_for[] = {
        "Rudder wound for best speed", "Rudder wound to hold most",
        "Rudder wound to keep the bow level", "Rudder wound for speed at any price"};
    const bool flies = a->answer.outcome == LW_FLIES;
    const char *rudder = a->has_turns ? "Rudder as given"
                         : flies      ? wound_for[a->by]
                                      : "Rudder at the reference mark";
    lw_text_fit(text, LW_FLOWN_LENGTH, "%s%s%s.", rudder,
                a->has_heel ? "; heel as given" : "; heel for best speed",
                a->has_place ? "; place as given" : "; place for best speed");
}

void lw_flown_outcome(const lw_flown *a, lw_unit unit, char text[LW_FLOWN_LENGTH])
{
    const lw_flight *f = &a->answer.flight;
    const lw_margins *m = &a->answer.margins;
    const size_t first = lw_margins_first(m);
    if (a->answer.outcome == LW_NO_BALANCE) {
        lw_text_fit(text, LW_FLOWN_LENGTH, "No steady balance was found.");
    } else if (a->answer.outcome == LW_FLOATS) {
        lw_text_fit(text, LW_FLOWN_LENGTH, "Sails on the hull at %s.", SPEED(f->speed));
    } else if (!lw_margins_hold(m)) {
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "A balance in flight at %s on %s, but she cannot be held: %s.", SPEED(f->speed),
                    LW_ANGLE_TEXT(f->heading, 0), lw_margin_end(first));
    } else {
        lw_text_fit(text, LW_FLOWN_LENGTH, "Flies at %s on %s. First to run out: %s.",
                    SPEED(f->speed), LW_ANGLE_TEXT(f->heading, 0), lw_margin_name(first));
    }
}

// What gets her flying: another heading, or more lift.
static const char *more_lift(const lw_flown *a)
{
    const double heading = a->has_heading ? fabs(a->heading) / LW_DEG : 0.0;
    const bool has_more = a->pin > 0;
    if (heading < 80.0)
        return has_more ? "Bear away, or take a pin with more lift" : "Bear away, or wait for wind";
    if (heading > 120.0)
        return has_more ? "Come up, or take a pin with more lift" : "Come up, or wait for wind";
    return has_more ? "Take a pin with more lift" : "Wait for wind";
}

// What to try when she does not fly.
void lw_flown_advice(const lw_flown *a, lw_unit unit, char text[LW_FLOWN_LENGTH])
{
    const lw_range *r = &a->range;
    const bool is_fixed = a->has_heel || a->has_place || a->has_turns;
    if (a->has_heading && fabs(a->heading) < 30.0 * LW_DEG) {
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "That is too close to the wind: bear away to 45° or more.");
    } else if (!r->has_flight) {
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "With this pin she does not fly on this heading in any wind up to %s. %s.",
                    LW_SPEED_TEXT((LW_RANGE_FIRST_KN + LW_RANGE_WINDS - 1) * LW_KN, 0, unit),
                    more_lift(a));
    } else if (a->wind < r->stays_up_at) {
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "Steady flight on this heading begins at %s: %s more than this. %s.",
                    SPEED(r->stays_up_at), SPEED(r->stays_up_at - a->wind), more_lift(a));
    } else if (is_fixed) {
        lw_text_fit(
            text, LW_FLOWN_LENGTH,
            "Left free she should fly in this wind: leave heel, place or turns open and see what "
            "she wants.");
    } else {
        lw_text_fit(text, LW_FLOWN_LENGTH,
                    "Steady flight on this heading begins at %s; this may be beyond what "
                    "can be held: try less wind or a pin with less lift.",
                    SPEED(r->stays_up_at));
    }
}

static void note(char notes[LW_TRUST_MOST][LW_TRUST_LENGTH], size_t *count, const char *text)
{
    if (*count < LW_TRUST_MOST) lw_text_fit(notes[(*count)++], LW_TRUST_LENGTH, "%s", text);
}

static void note_balance(char notes[LW_TRUST_MOST][LW_TRUST_LENGTH], size_t *count, double residual)
{
    char text[LW_TRUST_LENGTH];
    LW_FIT(text,
           "The forces balance to %.0e of the weight. This is steady flight in even wind; "
           "differences between pins are surer than the numbers themselves.",
           fmax(residual, 1e-15));
    note(notes, count, text);
}

size_t lw_flown_trust(const lw_flown *flown, char notes[LW_TRUST_MOST][LW_TRUST_LENGTH])
{
    const lw_craft *craft = &flown->craft;
    const lw_answer *answer = &flown->answer;
    const lw_flight *f = &answer->flight;
    const lw_margins *m = &answer->margins;
    size_t count = 0;
    if (answer->outcome == LW_NO_BALANCE) return 0;
    if (f->strut_angle > f->air_stays)
        note(notes, &count,
             "If a wave or weed lets air down a strut, it stays there at this angle.");
    if (m->main_stall < 0.0 || m->rudder_stall < 0.0)
        note(notes, &count, "A foil is beyond its stall: its lift is a guess.");
    if (m->tip_depth < 0.0 || m->rudder_tip < 0.0)
        note(notes, &count, "A foil tip comes out in the troughs: lift jumps, and is not steady.");
    if (f->turns < craft->least_turns || f->turns > craft->most_turns)
        note(notes, &count, "The rudder's thread ends before the turns asked for here.");
    if (answer->outcome == LW_FLIES &&
        (f->apparent_angle < 12.0 * LW_DEG || f->apparent_angle > 45.0 * LW_DEG))
        note(notes, &count, "The apparent wind stands outside the angles a foiling boat sails at.");
    if (answer->outcome == LW_FLOATS)
        note(notes, &count, "On the hull the wave drag is that of a thin hull, level and steady.");
    note_balance(notes, &count, f->residual);
    return count;
}

void lw_tell_flown(lw_teller *t, const lw_flown *flown)
{
    static const char *const outcomes[] = {"flies", "floats", "no_balance"};
    const lw_inputs *inputs = flown->inputs;
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_name(t, "pin", inputs->boat.pins[flown->pin].label);
    lw_tell_name(t, "course", flown->has_heading ? NULL : lw_course_text(flown->course));
    lw_tell_name(t, "outcome", outcomes[flown->answer.outcome]);
}
