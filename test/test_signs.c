// test_signs.c - reading the boat: signs, what they are likely to be, what to move.
// SPDX-License-Identifier: MIT
//
// What sailors do about four of the signs is common practice, without a source. Made states have
// one thing wrong; the invented demo boat.

#include "test/made_states.h"

#include <stdio.h>

#include "answer/words/move_text.h"

static lw_scene scene;
static lw_diagnosis found;
static lw_remedy remedies[LW_REMEDIES_MOST];

static void scene_in(const lw_craft *craft, double knots, int course)
{
    const lw_wind wind = wind_of(knots);
    lw_scene_prepare(&scene, craft, &demo.boat, &wind, lw_course_of((lw_course_kind)course));
}

// Of one sign, with nothing known beside it.
static void find_causes_of(lw_sign sign)
{
    const lw_signs_seen seen = {.set = LW_SIGN_BIT(sign)};
    const lw_known nothing = {.has_pin = false};
    lw_diagnose(&scene, &nothing, &seen, &found);
}

static int start(void **state)
{
    (void)state;
    read_demo();
    prepare_crafts();
    return 0;
}

// --- laws

static void every_sign_and_lever_has_its_words(void **state)
{
    (void)state;
    for (int s = 0; s < LW_SIGNS; s++) {
        const lw_sign sign = (lw_sign)s;
        assert_int_equal(lw_sign_named(lw_sign_key(sign)), sign);
        assert_int_equal(lw_sign_nearest(lw_sign_key(sign)), sign);
        assert_true(lw_sign_text(sign)[0] && lw_sign_stop(sign)[0]);
    }
    assert_int_equal(lw_sign_named("hop"), LW_SIGNS);
    assert_int_equal(lw_sign_nearest("hop"), LW_SIGN_HOPS);
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever_row *row = lw_lever_of((lw_lever)k);
        assert_true(row->often > 0.0 && row->usual > 0.0 && row->doubt <= 1.0);
        assert_true(row->too_much[0] && row->too_little[0] && row->check[0]);
    }
}

static void chances_sum_to_one_and_the_likeliest_comes_first(void **state)
{
    (void)state;
    scene_in(&crafts[4], 13.0, LW_UPWIND);
    for (int s = 0; s < LW_SIGNS; s++) {
        find_causes_of((lw_sign)s);
        double sum = found.nothing;
        for (size_t i = 0; i < found.count; i++) {
            sum += found.causes[i].chance;
            if (i > 0) assert_true(found.causes[i].chance <= found.causes[i - 1].chance);
        }
        assert_float_equal(sum, 1.0, 1e-12);
    }
}

static void a_pins_own_stance_is_its_trim(void **state)
{
    (void)state;
    scene_in(&crafts[4], 13.0, LW_REACH);
    for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
        lw_stance again = {.levers = scene.own[pin].levers, .pin = pin};
        lw_scene_stances(&scene, &again, 1);
        const lw_flight *a = &again.at[LW_IN_MEAN].flight,
                        *b = &scene.own[pin].at[LW_IN_MEAN].flight;
        assert_float_equal(a->speed, b->speed, 1e-6);
        assert_float_equal(a->pitch, b->pitch, 1e-7);
    }
}

static void stances_do_not_hang_on_their_neighbours(void **state)
{
    (void)state;
    scene_in(&crafts[2], 14.0, LW_UPWIND);
    lw_stance many[40], alone;
    for (int i = 0; i < 40; i++) {
        many[i] = (lw_stance){.levers = scene.own[i % 4].levers, .pin = (size_t)(i % 4)};
        many[i].levers.turns += 0.05 * i;
        many[i].levers.sail = i % 3 ? 1.0 : 1.1;
    }
    alone = many[27];
    lw_scene_stances(&scene, many, 40);
    lw_scene_stances(&scene, &alone, 1);
    assert_float_equal(alone.at[LW_IN_PUFF].flight.pitch, many[27].at[LW_IN_PUFF].flight.pitch,
                       0.0);
}

