// range_picture.c - wind across, pins down: from which wind each flies, up to which it is held.
// SPDX-License-Identifier: MIT

#include "picture/range_picture.h"

#include <math.h>
#include <string.h>

#include "picture/labels.h"
#include "picture/letter_width.h"
#include "picture/plot.h"
#include "records/fault.h"

#define WIDTH   900.0  // [px] as it comes
#define MARGIN  14.0
#define ENDS    250.0  // of what ends the pins' bars, where
#define ROOMY   640.0  // there is room beside them
#define LABEL   0.3    // of the width that the pins' labels may take beside their bars
#define ROW     36.0
#define BAR     13.0
#define LINE    17.0  // of words above or below a bar
#define HEADING 34.0  // above a panel's first row
#define LETTERS 13.0
#define SMALL   11.0
#define INK     "#111"
#define MARKS   10    // numbers along the wind at most,
#define APART   30.0  // [px] or so

// What a pin does along the wind, in its order.
typedef enum state { ON_HULL, STAYS, FLIES, BEYOND, STATES } state;
static const char *const state_texts[] = {"on the hull", "stays up, does not take off",
                                          "takes off, flies, is held", "more than is held"};

typedef struct picture {
    FILE *out;
    const lw_range_drawn *of;
    double whole;        // width of the picture
    double label, ends;  // of the columns of labels and of ends; 0: they stand above and below
    double row;          // height of a pin's row
    lw_axis wind;        // in the unit
    double left, width;  // of the bars
} picture;

static double shown(const picture *p, double wind) { return wind / lw_unit_in_si(p->of->unit); }

static double across(const picture *p, double wind)
{
    const double at = (shown(p, wind) - p->wind.low) / (p->wind.high - p->wind.low);
    return p->left + p->width * fmin(fmax(at, 0.0), 1.0);
}

static double wide(const char *text, double size)
{
    return size * lw_letters_width(text, strlen(text), false);
}

// --- bars

static const lw_svg_stroke backing = {.width = 0.0, .colour = "none", .fill = "white"};

static void box(const picture *p, lw_box at, lw_svg_stroke how)
{
    const lw_svg_point corners[] = {{at.left, at.top},
                                    {at.right, at.top},
                                    {at.right, at.bottom},
                                    {at.left, at.bottom},
                                    {at.left, at.top}};
    lw_svg_path(p->out, corners, 5, how);
}

// Slanting lines that lean forward as high as the box, cut at its sides.
static void hatch(const picture *p, lw_box at, double apart)
{
    const double high = at.bottom - at.top;
    const lw_svg_stroke line = {.width = 0.9, .colour = INK};
    for (double x = at.left - high + apart; x < at.right; x += apart) {
        const double from = fmax(x, at.left), to = fmin(x + high, at.right);
        lw_svg_line(p->out, (lw_svg_point){from, at.bottom - (from - x)},
                    (lw_svg_point){to, at.bottom - (to - x)}, line);
    }
}

// Upright lines.
static void stripe(const picture *p, lw_box at, double apart)
{
    for (double x = at.left + apart; x < at.right; x += apart) {
        lw_svg_line(p->out, (lw_svg_point){x, at.top}, (lw_svg_point){x, at.bottom},
                    (lw_svg_stroke){.width = 0.9, .colour = "#555"});
    }
}

static void draw_state(const picture *p, lw_box at, state is)
{
    static const char *const fills[] = {"white", "white", "#4d4d4d", "#eee"};
    if (!(at.right - at.left > 0.2)) return;
    box(p, at, (lw_svg_stroke){.width = 0.8, .colour = INK, .fill = fills[is]});
    if (is == STAYS) hatch(p, at, 6.0);
    if (is == BEYOND) stripe(p, at, 4.0);
}

// Where each state begins [m/s]; the last entry is where the last one ends.
static void limits_of(const picture *p, const lw_range_bar *bar, double from[STATES + 1])
{
    const double si = lw_unit_in_si(p->of->unit), end = p->wind.high * si;
    const bool stays = bar->stays_up_at > 0.0, launches = bar->launches_at > 0.0;
    const double up = stays ? bar->stays_up_at : end;
    const double off = stays && launches ? fmax(bar->launches_at, up) : end;
    from[ON_HULL] = p->wind.low * si;
    from[STAYS] = up;
    from[BEYOND] = stays ? fmax(bar->held_up_to, up) : end;
    from[FLIES] = fmin(off, from[BEYOND]);
    from[STATES] = end;
}

