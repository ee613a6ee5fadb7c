// test_sweep.c - any boat within the tables, any sailor, wind, heading and set-up: no answer is
// anything but a balance or a plain no.
// SPDX-License-Identifier: MIT
//
// 100,000 questions in three runs, 10,000 under the sanitizers; `make soak` asks LW_SOAK times as
// many. What takes long to prepare is drawn from a pool: foils and hull with their boat from one
// craft, everything that hangs on neither from others; the ranges of a day from ranges that were
// worked out.

#include "lullwise/choice.h"
#include "test/check.h"
#include "test/random_outlook.h"

#ifdef __SANITIZE_ADDRESS__
#define QUESTIONS 10000
#define RANGES    20
#define OUTLOOKS  1
#define DAYS      10
#define CRAFTS    10
#else
#define QUESTIONS 100000
#define RANGES    300
#define OUTLOOKS  40
#define DAYS      200
#define CRAFTS    200
#endif

#define EACH 40  // questions of one boat, asked together

static bool is_finite(const double *x, size_t n)
{
    for (size_t i = 0; i < n; i++) {
        if (!isfinite(x[i])) return false;
    }
    return true;
}

#define IS_FINITE(record) is_finite((const double *)(record), sizeof *(record) / sizeof(double))

static void check_answer(const lw_answer *answer)
{
    CHECK(answer->outcome < LW_OUTCOME_COUNT);
    CHECK(IS_FINITE(&answer->flight) && IS_FINITE(&answer->margins));
    CHECK(answer->outcome == LW_NO_BALANCE || answer->flight.residual < LW_RESIDUAL);
}

typedef struct prepared {
    lw_boat boat;
    lw_craft craft;
} prepared;

// One of the crafts of a kind: those with even numbers are usual.
static const prepared *one_of(boat_kind kind, random_stream *stream)
{
    static prepared pool[CRAFTS];
    static int ready;
    for (; ready < CRAFTS; ready++) {
        random_stream own = {200 + ready};
        long again = 0;
        prepared *p = &pool[ready];
        p->boat = random_boat(kind_of(ready), &own, &again);
        const lw_person person = random_person(kind_of(ready), &own);
        const lw_day day = random_day(kind_of(ready), &own);
        const lw_medium medium = lw_medium_of(&day);
        lw_craft_prepare(&p->craft, &p->boat, random_sections(&own), &person, &medium);
    }
    const int number = (int)(random_bits(stream) % (CRAFTS / 2));
    return &pool[2 * number + (kind == BOAT_ANY)];
}

// Foils, struts and hull of one boat; sail, linkage, sailor, windage and water each of any.
static lw_craft random_craft(boat_kind kind, random_stream *stream, lw_boat *boat)
{
    const prepared *p = one_of(kind, stream);
    lw_craft craft = p->craft;
    *boat = p->boat;
    const lw_craft *from = &one_of(kind, stream)->craft;
    craft.sail = from->sail;
    craft.wind_at_sail = from->wind_at_sail;
    from = &one_of(kind, stream)->craft;
    craft.linkage = from->linkage;
    craft.setup = from->setup;
    from = &one_of(kind, stream)->craft;
    craft.body_mass = from->body_mass, craft.body_windage = from->body_windage;
    craft.body_reach = from->body_reach, craft.body_inboard = from->body_inboard;
    craft.least_heel = from->least_heel, craft.most_heel = from->most_heel;
    craft.weight = LW_GRAVITY * (craft.hull_mass + craft.body_mass);
    from = &one_of(kind, stream)->craft;
    craft.windage = from->windage, craft.windage_side = from->windage_side;
    from = &one_of(kind, stream)->craft;
    craft.medium = from->medium;
    craft.trough = from->trough;
    return craft;
}

static lw_setup random_setup(const lw_craft *craft, const lw_boat *boat, random_stream *stream)
{
    lw_setup setup = craft->setup;
    setup.incidence = boat->pins[random_bits(stream) % boat->pin_count].incidence;
    return setup;
}