static void what_is_told_and_off_is_blamed(void **state)
{
    (void)state;
    scene_in(&crafts[4], 13.0, LW_UPWIND);
    const size_t pin = scene.proper;
    lw_known known = {.has_pin = true, .pin = pin};
    known.has[LW_LEVER_TURNS] = true;
    known.levers.turns = scene.own[pin].levers.turns - 2.5;
    const lw_signs_seen seen = {.set = LW_SIGN_BIT(LW_SIGN_BOW_UP)};
    lw_diagnose(&scene, &known, &seen, &found);
    assert_int_equal(found.causes[0].lever, LW_LEVER_TURNS);
    assert_false(found.causes[0].is_more);
    assert_true(lw_remedies_of(&scene, &found, remedies) > 0);
    assert_int_equal(remedies[0].lever, LW_LEVER_TURNS);
    assert_float_equal(remedies[0].by, 2.5, 0.26);
    assert_true(remedies[0].is_enough && remedies[0].rights);
}

static void signs_that_contradict_are_found(void **state)
{
    (void)state;
    lw_sign one, other;
    const lw_sign_set both = LW_SIGN_BIT(LW_SIGN_BOW_UP) | LW_SIGN_BIT(LW_SIGN_BOW_DOWN);
    assert_true(lw_signs_clash(both | LW_SIGN_BIT(LW_SIGN_SLOW), &one, &other));
    assert_int_equal(one, LW_SIGN_BOW_UP);
    assert_int_equal(other, LW_SIGN_BOW_DOWN);
    assert_false(lw_signs_clash(LW_SIGN_BIT(LW_SIGN_BOW_UP), &one, &other));
}

// A scene knows each pin's flight wherever the pin's range has one: in little wind a search from
// nothing finds none, or stands still on the way.
static void a_pin_that_stays_up_is_up_in_the_scene(void **state)
{
    (void)state;
    static lw_range range;
    int up = 0;
    for (int sailor = 0; sailor < SAILORS; sailor += 4) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            const lw_wind wind = wind_of(9.0);
            scene_in(&crafts[sailor], 9.0, course);
            for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
                const lw_setup setup = lw_craft_setup(&crafts[sailor], &demo.boat, pin);
                lw_range_of(&crafts[sailor], &setup, lw_course_of((lw_course_kind)course),
                            wind.puff - wind.mean, &range);
                if (!range.has_flight || range.stays_up_at > wind.mean - 0.5 * LW_KN) continue;
                const lw_answer *own = &scene.own[pin].at[LW_IN_MEAN];
                const lw_flight *there = &range.at[9 - LW_RANGE_FIRST_KN].trimmed.flight;
                assert_true(lw_answer_is_up(own));
                assert_float_equal(own->flight.speed, there->speed, 0.5);
                assert_float_equal(own->flight.pitch, there->pitch, 1.0 * LW_DEG);
                up++;
            }
        }
    }
    assert_true(up > 24);
}

static void no_cause_is_beyond_what_the_boat_allows(void **state)
{
    (void)state;
    scene_in(&crafts[4], 13.0, LW_UPWIND);
    for (int s = 0; s < LW_SIGNS; s++) {
        find_causes_of((lw_sign)s);
        for (size_t i = 0; i < found.count; i++) {
            const lw_levers *levers = &found.causes[i].stance.levers;
            const lw_craft *craft = scene.craft;
            assert_true(levers->place > craft->place_aft - craft->transom_x - 1e-3);
            assert_true(levers->place < craft->place_forward - craft->transom_x + 1e-3);
            assert_true(levers->turns >= craft->least_turns && levers->turns <= craft->most_turns);
        }
    }
}

// --- what sailors do about a sign: common practice, no source

typedef struct practice_count {
    int held, all;
} practice_count;

// The first move afloat, or ashore; NULL: none.
static const lw_remedy *first_move(size_t count, bool is_afloat)
{
    for (size_t i = 0; i < count; i++) {
        if (lw_lever_of(remedies[i].lever)->is_trim == is_afloat) return &remedies[i];
    }
    return NULL;
}

static bool is_as_practised(lw_sign sign)
{
    const size_t count = lw_remedies_of(&scene, &found, remedies);
    const bool is_trim = sign == LW_SIGN_BOW_UP || sign == LW_SIGN_BOW_DOWN;
    const lw_remedy *first = first_move(count, is_trim);
    if (!first) return false;
    if (is_trim)
        return first->lever == LW_LEVER_TURNS && first->is_more == (sign == LW_SIGN_BOW_UP);
    if (first->lever != LW_LEVER_PIN || first->is_more) return false;
    // Rises: less of both. As told: what is left untold is within what a trim is known to, for on a
    // reach turns +2.3 and +3.5 may be 0.01 kn apart.
    return sign == LW_SIGN_NOSE_RISES || first->turns < LW_TURNS_UNTOLD;
}

