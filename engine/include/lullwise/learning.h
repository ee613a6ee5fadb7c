// learning.h - what nobody can measure of a boat, learned from days that were sailed.
// SPDX-License-Identifier: MIT
//
// A day tells numbers, each with a standard error; the engine foresees each from the hidden
// quantities. They are what is most likely, given the days and what was thought before
// [tarantola-2005]:
//
//     min  sum over days r^T C^-1 r + sum over quantities ((x - x_0) / e_0)^2
//
// r: told less foreseen; C: the errors of a day's numbers and that of its wind, which they share.
// Turns are foreseen by steady flight, all else by rides through gusts and chop, in which she is
// not as fast as in an even wind: in the lulls of a light day she flies on, in puffs she is eased.
//
// Holds for    one boat, and sailors of about one weight and skill; errors that are normal.
// Leaves out   how far lulls and puffs go from the mean, chop, water and air of single days, for
//              which those in their middle stand.

#ifndef LW_LEARNING_H
#define LW_LEARNING_H

#include "lullwise/logged.h"
#include "lullwise/range.h"

// --- hidden quantities

typedef struct lw_hidden {
    double main_incidence;    // [rad] more at every pin than measured
    double rudder_incidence;  // [rad] more at the reference mark than measured
    double main_chord;        // [-]   of the main foil as it lifts / as measured
    double drag_area;         // [m^2] of windage more than given, head to wind and abeam
    double sail_power;        // [-]   greatest lift / what is given
    double chop;              // [-]   height of the waves as they shake her / as given
    double skill;             // [-]   of the sailor, more than given
} lw_hidden;
#define LW_HIDDEN_COUNT (sizeof(lw_hidden) / sizeof(double))

// A preset is what is thought before any day; an error how surely.
extern const lw_table lw_hidden_table;

// Puts them into a copy of boat and sailor as measured and of a day, as given and as settled. The
// chop of a day that has only a fetch grows with its square root.  [kamphuis]
void lw_hidden_put(const lw_hidden *hidden, lw_inputs *inputs);

// --- what days tell

// Of one day; NAN: not told. A row's error is the number's own, without that of the wind, nor that
// of gusts and waves, which are no two days the same.
typedef struct lw_lesson {
    double upwind_turns, reach_turns, downwind_turns;        // [turns] rudder lift on, as most used
    double upwind_speed, reach_speed, downwind_speed;        // [m/s]   mean while she flew
    double upwind_scatter, reach_scatter, downwind_scatter;  // [m/s]   of that
    double flying;                                           // [-]     part of the time under way
    double swims;                                            // [1/s]
} lw_lesson;
#define LW_LESSON_COUNT (sizeof(lw_lesson) / sizeof(double))

// Rows of a kind, one for each course but of the last two.
typedef enum lw_lesson_kind {
    LW_LESSON_TURNS,
    LW_LESSON_SPEED,
    LW_LESSON_SCATTER,
    LW_LESSON_FLYING,
    LW_LESSON_SWIMS,
    LW_LESSON_KINDS
} lw_lesson_kind;
lw_lesson_kind lw_lesson_kind_of(size_t row);
size_t lw_lesson_first(lw_lesson_kind kind);  // row of it

extern const lw_table lw_lesson_table;

#define LW_WIND_ERROR (0.7 * LW_KN)  // of a day's mean wind as read, where she sailed  [judged]

typedef struct lw_lesson_day {
    size_t pin;
    double wind;  // mean [m/s] at the height of the season's day
    lw_lesson told;
    lw_lesson seconds;  // [s] that each was told of; of turns none
} lw_lesson_day;

typedef struct lw_season {
    const lw_boat *boat;
    const lw_sections *sections;
    const lw_person *person;
    lw_day day;  // water, air, sea and how far puffs go above the mean, in the middle of the days
    const lw_lesson_day *days;
    size_t count;
    double asked;  // [m/s] a mean wind that is asked about, too; 0: none
    double leg;    // [s] of a ride; LW_SEASON_LEG, or less to be quick
} lw_season;
#define LW_SEASON_LEG 150.0  // [judged]

// The lesson of a logged day sailed with this pin. Speeds flown for a minute count  [judged]. Where
// nobody says how long she was afloat, swims tell nothing.
lw_lesson_day lw_lesson_of(const lw_logged *logged, size_t pin);

// Moves the middle of so many days on for one more; the first replaces what stood there.
void lw_season_day_add(lw_day *day, size_t before, const lw_logged *logged);

// --- what is foreseen, along the wind

// A steady flight trimmed for speed.
typedef struct lw_foreseen {
    double turns;      // [turns] NAN: does not fly, or does not keep her margins
    double speed;      // [m/s]
    double made_good;  // [m/s] along the course
} lw_foreseen;

// Winds in which she is ridden, where the season has days beside them.
#define LW_RIDDEN_FIRST (6.0 * LW_KN)
#define LW_RIDDEN_APART (2.0 * LW_KN)
#define LW_RIDDEN_WINDS 12
#define LW_RIDDEN_REACH (2.5 * LW_KN)  // of a day's wind, within which she is ridden

typedef struct lw_flights {
    lw_foreseen of[LW_PINS_MOST][LW_COURSE_COUNT][LW_RANGE_WINDS];
    lw_lesson ridden[LW_PINS_MOST][LW_RIDDEN_WINDS];  // but the turns; NAN: not ridden, or not told
} lw_flights;

// How many of them there are, of all pins.
size_t lw_season_winds(const lw_season *season);