// A number above the bar on white, not before `free`; returns where the next may begin.
static double put_number(const picture *p, double wind, double y, double free)
{
    char text[40];
    LW_FIT(text, "%.1f", shown(p, wind));
    const double length = wide(text, SMALL);
    const double left = fmax(across(p, wind) - 0.5 * length, free);
    box(p, (lw_box){left - 1.0, y - 0.8 * SMALL, left + length + 1.0, y + 1.0}, backing);
    lw_svg_text(p->out, (lw_svg_point){left, y}, (lw_svg_words){.size = SMALL, .anchor = "start"},
                text);
    return left + length + 4.0;
}

// Of the winds at which the bar changes.
static void put_numbers(const picture *p, const lw_range_bar *bar, double y)
{
    double from[STATES + 1], free = 0.0;
    limits_of(p, bar, from);
    for (int i = STAYS; i < STATES; i++) {
        if (from[i] > from[i - 1] && from[i] < from[STATES]) free = put_number(p, from[i], y, free);
    }
}

static double above_bar(const picture *p) { return p->label > 0.0 ? 0.0 : LINE; }

static double top_of_bar(const picture *p, double row)
{
    return row + above_bar(p) + ROW - BAR - 4.0;
}

// Beside the bar or, where there is no room, in lines above and below it.
static void put_words(const picture *p, const lw_range_bar *bar, double high)
{
    const double base = high + BAR, room = p->whole - 2.0 * MARGIN;
    if (p->label > 0.0)
        lw_svg_text(p->out, (lw_svg_point){p->left - 8.0, base - 1.0},
                    (lw_svg_words){.size = LETTERS, .anchor = "end", .room = p->label}, bar->pin);
    else
        lw_svg_text(p->out, (lw_svg_point){MARGIN, high - LINE},
                    (lw_svg_words){.size = LETTERS, .anchor = "start", .room = room}, bar->pin);
}

// What ends it, beside the bar or below it on white.
static void put_end(const picture *p, const lw_range_bar *bar, double high)
{
    const double base = high + BAR, y = base + LINE - 4.0;
    if (!bar->end) return;
    if (p->ends > 0.0) {
        lw_svg_text(p->out, (lw_svg_point){p->left + p->width + 10.0, base - 1.0},
                    (lw_svg_words){.size = SMALL, .anchor = "start", .room = p->ends - 14.0},
                    bar->end);
        return;
    }
    box(p, (lw_box){p->left, base + 2.0, p->left + wide(bar->end, SMALL), y + 3.0}, backing);
    lw_svg_text(p->out, (lw_svg_point){p->left, y},
                (lw_svg_words){.size = SMALL, .anchor = "start", .room = p->width}, bar->end);
}

static void draw_bar(const picture *p, const lw_range_bar *bar, double top)
{
    double from[STATES + 1];
    const double high = top_of_bar(p, top), base = high + BAR;
    limits_of(p, bar, from);
    for (int i = 0; i < STATES; i++) {
        draw_state(p, (lw_box){across(p, from[i]), high, across(p, from[i + 1]), base}, (state)i);
    }
    put_words(p, bar, high);
}

// --- the day

static double above_rows(const lw_range_panel *panel) { return panel->heading ? HEADING : 14.0; }

static double panel_height(const picture *p, const lw_range_panel *panel)
{
    return above_rows(panel) + p->row * (double)panel->count + 22.0;
}

static void draw_band(const picture *p, double top, double bottom)
{
    const double left = across(p, p->of->lull), right = across(p, p->of->puff);
    box(p, (lw_box){left, top, right, bottom},
        (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = "#e6eef5"});
}