// Turns off the pin's own, either way: where the sign shows; of the bow alone, where she does not
// rise as well.
static void count_sign(lw_sign sign, size_t pin, double turns, practice_count *to)
{
    const bool is_stop = sign == LW_SIGN_NOSE_RISES || sign == LW_SIGN_RISES;
    const lw_sign_set stop =
        is_stop ? 0 : LW_SIGN_BIT(LW_SIGN_NOSE_RISES) | LW_SIGN_BIT(LW_SIGN_RISES);
    lw_stance stance = {.levers = scene.own[pin].levers, .pin = pin};
    stance.levers.turns += turns;
    if (stance.levers.turns < scene.craft->least_turns ||
        stance.levers.turns > scene.craft->most_turns)
        return;
    lw_scene_stances(&scene, &stance, 1);
    if (stance.at[LW_IN_MEAN].outcome != LW_FLIES) return;
    const lw_seen look = lw_seen_of(&scene, &stance);
    const lw_sign_set shown = shown_by(&look);
    if (!(shown & LW_SIGN_BIT(sign)) || (shown & stop)) return;
    const lw_known known = {.has_pin = true, .pin = pin};
    const lw_signs_seen seen = {.set = LW_SIGN_BIT(sign)};
    lw_diagnose(&scene, &known, &seen, &found);
    to->all++;
    to->held += is_as_practised(sign);
}

static void count_scene(lw_sign sign, practice_count *to)
{
    const bool is_of_pin = sign == LW_SIGN_RISES;  // with the pin's own turns
    for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
        const bool is_weakest = pin + 1 == demo.boat.pin_count;
        if (scene.own[pin].at[LW_IN_MEAN].outcome != LW_FLIES) continue;
        if (is_weakest && (is_of_pin || sign == LW_SIGN_NOSE_RISES)) continue;
        for (double turns = is_of_pin ? 0.0 : -3.0; turns < (is_of_pin ? 0.1 : 3.1); turns += 0.5)
            count_sign(sign, pin, turns, to);
    }
}

static void four_signs_are_answered_as_sailors_do(void **state)
{
    (void)state;
    static const struct {
        lw_sign sign;
        double least;
        const char *then;
    } facts[] = {{LW_SIGN_BOW_UP, 0.95, "more rudder lift"},
                 {LW_SIGN_BOW_DOWN, 0.95, "less rudder lift"},
                 {LW_SIGN_RISES, 0.8, "less of both (aimed at: 95 %)"},
                 {LW_SIGN_NOSE_RISES, 0.95, "a pin with less lift"}};
    practice_count counts[4] = {{0}};
    for (int sailor = 2; sailor < SAILORS; sailor += 6) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            for (double knots = 8.0; knots < 22.1; knots += 2.0) {
                scene_in(&crafts[sailor], knots, course);
                for (int i = 0; i < 4; i++) count_scene(facts[i].sign, &counts[i]);
            }
        }
    }
    printf("Common practice, no source; over pins, winds of 8 to 22 kn, courses, two sailors.\n");
    for (int i = 0; i < 4; i++) {
        printf("  %-10s %3d of %3d: %s\n", lw_sign_key(facts[i].sign), counts[i].held,
               counts[i].all, facts[i].then);
        assert_true(counts[i].held >= facts[i].least * counts[i].all);
    }
}

// --- made states

// clang-format off
#define FAULTS 11
static const struct fault_row {
    const char *name;
    lw_lever lever;
    double from, to;  // off, in SI; of the pin: holes
} fault_rows[FAULTS] = {
    {"pin too strong",   LW_LEVER_PIN,    1.0,           2.5},
    {"pin too weak",     LW_LEVER_PIN,   -1.0,          -2.5},
    {"turns too many",   LW_LEVER_TURNS,  2.0,           2.0},
    {"turns too few",    LW_LEVER_TURNS, -2.0,          -2.0},
    {"wand too long",    LW_LEVER_WAND,   0.08,          0.15},
    {"wand too short",   LW_LEVER_WAND,  -0.08,         -0.15},
    {"too far forward",  LW_LEVER_PLACE,  0.25,          0.5},
    {"too far aft",      LW_LEVER_PLACE, -0.25,         -0.5},
    {"sail too full",    LW_LEVER_SAIL,   0.15,          0.25},
    {"rod too high",     LW_LEVER_ROD,    2.0 * LW_DEG,  3.0 * LW_DEG},
    {"rod too low",      LW_LEVER_ROD,   -2.0 * LW_DEG, -3.0 * LW_DEG},
};
// clang-format on

