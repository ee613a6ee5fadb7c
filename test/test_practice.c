// test_practice.c - the demo boat against what sailors of such boats hold to be true.
// SPDX-License-Identifier: MIT
//
// Facts of the trade, common practice without a source. Each is printed with the model's figure
// and the difference. Thresholds may differ by 2.5 kn, turns by 1, times by 5 minutes; directions
// and orders must hold exactly. Pins here: P4 the most lift .. P1 the least; A .. D in the file.
// Unless a fact says otherwise: sailor of 79 kg, windward and leeward legs, wind as read at 3 m,
// puffs 4.5 kn above the lulls.

#include <stdio.h>
#include <string.h>

#include "lullwise/choice.h"
#include "lullwise/swims.h"
#include "records/record_file.h"
#include "test/check.h"

enum { P4, P3, P2, P1 };  // as indices of the demo boat's pins

#define KNOTS(speed) ((speed) / LW_KN)

static lw_boat boat;
static lw_sailor sailor;
static lw_day day;
static lw_outlook usual, uneven, gentle;
static int held, missed;

static void read_or_stop(const lw_record *record, const char *path, void *data)
{
    lw_faults faults = {0};
    if (!lw_record_read_file(record, path, data, &faults)) fail_msg("%s does not read", path);
    lw_faults_free(&faults);
}