// Over the bars: dashed at lull and puff, whole at the mean.
static void draw_winds(const picture *p, double top, double bottom)
{
    const double winds[] = {p->of->lull, p->of->mean, p->of->puff};
    static const char *const letters[] = {"L", "M", "P"}, *const dashes[] = {"5 3", NULL, "5 3"};
    double free = 0.0;
    for (int i = 0; i < 3; i++) {
        const double x = across(p, winds[i]), letter = fmax(x, free);
        const lw_svg_point from = {x, top}, to = {x, bottom};
        lw_svg_line(p->out, from, to, (lw_svg_stroke){.width = 3.4, .colour = "white"});
        lw_svg_line(p->out, from, to,
                    (lw_svg_stroke){.width = 1.6, .colour = INK, .dashes = dashes[i]});
        lw_svg_text(p->out, (lw_svg_point){letter, top - 3.0},
                    (lw_svg_words){.size = SMALL, .anchor = "middle", .colour = INK}, letters[i]);
        free = letter + SMALL;
    }
}

static void draw_marks(const picture *p, double y)
{
    char text[40];
    const lw_axis *axis = &p->wind;
    for (int i = 0; axis->low + i * axis->step <= axis->high + 1e-9; i++) {
        const double wind = axis->low + i * axis->step;
        const double x = across(p, wind * lw_unit_in_si(p->of->unit));
        LW_FIT(text, "%.0f", wind);
        lw_svg_line(p->out, (lw_svg_point){x, y}, (lw_svg_point){x, y + 4.0},
                    (lw_svg_stroke){.width = 0.8, .colour = INK});
        lw_svg_text(p->out, (lw_svg_point){x, y + 15.0},
                    (lw_svg_words){.size = SMALL, .anchor = "middle"}, text);
    }
    lw_svg_text(p->out, (lw_svg_point){p->left - 8.0, y + 15.0},
                (lw_svg_words){.size = SMALL, .anchor = "end"}, lw_unit_text(p->of->unit));
}

static void draw_panel(const picture *p, const lw_range_panel *panel, double top)
{
    const double first = top + above_rows(panel), last = first + p->row * (double)panel->count;
    if (panel->heading)
        lw_svg_text(p->out, (lw_svg_point){MARGIN, top + 16.0},
                    (lw_svg_words){.size = 1.1 * LETTERS, .anchor = "start"}, panel->heading);
    draw_band(p, first, last);
    for (size_t i = 0; i < panel->count; i++) {
        draw_bar(p, &panel->bars[i], first + p->row * (double)i);
    }
    draw_winds(p, first, last);
    for (size_t i = 0; i < panel->count; i++) {
        const double high = top_of_bar(p, first + p->row * (double)i);
        put_numbers(p, &panel->bars[i], high - 3.0);
        put_end(p, &panel->bars[i], high);
    }
    draw_marks(p, last);
}

// --- for those who cannot see it

#define SAID_LENGTH 16000

static void say_bar(const picture *p, const lw_range_bar *bar, char said[SAID_LENGTH])
{
    double from[STATES + 1];
    const char *between = "";
    limits_of(p, bar, from);
    lw_text_add(said, SAID_LENGTH, " %s: ", bar->pin);
    for (int i = 0; i < STATES; i++) {
        if (!(from[i + 1] > from[i])) continue;
        lw_text_add(said, SAID_LENGTH, "%s%.1f to %.1f %s %s", between, shown(p, from[i]),
                    shown(p, from[i + 1]), lw_unit_text(p->of->unit), state_texts[i]);
        between = ", ";
    }
    lw_text_add(said, SAID_LENGTH, ".");
}

static void say(const picture *p, char said[SAID_LENGTH])
{
    lw_text_fit(said, SAID_LENGTH, "Winds, pin by pin.");
    for (size_t i = 0; i < p->of->panel_count; i++) {
        const lw_range_panel *panel = &p->of->panels[i];
        if (panel->heading) lw_text_add(said, SAID_LENGTH, " %s.", panel->heading);
        for (size_t k = 0; k < panel->count; k++) say_bar(p, &panel->bars[k], said);
    }
}

// --- the picture

