// card.h - `lullwise card`: what is carried afloat, for a day or a season, on a small card.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_CARD_H
#define LW_ANSWER_CARD_H

#include "answer/question.h"
#include "answer/words/caution.h"
#include "answer/words/move_text.h"
#include "picture/card_page.h"

#define LW_CARD_SAILORS 2
#define LW_CARD_WINDS   8   // that turns are told for
#define LW_CARD_RUNGS   24  // changes of the pin along the wind

// A pin on a course.
typedef struct lw_card_flights {
    lw_range range;
    double most[LW_CARD_WINDS];  // turns that hold most; NAN: no flight keeps its margins
} lw_card_flights;

// Winds of a pin on every course; 0: there is none.
typedef struct lw_card_limits {
    double launches_at, stays_up_at, held_up_to;  // [m/s]
} lw_card_limits;

// The pin from a wind on.
typedef struct lw_card_rung {
    lw_gusts gusts;
    size_t pin;
    bool flies;    // else no pin does
    bool is_held;  // in the puffs
} lw_card_rung;

// One sailor's part.
typedef struct lw_card_side {
    lw_picked picked;    // ranked for a day alone
    lw_outlook outlook;  // the picked one's; for a season without rides
    size_t steps;        // of it that are known of
    lw_card_flights of[LW_PINS_MOST][LW_COURSE_COUNT];
    lw_card_limits limits[LW_PINS_MOST];
    size_t rung_count;
    lw_card_rung rungs[LW_CARD_RUNGS];
} lw_card_side;

// What the boat does, and what is moved first.
typedef struct lw_card_sign {
    lw_sign sign;
    char change[LW_MOVE_LENGTH];
} lw_card_sign;
#define LW_CARD_SIGNS 9

typedef struct lw_carded {
    lw_paper paper;
    bool is_season;
    char date[16];  // "" when it is not known
    lw_unit speed_unit;
    size_t wind_count;
    double winds[LW_CARD_WINDS];  // [m/s] lull, mean and puff of the day, or a season's means
    size_t side_count;
    lw_card_side sides[LW_CARD_SAILORS];
    size_t sign_count;
    lw_card_sign signs[LW_CARD_SIGNS];
} lw_carded;

// What a step works out: a pin on a course, or a step of an outlook.
typedef struct lw_card_part {
    lw_card_flights flights;
    lw_outlook_part outlook;
} lw_card_part;

bool lw_card_flies(const lw_card_side *side);  // any pin, in any of the winds

// Fills limits and rungs from what the steps gave.
void lw_card_climb(const lw_carded *card, lw_card_side *side);

// The rung of one of the winds of a season.
const lw_card_rung *lw_card_rung_in(const lw_card_side *side, double mean);

// --- in words, speeds in the card's unit

#define LW_CARD_WORDS 400

typedef char lw_card_words[LW_CARD_WORDS];

void lw_card_who(const lw_card_side *side, lw_card_words text);  // "Wren, 69 kg", gear and all

// The largest letters: "Pin A", "Nothing flies in puffs of 5.0 kn"; and what stands under it.
void lw_card_headline(const lw_carded *card, const lw_card_side *side, lw_card_words text);
void lw_card_under(const lw_carded *card, const lw_card_side *side, lw_card_words text);

// "takes off 8.6, stays up 7.4, held to 13.3 kn".
void lw_card_limits_text(const lw_carded *card, const lw_card_limits *limits, lw_card_words text);

// "From a lull of 8.0 kn: A, 10.4 kn: B."
void lw_card_ladder(const lw_carded *card, const lw_card_side *side, lw_card_words text);

// When to stop and change the pin.
void lw_card_stop(const lw_carded *card, const lw_card_side *side, lw_card_words text);

void lw_card_wind_name(const lw_carded *card, size_t wind, char text[LW_CELL_LENGTH]);

// Turns of a pin on a course in a wind: "+1.2", "(+1.2)" beyond the hold there, "-" where she does
// not stay up. Returns them, NAN for the last.
typedef struct lw_card_cell {
    size_t pin, course, wind;
    bool is_most;  // those that hold most
} lw_card_cell;
double lw_card_turns(const lw_carded *card, const lw_card_side *side, lw_card_cell cell,
                     char text[LW_CELL_LENGTH]);
bool lw_card_is_flown(const lw_carded *card, const lw_card_side *side, size_t pin, size_t wind);

#define LW_CARD_TURNS_NOTE                                                                       \
    "Turns from the mark: for speed; most: that hold most. Plus: rudder lift on, bow down. (): " \
    "beyond the hold. -: not up."

// On the first page, which is what is looked at afloat; all cautions stand on the second.
#define LW_CARD_CARE "Helmet, buoyancy aid, dressed for the water; not alone."

// Where a page had no room for all.
#define LW_CARD_SPARED "No room here for more: `lullwise card` tells the rest."

void lw_card_grip(const lw_carded *card, lw_card_words text);   // which way it adds rudder lift
void lw_card_scene(const lw_carded *card, lw_card_words text);  // day and winds
void lw_card_made(const lw_carded *card, lw_card_words text);   // version, date, hashes
size_t lw_card_trust(const lw_carded *card, lw_card_words texts[]);  // LW_CARD_TRUST_MOST at most
#define LW_CARD_TRUST_MOST 6

// Cautions of both sailors, at most so many; of one alone with the name before it.
#define LW_CARD_CAUTIONS_MOST (LW_CARD_SAILORS * LW_CAUTIONS_MOST)
size_t lw_card_cautions(const lw_carded *card, lw_card_words texts[]);

// What the first sailor sees with her pin, and moves first. Fills `signs`.
void lw_card_read_signs(lw_carded *card);
void lw_card_signs_head(const lw_carded *card, lw_card_words text);

// --- the faces of the question

bool lw_carded_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal);
size_t lw_carded_steps(void *it);
void lw_carded_step(void *it, size_t step);
void lw_carded_give(const void *it, size_t step, void *part);
void lw_carded_take(void *it, size_t step, const void *part);
void lw_carded_end(void *it);
bool lw_carded_is_answered(const void *it);
void lw_carded_tell(const void *it, lw_teller *teller);
void lw_carded_front(const lw_carded *card, lw_card_sheet *sheet);
void lw_carded_back(const lw_carded *card, lw_card_sheet *sheet);
void lw_carded_draw(const void *it, FILE *out);
void lw_carded_draw_back(const void *it, FILE *out);

#endif