static void prepare(lw_outlook *outlook, double mass, double lull, double mean, double puff)
{
    lw_person person = sailor.person;
    lw_day then = day;
    person.mass = mass;
    then.wind.lull = lull * LW_KN;
    then.wind.mean = mean * LW_KN;
    then.wind.puff = puff * LW_KN;
    static lw_polar_room room;
    static lw_sections sections;
    if (sections.main_foil.tried == 0.0) lw_sections_prepare(&sections, &boat, &room);
    lw_outlook_prepare(outlook, &boat, &sections, &person, &then);
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

static size_t place_of(const lw_choice *choice, size_t pin)
{
    size_t at = 0;
    while (choice->places[at].pin != pin) at++;
    return at;
}

// Seconds round the course with each pin, in lulls from 8 kn on, mean and puff as far above them as
// in the usual day.
#define LULLS      7
#define LULL_FIRST 8.0
#define LULL_APART 2.5
typedef struct building {
    double seconds[LULLS][LW_PINS_MOST];
} building;

static void build(building *b, double mass)
{
    static lw_outlook outlook;
    for (int k = 0; k < LULLS; k++) {
        const double lull = LULL_FIRST + LULL_APART * k;
        prepare(&outlook, mass, lull, lull + 2.0, lull + 4.5);
        const lw_choice choice = lw_choice_of(&outlook, LW_AIM_RACE, 0.0);
        for (size_t i = 0; i < choice.count; i++) {
            b->seconds[k][choice.places[i].pin] = choice.places[i].prospect.seconds;
        }
    }
}

// Least lull [kn] from which on `calm` beats `strong` in the race, straight between the lulls that
// were looked at; 25: in none of them.
static double change_at(const building *b, size_t strong, size_t calm)
{
    for (int k = LULLS - 1; k >= 0; k--) {
        const double behind = b->seconds[k][calm] - b->seconds[k][strong];
        if (behind <= 0.0) continue;
        if (k + 1 == LULLS) return 25.0;
        const double ahead = b->seconds[k + 1][strong] - b->seconds[k + 1][calm];
        return LULL_FIRST + LULL_APART * (k + behind / (behind + ahead));
    }
    return LULL_FIRST;
}

static double launch_of(const lw_outlook *outlook, size_t pin)
{
    const lw_choice choice = lw_choice_of(outlook, LW_AIM_RACE, 0.0);
    return KNOTS(choice.places[place_of(&choice, pin)].prospect.launches_at);
}

static double hold_of(const lw_outlook *outlook, size_t pin)
{
    const lw_choice choice = lw_choice_of(outlook, LW_AIM_RACE, 0.0);
    return KNOTS(choice.places[place_of(&choice, pin)].prospect.held_up_to);
}

static lw_setup setup_of(const lw_outlook *outlook, size_t pin)
{
    lw_setup setup = outlook->craft.setup;
    setup.incidence = boat.pins[pin].incidence;
    return setup;
}

// Trimmed with the bow level on a reach.
static lw_answer trimmed(size_t pin, double wind_kn, lw_ask *ask)
{
    const lw_setup setup = setup_of(&usual, pin);
    *ask = lw_ask_of(&usual.craft, &setup, wind_kn * LW_KN, 100.0 * LW_DEG);
    const lw_freedom free = {
        .by = LW_BY_LEVEL, .heel = true, .place = true, .turns = true, .course = 100.0 * LW_DEG};
    const lw_trim trim = lw_trim_of(&usual.craft, ask, &free);
    *ask = trim.ask;
    return trim.steady;
}

static lw_answer balanced(lw_ask ask)
{
    lw_answer answer;
    lw_balance(&usual.craft, &ask, &answer, 1);
    return answer;
}

static bool fact_1(void)
{
    const int before = missed;
    row("1  P3 launches somewhere in 8-10 kn", 9.0, launch_of(&usual, P3), 1.0 + 2.5, true);
    row("   and is carried comfortably to", 16.0, hold_of(&usual, P3), 2.5, true);
    return all_held(before);
}

static bool fact_2(void)
{
    const int before = missed;
    row("2  P4 flies, and is useful in 8-10 kn: launches at", 8.0, launch_of(&usual, P4), 2.5,
        true);
    row("   and cannot be carried above", 12.0, hold_of(&usual, P4), 2.5,
        hold_of(&usual, P4) < hold_of(&usual, P3));
    return all_held(before);
}

static building at_79, at_92, at_64;

static bool fact_3(void)
{
    const int before = missed;
    build(&at_79, 79.0);
    const double first = change_at(&at_79, P3, P2), second = change_at(&at_79, P2, P1);
    row("3  racing, P3 to P2 when the lulls reach", 12.0, first, 2.5, first < second);
    row("   and P2 to P1 when the lulls reach", 18.0, second, 2.5, first < second);
    return all_held(before);
}

static bool fact_4(void)
{
    const int before = missed;
    build(&at_92, 92.0);
    build(&at_64, 64.0);
    const double at = change_at(&at_79, P3, P2);
    const double more = change_at(&at_92, P3, P2), less = change_at(&at_64, P3, P2);
    row("4  a sailor of 92 kg changes P3 to P2 in more wind", at, more, 1e9, more > at);
    row("   a sailor of 64 kg in less", at, less, 1e9, less < at);
    const double at_2 = change_at(&at_79, P2, P1);
    const double more_2 = change_at(&at_92, P2, P1), less_2 = change_at(&at_64, P2, P1);
    row("   92 kg changes P2 to P1 in more wind", at_2, more_2, 1e9, more_2 > at_2);
    row("   64 kg in less", at_2, less_2, 1e9, less_2 < at_2);
    return all_held(before);
}

static bool fact_5(void)
{
    const int before = missed;
    row("5  P1 launches in 12 kn, only just", 12.0, launch_of(&usual, P1), 2.5,
        launch_of(&usual, P1) > launch_of(&usual, P3));
    row("   much as P3 in 8 kn", 8.0, launch_of(&usual, P3), 2.5, true);
    return all_held(before);
}

// The balance with rudder lift taken off, a twentieth of a turn at a time, until the wand hangs as it
// did: the bow is level with where it was.
static lw_answer with_wand_at(lw_ask ask, double wand)
{
    ask.level = false;
    lw_answer answer = balanced(ask);
    for (int i = 0; i < 100 && answer.outcome == LW_FLIES && answer.flight.wand > wand; i++) {
        lw_ask_follow(&usual.craft, &ask, &answer);
        ask.rudder -= 0.05 * usual.craft.rudder_turn;
        answer = balanced(ask);
    }
    return answer;
}

// Turns of rudder lift to take off so that with one pin less the bow rides where it did.
static bool fact_6(void)
{
    const int before = missed;
    lw_ask ask;
    for (size_t pin = P4; pin < P1; pin++) {
        const lw_answer strong = trimmed(pin, 13.0, &ask);
        ask.setup = setup_of(&usual, pin + 1);
        const lw_answer calm = with_wand_at(ask, strong.flight.wand);
        const double off = strong.flight.turns - calm.flight.turns;
        char fact[64];
        snprintf(fact, sizeof fact, "%s  P%d to P%d, bow back where it was: turns off",
                 pin == P4 ? "6" : " ", 4 - (int)pin, 3 - (int)pin);
        row(fact, 1.5, off, 0.5 + 1.0, off > 0.0);
    }
    return all_held(before);
}

static bool fact_7(void)
{
    const int before = missed;
    lw_ask ask;
    const lw_answer level = trimmed(P3, 13.0, &ask);
    ask.level = false;
    ask.rudder += usual.craft.rudder_turn;
    const lw_answer more = balanced(ask);
    ask.rudder -= 2.0 * usual.craft.rudder_turn;
    const lw_answer less = balanced(ask);
    row("7  one turn on: bow goes up by (deg)", 0.0, more.flight.pitch / LW_DEG, 90.0,
        more.flight.pitch < level.flight.pitch);
    row("   one turn off: bow goes up by (deg)", 0.0, less.flight.pitch / LW_DEG, 90.0,
        less.flight.pitch > level.flight.pitch);

    // less of both: the next pin, and rudder lift off by the same angle
    ask.rudder += usual.craft.rudder_turn - (boat.pins[P3].incidence - boat.pins[P2].incidence);
    ask.setup = setup_of(&usual, P2);
    const lw_answer both = balanced(ask);
    const double lower = 100.0 * (level.flight.ride_height - both.flight.ride_height);
    row("   less of both: rides lower by (cm)", 0.0, lower, 90.0,
        both.outcome == LW_FLIES && lower > 0.0);
    return all_held(before);
}

// What came before the breaches of a boat that is carried into more wind than she is trimmed for.
typedef struct breaching {
    double breaches, seconds;
    double told;   // breaches with the sign within two seconds before
    double signs;  // [s] that have the sign within two seconds before them, breach or none
} breaching;

#define LOOK    0.04  // [s] between two looks at a ride
#define SECOND  25    // looks
#define MINUTE  1500
#define RIDES   10
#define AT_STOP (0.5 * LW_DEG)

// What an eye takes in within a second, waves evened out.
typedef struct glance {
    double pitch, height;  // means [rad], [m]
    bool is_at_stop;       // wand at its forward stop at some time
} glance;

static glance glance_at(const lw_trace *trace, int end)
{
    glance g = {0};
    for (int i = end - SECOND; i < end; i++) {
        g.pitch += trace[i].pitch / SECOND;
        g.height += trace[i].ride_height / SECOND;
        g.is_at_stop |= trace[i].wand <= usual.craft.linkage.forward_stop + AT_STOP;
    }
    return g;
}

// Bow below where the trim had it, higher than a second ago, wand at its forward stop.
static bool is_sign(const lw_trace *trace, int end, double bow_trimmed)
{
    if (end < 2 * SECOND) return false;
    const glance now = glance_at(trace, end), before = glance_at(trace, end - SECOND);
    return now.pitch < bow_trimmed && now.height > before.height && now.is_at_stop;
}

static void ride_minute(const lw_motion *motion, const lw_ride_plan *plan, double bow_trimmed,
                        breaching *sum)
{
    static lw_trace trace[MINUTE];
    lw_ride ride = {.events = NULL};
    int since = 1000;
    double counted = 0.0;
    lw_ride_begin(&ride, motion, plan);
    for (int look = 0; look < MINUTE; look++, since++) {
        trace[look] = lw_ride_trace(motion, &ride);
        if (is_sign(trace, look, bow_trimmed)) since = 0;
        lw_rides_advance(motion, &ride, 1, (size_t)(LOOK / motion->rules.step + 0.5));
        const double breaches = ride.tally.count[LW_RIDE_BREACH];
        if (since < 2 * SECOND) sum->told += breaches - counted, sum->signs += LOOK;
        counted = breaches;
    }
    sum->breaches += counted;
    sum->seconds += ride.tally.seconds;
}

// On a reach, trimmed in one wind and carried into another, with the rudder left there or rudder lift
// wound on.
static breaching carried(size_t pin, double trim_kn, double wind_kn, double turns_on)
{
    lw_ask ask;
    const lw_answer answer = trimmed(pin, trim_kn, &ask);
    const lw_weather weather = lw_weather_of(&usual.craft, &day);
    lw_motion motion = lw_motion_of(&usual.craft);
    lw_weather_put(&weather, wind_kn * LW_KN, &motion);
    lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &answer);
    plan.pilot.rudder += turns_on * usual.craft.rudder_turn;
    breaching sum = {0};
    for (plan.seed = 1; plan.seed <= RIDES; plan.seed++) {
        ride_minute(&motion, &plan, answer.flight.pitch, &sum);
    }
    return sum;
}