static lw_axis axis_of(const lw_range_drawn *of, double width)
{
    double low = of->lull, high = of->puff;
    const double si = lw_unit_in_si(of->unit), room = 2.0 * LW_KN;
    for (size_t i = 0; i < of->panel_count; i++) {
        for (size_t k = 0; k < of->panels[i].count; k++) {
            const lw_range_bar *bar = &of->panels[i].bars[k];
            if (bar->stays_up_at > 0.0) low = fmin(low, bar->stays_up_at);
            high = fmax(high, fmax(bar->held_up_to, fmax(bar->launches_at, bar->stays_up_at)));
        }
    }
    const int marks = (int)fmin(MARKS, width / APART);
    return lw_axis_over(fmax(low - room, 0.0) / si, (high + room) / si, marks, "");
}

#define FIELD 26.0  // of a state in the key
static const char *const note =
    "L, M, P: the day's lull, mean and puff. Above each bar: the winds at which it changes.";

static lw_svg_words note_words(const picture *p)
{
    return (lw_svg_words){.size = SMALL, .anchor = "start", .room = p->whole - 2.0 * MARGIN};
}

// In as many lines as it needs, from a height down; returns where it ends.
static double put_key(const picture *p, double top, bool is_drawn)
{
    double x = MARGIN;
    for (int i = 0; i < STATES; i++) {
        const double end = x + FIELD + 6.0 + wide(state_texts[i], SMALL);
        if (end > p->whole - MARGIN && x > MARGIN)
            top += LINE, i--, x = MARGIN;
        else {
            if (is_drawn) {
                draw_state(p, (lw_box){x, top, x + FIELD, top + BAR}, (state)i);
                lw_svg_text(p->out, (lw_svg_point){x + FIELD + 6.0, top + BAR - 2.0},
                            (lw_svg_words){.size = SMALL, .anchor = "start"}, state_texts[i]);
            }
            x = end + 16.0;
        }
    }
    const lw_svg_point at = {MARGIN, top + BAR + 6.0};
    return at.y + lw_words_wrapped(is_drawn ? p->out : NULL, at, note_words(p), note);
}

// Columns as wide as there is room for.
static picture laid(FILE *out, const lw_range_drawn *of)
{
    double label = 0.0;
    bool has_ends = false;
    for (size_t i = 0; i < of->panel_count; i++) {
        for (size_t k = 0; k < of->panels[i].count; k++) {
            label = fmax(label, wide(of->panels[i].bars[k].pin, LETTERS));
            has_ends |= of->panels[i].bars[k].end != NULL;
        }
    }
    picture p = {.out = out, .of = of};
    p.whole = of->width > 0.0 ? of->width : WIDTH;
    p.label = label < LABEL * p.whole ? fmax(label, wide(lw_unit_text(of->unit), SMALL)) : 0.0;
    p.ends = has_ends && p.whole >= ROOMY ? ENDS : 0.0;
    p.row = ROW + above_bar(&p) + (has_ends && p.ends == 0.0 ? LINE : 0.0);
    p.left = MARGIN + (p.label > 0.0 ? p.label : wide(lw_unit_text(of->unit), SMALL)) + 12.0;
    p.width = p.whole - MARGIN - p.left - p.ends;
    p.wind = axis_of(of, p.width);
    return p;
}

static double put_head(const picture *p, FILE *out)
{
    const lw_svg_words how = {.size = LETTERS, .anchor = "start", .room = p->whole - 2.0 * MARGIN};
    return lw_words_wrapped(out, (lw_svg_point){MARGIN, MARGIN}, how, p->of->head) + 8.0;
}

void lw_range_draw(FILE *out, const lw_range_drawn *of)
{
    char said[SAID_LENGTH];
    const picture p = laid(out, of);
    double top = MARGIN + (of->head ? put_head(&p, NULL) : 0.0), below = top;
    for (size_t i = 0; i < of->panel_count; i++) below += panel_height(&p, &of->panels[i]);
    say(&p, said);
    lw_svg_begin(out, p.whole, put_key(&p, below + 12.0, false) + MARGIN, said);
    if (of->head) put_head(&p, out);
    for (size_t i = 0; i < of->panel_count; i++) {
        draw_panel(&p, &of->panels[i], top);
        top += panel_height(&p, &of->panels[i]);
    }
    put_key(&p, below + 12.0, true);
    lw_svg_end(out);
}