static lw_ask random_ask(const lw_craft *craft, const lw_boat *boat, random_stream *stream)
{
    const lw_setup setup = random_setup(craft, boat, stream);
    lw_ask ask = lw_ask_of(craft, &setup, random_between(stream, 0.0, 45.0) * LW_KN,
                           random_between(stream, 0.0, 180.0) * LW_DEG);
    ask.heel = random_between(stream, 0.0, craft->most_heel);
    ask.place = random_between(stream, craft->place_aft, craft->place_forward);
    if (random_bits(stream) % 2 == 0) lw_ask_hold_rudder(&ask);
    if (random_bits(stream) % 4 == 0) lw_ask_give_speed(&ask, random_between(stream, 0.5, 15.0));
    return ask;
}

TEST_FUNCTION(any_question_has_a_balance_or_a_plain_no)
{
    random_stream stream = stream_of_run(11);
    long outcomes[LW_OUTCOME_COUNT] = {0};
    for (int run = 0; run < cases_of_run(QUESTIONS / EACH); run++) {
        lw_boat boat;
        lw_ask asks[EACH];
        lw_answer answers[EACH];
        const lw_craft craft = random_craft(kind_of(run), &stream, &boat);
        for (int i = 0; i < EACH; i++) asks[i] = random_ask(&craft, &boat, &stream);
        lw_balance(&craft, asks, answers, EACH);
        for (int i = 0; i < EACH; i++) {
            check_answer(&answers[i]);
            outcomes[answers[i].outcome]++;
        }
    }
    for (int i = 0; i < LW_OUTCOME_COUNT; i++) {
        print_message("%7ld %s\n", outcomes[i], lw_outcome_text((lw_outcome)i));
    }
}

// Ranges that were worked out, for days to draw from.
static lw_range ranges[RANGES];

static void check_range(const lw_range *range)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        check_answer(&range->at[i].trimmed);
        check_answer(&range->at[i].puffed);
        const lw_launch *hull = &range->on_hull[i];
        CHECK(isfinite(hull->speed) && isfinite(hull->seconds) && isfinite(hull->hump_spare));
    }
    CHECK(isfinite(range->launches_at) && isfinite(range->stays_up_at) &&
          isfinite(range->held_up_to) && range->ends_by <= LW_MARGIN_COUNT);
}

TEST_FUNCTION(any_range_is_whole)
{
    random_stream stream = stream_of_run(12);
    long launches = 0, flies = 0, holds = 0;
    const int runs = cases_of_run(RANGES);
    for (int run = 0; run < runs; run++) {
        lw_range *range = &ranges[run % RANGES];
        lw_boat boat;
        const lw_craft craft = random_craft(kind_of(run), &stream, &boat);
        const lw_setup setup = random_setup(&craft, &boat, &stream);
        const lw_course course = lw_course_to(random_between(&stream, 0.0, 180.0) * LW_DEG);
        lw_range_of(&craft, &setup, course, random_between(&stream, 0.0, 8.0) * LW_KN, range);
        check_range(range);
        launches += range->has_launch, flies += range->has_flight, holds += range->has_hold;
    }
    print_message("of %d: %ld launch, %ld fly, %ld are held\n", runs, launches, flies, holds);
}