static double an_hour(const breaching *b) { return 3600.0 * b->breaches / b->seconds; }

static double share_of_signs(const breaching *b) { return b->signs / b->seconds; }

static bool fact_8(void)
{
    const int before = missed;
    const breaching own = carried(P4, 12.0, 12.0, 0.0), strong = carried(P4, 12.0, 20.0, 0.0);
    const breaching calm = carried(P2, 12.0, 20.0, 0.0);
    const double told = strong.told / fmax(strong.breaches, 1.0);
    row("8  P4 from 12 into 20 kn, a reach: of 10 breaches came", 10.0, 10.0 * told, 5.0,
        strong.breaches >= 10.0);
    printf("     within 2 s of bow down, still rising, wand at its stop\n");
    row("   of 10 moments so: in 20 kn; in the 12 kn it is for", 10.0 * share_of_signs(&strong),
        10.0 * share_of_signs(&own), 1e9, share_of_signs(&own) < 0.5 * share_of_signs(&strong));
    row("   with P2 in 20 kn", 10.0 * share_of_signs(&strong), 10.0 * share_of_signs(&calm), 1e9,
        share_of_signs(&calm) < 0.5 * share_of_signs(&strong));
    row("   breaches an hour, with P2 fewer", an_hour(&strong), an_hour(&calm), 1e9,
        calm.breaches < 0.5 * strong.breaches);
    row("   and with P4 in the 12 kn it is for", an_hour(&strong), an_hour(&own), 1e9,
        own.breaches < 0.5 * strong.breaches);
    const breaching wound = carried(P4, 12.0, 20.0, 1.0);
    printf("     (one turn of rudder lift on: %.0f breaches for %.0f, %.0f of them so)\n",
           wound.breaches, strong.breaches, wound.told);
    return all_held(before);
}