typedef struct made {
    int fault;
    bool tells_turns;
    lw_stance stance;
    lw_signs_seen seen;
} made;

// Off a good set-up by one thing; false: the boat does not allow it, or does not fly.
static bool make_stance(random_stream *stream, made *it)
{
    static const int kinds[6][2] = {{0, 1}, {2, 3}, {4, 5}, {6, 7}, {8, 8}, {9, 10}};
    const int kind = (int)random_between(stream, 0.0, 6.0);
    it->fault = kinds[kind][random_between(stream, 0.0, 1.0) < 0.5];
    it->tells_turns = random_between(stream, 0.0, 1.0) < 0.5;
    const struct fault_row *row = &fault_rows[it->fault];
    const double off = random_between(stream, row->from, row->to);
    it->stance = (lw_stance){.levers = scene.own[scene.proper].levers, .pin = scene.proper};
    if (row->lever == LW_LEVER_PIN) {
        const int pin = (int)scene.proper - (int)off;
        if (pin < 0 || pin >= (int)demo.boat.pin_count) return false;
        it->stance = (lw_stance){.levers = scene.own[pin].levers, .pin = (size_t)pin};
    } else {
        const double value = lw_lever_get(&it->stance.levers, row->lever) + off;
        if (!lw_lever_is_possible(scene.craft, row->lever, value)) return false;
        lw_lever_put(&it->stance.levers, row->lever, value);
    }
    lw_scene_stances(&scene, &it->stance, 1);
    return it->stance.at[LW_IN_MEAN].outcome == LW_FLIES;
}

#define LEAST_FLOWN 60.0  // looks in flight: a fifth of the ride

// Rides it, and what is seen of it; false: nothing is, or she hardly flew.
static bool see(random_stream *stream, made *it)
{
    const uint64_t seed = random_bits(stream) >> 16;
    const measured fair = ridden(&scene, &scene.own[scene.proper], seed);
    const measured own =
        it->stance.pin == scene.proper ? fair : ridden(&scene, &scene.own[it->stance.pin], seed);
    const measured m = ridden(&scene, &it->stance, seed);
    if (fmin(fmin(m.flying, own.flying), fair.flying) < LEAST_FLOWN) return false;
    it->seen = (lw_signs_seen){.set = told_of(&m, &own, &fair)};
    read_photo(&m, stream, &it->seen);
    return it->seen.set != 0;
}

typedef struct score {
    int all, first, among_two;
} score;

static void diagnose(const made *it, bool with_photo)
{
    lw_known known = {.has_pin = true, .pin = it->stance.pin};
    lw_signs_seen seen = it->seen;
    known.has[LW_LEVER_TURNS] = it->tells_turns;
    known.levers.turns = it->stance.levers.turns;
    if (!with_photo) memset(seen.has, 0, sizeof seen.has);
    lw_diagnose(&scene, &known, &seen, &found);
}

static void add_score(const made *it, score *to)
{
    const struct fault_row *row = &fault_rows[it->fault];
    to->all++;
    for (size_t i = 0; i < found.count && i < 2; i++) {
        const lw_cause *cause = &found.causes[i];
        if (cause->lever != row->lever || cause->is_more != (row->from > 0.0)) continue;
        to->among_two++;
        to->first += i == 0;
    }
}

// The first advice taken, up to three times: whether she keeps her margins then, or as nearly as
// any set-up of this boat does in this wind.
static bool comes_back(const made *it)
{
    lw_stance now = it->stance;
    made then = *it;
    for (int time = 0; time < 3; time++) {
        if (lw_remedies_of(&scene, &found, remedies) == 0) break;
        const double was = lw_lever_get(&now.levers, remedies[0].lever);
        const lw_levers *after = &remedies[0].after.levers;
        if (remedies[0].lever == LW_LEVER_PIN) {
            now.pin = remedies[0].after.pin;
            now.levers.turns += remedies[0].turns;
            now.levers.place = after->place, now.levers.heel = after->heel;
        }
        lw_lever_put(&now.levers, remedies[0].lever, was + remedies[0].by);
        scene.wants_hump = scene.wants_damping = false;
        lw_scene_stances(&scene, &now, 1);
        const lw_seen look = lw_seen_of(&scene, &now);
        then.stance = now;
        then.seen = (lw_signs_seen){.set = shown_by(&look)};
        if (lw_stance_is_kept(&now) || !then.seen.set) break;
        diagnose(&then, false);
    }
    return lw_stance_is_kept(&now) || !lw_stance_is_kept(&scene.own[scene.proper]);
}

