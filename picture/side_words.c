// side_words.c - heights, depths, angles and trim of a boat that is drawn from the side.
// SPDX-License-Identifier: MIT

#include <assert.h>
#include <math.h>
#include <string.h>

#include "picture/letter_width.h"
#include "picture/side.h"
#include "records/fault.h"

static const lw_svg_stroke thin = {.width = 1.0, .colour = LW_SIDE_GREY};

void lw_side_say(lw_side_view *s, lw_svg_point near, const char *text)
{
    assert(s->word_count < LW_SIDE_WORDS_MOST);
    s->words[s->word_count].near = near;
    LW_FIT(s->words[s->word_count].text, "%s", text);
    s->word_count++;
}

void lw_side_set_words(lw_side_view *s)
{
    for (size_t i = 0; i < s->word_count; i++) {
        lw_labels_put(&s->labels, s->words[i].near, LW_SIDE_LETTERS, s->words[i].text);
    }
}

// --- heights and angles

// Depth of a foil's middle under water, beneath it.
static void tell_depth(lw_side_view *s, const lw_strut *strut)
{
    char text[60];
    const lw_side_point foot = lw_side_posed(s, (lw_side_point){strut->x, -strut->length});
    lw_svg_point under = lw_side_pixel(s, foot);
    if (foot.y >= 0.0) return;
    LW_FIT(text, "%.0f cm deep", -100.0 * foot.y);
    under.y += 6.0;
    lw_side_say(s, under, text);
}

// Where nothing else is: between the main strut and the wand.
void lw_side_tell_height(lw_side_view *s)
{
    char text[60];
    const lw_svg_point hull = lw_side_on(s, 0.62 * s->of->boat->hull.length, 0.0);
    const lw_svg_point water = {hull.x, lw_side_pixel(s, (lw_side_point){0.0, 0.0}).y},
                       ends[] = {hull, water};
    if (water.y - hull.y < 4.0) return;
    lw_svg_line(s->out, hull, water, thin);
    for (int i = 0; i < 2; i++) {
        lw_svg_line(s->out, (lw_svg_point){ends[i].x - 5.0, ends[i].y},
                    (lw_svg_point){ends[i].x + 5.0, ends[i].y}, thin);
    }
    lw_labels_keep_off_line(&s->labels, hull, water, 2.0);
    LW_FIT(text, "%.0f cm up", 100.0 * s->of->flight->ride_height);
    lw_side_say(s, (lw_svg_point){hull.x, 0.5 * (hull.y + water.y)}, text);
}

static void tell_wand(lw_side_view *s)
{
    char text[60];
    const lw_linkage *l = &s->of->boat->linkage;
    LW_FIT(text, "wand %.0f°", s->of->flight->wand / LW_DEG);
    lw_side_say(s, lw_side_on(s, l->wand_x, l->wand_height), text);
}

// "bow 1.3° up"; the last of the ways where it reads 0.
static void fit_way(char text[60], const char *name, double angle, const char *const ways[3])
{
    const double degrees = fabs(angle) / LW_DEG;
    if (degrees < 0.05)
        lw_text_fit(text, 60, "%s %s", name, ways[2]);
    else
        lw_text_fit(text, 60, "%s %.1f° %s", name, degrees, ways[angle < 0.0]);
}

void lw_side_tell_trim(lw_side_view *s)
{
    static const char *const up[] = {"up", "down", "level"};
    static const char *const down[] = {"down", "up", "in line"};
    static const char *const windward[] = {"to windward", "to leeward", "none"};
    const lw_flight *f = s->of->flight;
    const lw_box *bounds = &s->labels.bounds;
    char text[4][60];
    fit_way(text[0], "bow", f->pitch, up);
    fit_way(text[1], "heel", f->heel, windward);
    fit_way(text[2], "flap", f->flap, down);
    LW_FIT(text[3], "rudder lift %+.1f turns", f->turns);
    for (int i = 0; i < 4; i++) {
        const lw_svg_point at = {bounds->left + 4.0,
                                 bounds->top + (i + 1) * 1.35 * LW_SIDE_LETTERS};
        const double wide = LW_SIDE_LETTERS * lw_letters_width(text[i], strlen(text[i]), false);
        lw_svg_text(s->out, at, (lw_svg_words){.size = LW_SIDE_LETTERS, .colour = LW_SIDE_INK},
                    text[i]);
        lw_labels_keep_off_words(
            &s->labels, (lw_box){at.x, at.y - LW_LETTER_RISE * LW_SIDE_LETTERS, at.x + wide,
                                 at.y + LW_LETTER_DROP * LW_SIDE_LETTERS});
    }
}

void lw_side_tell_rest(lw_side_view *s)
{
    tell_depth(s, &s->of->boat->main_strut);
    tell_depth(s, &s->of->boat->rudder_strut);
    tell_wand(s);
}