// The pin that wins a race in 6 to 10 kn wins in 6 to 22 kn too, with the swims that rides count.
static bool fact_9(void)
{
    const int before = missed;
    const lw_choice easy = lw_choice_of(&uneven, LW_AIM_EASY, 0.0);
    const lw_choice race = lw_choice_of(&uneven, LW_AIM_RACE, 0.0);
    const size_t strong = lw_choice_of(&gentle, LW_AIM_RACE, 0.0).places[0].pin;
    const size_t at = place_of(&race, strong);
    row("9  racing in 6-22 kn, swims counted: place of the", 1.0, 1.0 + (double)at, 0.0, true);
    printf("     pin that wins in 6-10 kn (P%d)\n", 4 - (int)strong);
    row("   easy: place of P1", 1.0, 1.0 + (double)place_of(&easy, P1), 0.0, true);
    for (size_t i = 0; i < race.count; i++) {
        const lw_placing *p = &race.places[i];
        printf("     (P%d: %.0f s, of it %.1f +- %.1f swims%s)\n", 4 - (int)p->pin,
               p->prospect.seconds, p->prospect.swims, p->prospect.swims_error,
               p->is_close ? ", too close to call" : "");
    }
    return all_held(before);
}

static bool fact_10(void)
{
    const int before = missed;
    const lw_choice choice = lw_choice_of(&usual, LW_AIM_RACE, 3.0 * LW_KN);
    const size_t pin = choice.places[0].pin;
    lw_ask ask;
    double seconds = 0.0, length = 0.0;
    for (size_t c = 0; c < usual.course_count; c++) {
        const lw_range *range = &usual.ranges[pin][c];
        const int k = (int)(KNOTS(choice.gusts.mean) + 0.5) - LW_RANGE_FIRST_KN;
        length += 2.5 * 1852.0;
        seconds += 2.5 * 1852.0 / range->at[k].trimmed.flight.speed;
    }
    (void)trimmed(pin, 13.0, &ask);
    row("10 five nautical miles of foiling: minutes", 17.5, seconds / 60.0 * 5.0 * 1852.0 / length,
        2.5 + 5.0, true);
    return all_held(before);
}

TEST_FUNCTION(demo_boat_agrees_with_eight_facts_of_common_practice)
{
    read_or_stop(&lw_boat_record, LW_DEMO_DIR "/heron.yaml", &boat);
    read_or_stop(&lw_sailor_record, LW_DEMO_DIR "/light.yaml", &sailor);
    read_or_stop(&lw_day_record, LW_DEMO_DIR "/breeze.yaml", &day);
    prepare(&usual, 79.0, 10.0, 12.0, 14.5);
    prepare(&uneven, 79.0, 6.0, 14.0, 22.0);
    prepare(&gentle, 79.0, 6.0, 8.0, 10.0);

    printf("\nCommon practice, no source. P4 the most lift, P1 the least.\n");
    printf("  %-52s %6s %6s %6s\n", "fact", "trade", "model", "diff");
    bool (*const facts[])(void) = {fact_1, fact_2, fact_3, fact_4, fact_5,
                                   fact_6, fact_7, fact_8, fact_9, fact_10};
    int facts_held = 0;
    for (size_t i = 0; i < sizeof facts / sizeof facts[0]; i++) facts_held += facts[i]();
    printf("  %d of 10 facts hold.\n\n", facts_held);
    CHECK(facts_held >= 8);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(demo_boat_agrees_with_eight_facts_of_common_practice),
    };
    return RUN_TESTS(tests);
}