#ifdef __SANITIZE_ADDRESS__
#define STATES 40
#else
#define STATES 2000
#endif

typedef struct tally {
    score words[FAULTS], photo[FAULTS];
    int unseen, back, kept;
} tally;

static void make_some(random_stream *stream, int *left, tally *to)
{
    scene_in(&crafts[(int)random_between(stream, 0.0, SAILORS)], random_between(stream, 9.0, 19.0),
             (int)random_between(stream, 0.0, LW_COURSE_COUNT));
    const lw_stance *fair = &scene.own[scene.proper];
    if (!lw_answer_is_up(&fair->at[LW_IN_MEAN]) || !lw_answer_is_up(&fair->at[LW_IN_LULL])) return;
    for (int i = 0; i < 4 && *left > 0; i++) {
        made it;
        scene.wants_hump = scene.wants_damping = false;
        if (!make_stance(stream, &it)) continue;
        if (!see(stream, &it)) {
            to->unseen++;
            continue;
        }
        diagnose(&it, true);
        add_score(&it, &to->photo[it.fault]);
        diagnose(&it, false);
        add_score(&it, &to->words[it.fault]);
        to->kept += lw_stance_is_kept(&it.stance);
        to->back += comes_back(&it);
        --*left;
    }
}

static score sum_of(const score scores[FAULTS])
{
    score sum = {0};
    for (int i = 0; i < FAULTS; i++) {
        sum.all += scores[i].all;
        sum.first += scores[i].first;
        sum.among_two += scores[i].among_two;
    }
    return sum;
}

static double part(int of, int all) { return 100.0 * of / (all > 0 ? all : 1); }

static void print_score(const char *name, const score *words, const score *photo)
{
    printf("  %-16s %5d %6.0f %6.0f %8.0f %6.0f\n", name, words->all,
           part(words->first, words->all), part(words->among_two, words->all),
           part(photo->first, photo->all), part(photo->among_two, photo->all));
}

// Of few states a share is known to twice its standard error only.
static double floor_of(double share, int all)
{
    return all < 1000 ? share - 2.0 * sqrt(share * (100.0 - share) / all) : share;
}

static void the_true_cause_is_found_in_made_states(void **state)
{
    (void)state;
    static tally t;
    random_stream stream = {17};
    const int states = STATES * soak_times();
    for (int left = states; left > 0;) make_some(&stream, &left, &t);
    const score words = sum_of(t.words), photo = sum_of(t.photo);
    printf("Made states, one thing wrong; true cause first, and among two, of 100\n");
    printf("                            by words     with a photo\n");
    printf("  wrong             rides  first    two    first    two\n");
    for (int i = 0; i < FAULTS; i++) print_score(fault_rows[i].name, &t.words[i], &t.photo[i]);
    print_score("all", &words, &photo);
    printf("  aimed at: 80 and 95. Nothing to be seen in %d more.\n", t.unseen);
    printf(
        "  First advice at most three times: back inside the margins %.1f of 100 (aimed at: 90;\n"
        "  before: %.1f)\n",
        part(t.back, states), part(t.kept, states));
    assert_true(part(words.first, words.all) > floor_of(35.0, words.all));
    assert_true(part(words.among_two, words.all) > floor_of(55.0, words.all));
    assert_true(part(photo.first, photo.all) > floor_of(55.0, photo.all));
    assert_true(part(photo.among_two, photo.all) > floor_of(72.0, photo.all));
    assert_true(part(t.back, states) > floor_of(80.0, states));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_sign_and_lever_has_its_words),
        cmocka_unit_test(chances_sum_to_one_and_the_likeliest_comes_first),
        cmocka_unit_test(a_pins_own_stance_is_its_trim),
        cmocka_unit_test(stances_do_not_hang_on_their_neighbours),
        cmocka_unit_test(what_is_told_and_off_is_blamed),
        cmocka_unit_test(signs_that_contradict_are_found),
        cmocka_unit_test(a_pin_that_stays_up_is_up_in_the_scene),
        cmocka_unit_test(no_cause_is_beyond_what_the_boat_allows),
        cmocka_unit_test(four_signs_are_answered_as_sailors_do),
        cmocka_unit_test(the_true_cause_is_found_in_made_states),
    };
    return cmocka_run_group_tests(tests, start, NULL);
}