// What is tried with one pin.
typedef struct lw_trying {
    const lw_season *season;
    const lw_craft *craft;  // as measured: others have its hull's form
    lw_hidden hidden;
    size_t pin;
} lw_trying;

// Flies it, rides it or leaves the rides that there are, and keeps the walks.
void lw_flights_add(lw_flights *flights, const lw_trying *trying, lw_walk walks[LW_COURSE_COUNT],
                    bool rides);

// A little beside what was walked: steady flights from there in about the winds of the days, and
// rides in every so-many-th wind; 0: none.
void lw_flights_add_beside(lw_flights *flights, const lw_trying *trying,
                           const lw_walk walks[LW_COURSE_COUNT], size_t every);

// The steady flights of others, with the rudder wound otherwise.
void lw_flights_add_wound(lw_flights *flights, const lw_flights *others, size_t pin, double turns);

// A row of the lessons, foreseen in a wind: straight between the knots.
double lw_flights_lesson(const lw_flights *flights, size_t pin, double wind, size_t row);

// --- learned

#define LW_LEARNED_LEAST 6    // numbers told, below which nothing is learned      [judged]
#define LW_ALIKE         0.9  // correlation above which two cannot be told apart  [judged]
#define LW_AS_BEFORE     0.8  // of the error before: one that is not much smaller [judged]

typedef struct lw_learned {
    lw_hidden values, errors;  // most likely, and one standard error of each
    double covariance[LW_HIDDEN_COUNT][LW_HIDDEN_COUNT];  // in errors before: 1 before any day
    size_t days, numbers;                                 // that counted, and that stood in them
} lw_learned;

// As it is kept in a file, for the boat whose record has this hash.
typedef struct lw_taught {
    double days, numbers;
} lw_taught;
typedef struct lw_learned_boat {
    char boat[LW_NAME_LENGTH];  // its name
    char hash[LW_NAME_LENGTH];  // 16 hexadecimal digits
    lw_hidden values, errors;
    lw_taught from;
} lw_learned_boat;
extern const lw_record lw_learned_record;

// Root of the mean squared difference between what days told and what was foreseen of them without
// them: five parts of the days left out in turn. NAN where no day tells it.
typedef struct lw_left_out {
    double as_measured[LW_LESSON_KINDS], learned[LW_LESSON_KINDS];
} lw_left_out;

// How a row of rides moves with a quantity: a line over the wind, and more of one in light winds.
#define LW_TREND_TERMS 3
typedef struct lw_trend {
    double line[LW_LESSON_COUNT][LW_HIDDEN_COUNT][LW_TREND_TERMS];
} lw_trend;

// A round is of what was thought before, by rides too; the next of one error beside that; then what
// is most likely by these is the middle, by rides too; the fourth is of steady flight beside it.
// If what comes of that is far from the middle, steady flight is asked twice more, from there.
#define LW_LEARNING_ROUNDS 6
#define LW_LEARNING_SETS   (2 * LW_HIDDEN_COUNT)  // of values in a round, at most

// On its way, in errors before any day. The season must outlive it.
typedef struct lw_learning {
    const lw_season *season;
    lw_craft craft;  // as measured
    lw_hidden before, errors;
    lw_flights measured;                                      // before
    double middle[LW_HIDDEN_COUNT];                           // of the steady flights tried last
    double ridden_at[LW_HIDDEN_COUNT];                        // and of the rides
    lw_flights first;                                         // there
    lw_walk walks[LW_PINS_MOST][LW_COURSE_COUNT];             // there; of no craft any more
    lw_flights more[LW_HIDDEN_COUNT], less[LW_HIDDEN_COUNT];  // one error beside
    lw_trend trend;
    size_t round, rounds;                           // that is to be done, of so many
    bool is_done[LW_LEARNING_SETS * LW_PINS_MOST];  // of its steps
} lw_learning;

void lw_learning_begin(lw_learning *learning, const lw_season *season);

// Steps that there are by now; when all are done there may be more. Those of now stand apart.
size_t lw_learning_steps(lw_learning *learning);
void lw_learning_step(lw_learning *learning, size_t step);
bool lw_learning_is_whole(const lw_learning *learning);  // all those of now are done

// With all steps done: what is learned of all days; how well those left out are foreseen.
lw_learned lw_learning_end(const lw_learning *learning);
lw_left_out lw_learning_left_out(const lw_learning *learning);

// --- what to try next

#define LW_TRIALS_MOST 12  // told, the best first

// A course sailed until turns and speed are found, with one pin or, where they differ, two; or how
// much faster she is with a turn more than with a turn less.
typedef struct lw_trial {
    size_t pin, other;
    lw_course_kind course;
    bool is_of_turn;  // with one pin, the rudder a turn more and a turn less than is best
    double error;     // [s] of the difference that the choice hangs on, once it is sailed
} lw_trial;

// What the choice hangs on: time round the legs with one pin less that with the other, in the mean
// wind, by what is made good in steady flight.
typedef struct lw_next {
    bool is_known;          // both fly all legs
    size_t first, second;   // pins
    double seconds, error;  // [s] between them, and its standard error by what is learned
    size_t count;
    lw_trial trials[LW_TRIALS_MOST];
} lw_next;

// The two pins that are fastest round the day's legs, and the trials that would make the error of
// their difference least: linear, with normal errors [lindley-1956].
lw_next lw_learning_next(const lw_learning *learning, const lw_day *day);

#endif