// What one place says of itself agrees with itself: no hold below the wind she stays up in, no
// flight in winds where nothing flies, no time for what cannot be sailed, no more time swimming
// than sailing.
static void check_place(const lw_placing *place, double swim_cost)
{
    const lw_prospect *p = &place->prospect;
    CHECK(place->reason < LW_REASON_COUNT && place->ends_by <= LW_MARGIN_COUNT);
    CHECK(IS_FINITE(p) && isfinite(place->behind) && isfinite(place->error));
    CHECK(p->held_up_to == 0.0 || (p->stays_up_at > 0.0 && p->held_up_to >= p->stays_up_at));
    CHECK(p->flying >= 0.0 && p->flying <= 1.0 && place->flies == (p->flying > 0.0));
    CHECK(place->flies || (p->swims == 0.0 && !place->flies_in_mean && !place->flies_in_puff));
    CHECK(place->can_be_sailed == (p->seconds > 0.0));
    CHECK(!place->can_be_sailed || p->speed >= 0.999 * LW_KN);
    CHECK(p->swim_seconds <= 0.5 * p->seconds && p->swims * swim_cost <= p->swim_seconds + 1e-6);
    CHECK(place->chance >= 0.0 && place->chance <= 1.0);
    const bool says_none = place->reason == LW_REASON_NEVER || place->reason == LW_REASON_HULL;
    CHECK(!says_none || !place->flies);
}

// Nothing before what goes before it for that aim.
static void check_order(const lw_placing *a, const lw_placing *b, lw_aim aim)
{
    CHECK(a->can_be_sailed || !b->can_be_sailed);
    if (!b->can_be_sailed) return;
    const lw_prospect *p = &a->prospect, *q = &b->prospect;
    if (aim == LW_AIM_RACE) CHECK(p->seconds <= q->seconds);
    if (aim == LW_AIM_RACE) return;
    CHECK(a->flies || !b->flies);
    if (a->flies != b->flies) return;
    if (aim == LW_AIM_EASY) CHECK(p->held_up_to >= q->held_up_to);
    if (aim == LW_AIM_STEADY)
        CHECK(p->seconds + 2.0 * p->swim_seconds <= q->seconds + 2.0 * q->swim_seconds + 1e-9);
}

// Every pin has one place, best first.
static void check_choice(const lw_choice *choice, const lw_outlook *outlook)
{
    CHECK(choice->count == outlook->pin_count);
    bool seen[LW_PINS_MOST] = {false};
    for (size_t i = 0; i < choice->count; i++) {
        const lw_placing *place = &choice->places[i];
        CHECK(place->pin < outlook->pin_count && !seen[place->pin]);
        seen[place->pin] = true;
        CHECK((place->reason == LW_REASON_FIRST) <= (i == 0));
        check_place(place, outlook->cost.swim);
        for (size_t j = i + 1; j < choice->count; j++) {
            check_order(place, &choice->places[j], choice->aim);
        }
    }
}

// The first days are worked out, with short rides; the others have the ranges of the claim above,
// and rides of any kind.
TEST_FUNCTION(any_day_has_a_ranking)
{
    static lw_outlook outlook;
    random_stream stream = stream_of_run(13);
    long again = 0;
    const int ridden = cases_of_run(OUTLOOKS), days = ridden + cases_of_run(DAYS);
    const range_pool pool = {ranges, (size_t)fmin(cases_of_run(RANGES), RANGES)};
    for (int run = 0; run < days; run++) {
        const char *why;
        const lw_boat boat = random_boat(kind_of(run), &stream, &again);
        const lw_person person = random_person(kind_of(run), &stream);
        lw_day day = random_day(kind_of(run), &stream);
        if (!lw_day_settle(&day, &why)) continue;
        lw_outlook_begin(&outlook, &boat, random_sections(&stream), &person, &day);
        if (run < ridden) {
            outlook.effort.seconds = 10.0;
            for (size_t step = 0; step < lw_outlook_steps(&outlook); step++) {
                lw_outlook_step(&outlook, step);
            }
        } else {
            draw_ranges(&outlook, &pool, &stream);
            draw_rides(&outlook, &stream);
        }
        lw_outlook_end(&outlook);
        for (int aim = 0; aim < LW_AIM_COUNT; aim++) {
            const lw_choice choice =
                lw_choice_of(&outlook, (lw_aim)aim, (run % 3 - 1) * 2.0 * LW_KN);
            check_choice(&choice, &outlook);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(any_question_has_a_balance_or_a_plain_no),
        TEST(any_range_is_whole),
        TEST(any_day_has_a_ranking),
    };
    return RUN_TESTS(tests);
}
