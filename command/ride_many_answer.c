// ride_many_answer.c - many rides as a table of rates with their errors.
// SPDX-License-Identifier: MIT

#include "command/cell.h"
#include "command/ride_many.h"
#include "command/terminal/print.h"
#include "records/json.h"

static void print_row(FILE *out, const lw_quantity *row, const lw_ride_rates *mean,
                      const lw_ride_rates *error)
{
    char text[LW_CELL_LENGTH], more[LW_CELL_LENGTH];
    lw_cell_number(text, lw_quantity_shown(row, mean), row->decimals, false);
    lw_cell_number(more, lw_quantity_shown(row, error), row->decimals + 1, false);
    fputs("  ", out);
    lw_cell_right(out, text, 7);
    fputs(" +- ", out);
    lw_cell_left(out, more, 6);
    lw_cell_left(out, lw_unit_text(row->unit), 4);
    lw_print_wrapped(out, row->doc, 23, 23);
}

static const char *why_it_ended(const lw_ride_many *many)
{
    return many->is_sure      ? "every rate is known well enough"
           : many->is_stopped ? "stopped from the keyboard"
                              : "so many were asked for";
}

static void print_end(FILE *out, const lw_ride_many *many)
{
    char text[LW_RIDDEN_LENGTH], time[LW_CELL_LENGTH];
    lw_cell_time(time, many->seconds);
    LW_FIT(text,
           "+-: standard error; of what happens, never less than one in all the time sailed. %.0f "
           "rides of %s, seeds from %llu: %s.",
           many->sample.rides, time, (unsigned long long)many->ridden->plan.seed,
           why_it_ended(many));
    lw_print_wrapped(out, text, 0, 0);
}

// Stopped before the first ride had ended.
static void print_nothing(FILE *out)
{
    lw_print_wrapped(out,
                     "Stopped before the first ride had ended: nothing was sailed to the end, so "
                     "there are no rates. Fewer --minutes end sooner.",
                     0, 0);
}

void lw_ride_many_print(FILE *out, const lw_ride_many *many)
{
    char text[LW_RIDDEN_LENGTH];
    const lw_ride_rates error = lw_ride_sample_error(&many->sample);
    if (many->sample.rides == 0.0) {
        print_nothing(out);
        return;
    }
    lw_ridden_scene(many->ridden, text);
    lw_print_wrapped(out, text, 0, 0);
    lw_ridden_trim(many->ridden, text);
    lw_print_wrapped(out, text, 0, 0);
    fputc('\n', out);
    for (size_t i = 0; i < lw_ride_rates_table.count; i++) {
        print_row(out, &lw_ride_rates_table.rows[i], &many->sample.mean, &error);
    }
    fputc('\n', out);
    print_end(out, many);
}

json_t *lw_ride_many_json(const lw_ride_many *many)
{
    const lw_ride_rates error = lw_ride_sample_error(&many->sample);
    const lw_flown *flown = &many->ridden->flown;
    const bool is_sailed = many->sample.rides > 0.0;
    json_t *rides = json_array();
    for (size_t i = 0; i < many->most; i++) {
        if (!(many->tallies[i].seconds > 0.0)) continue;
        const lw_ride_rates rates = lw_ride_rates_of(&many->tallies[i]);
        json_array_append_new(
            rides,
            json_pack("{s:I, s:o}", "seed", (json_int_t)many->ridden->plan.seed + (json_int_t)i,
                      "rates", lw_table_json(&lw_ride_rates_table, &rates)));
    }
    return json_pack(
        "{s:s, s:s, s:s, s:f, s:f, s:b, s:b, s:o, s:o, s:o, s:o}", "boat", flown->inputs->boat.name,
        "sailor", flown->inputs->sailor.name, "pin", flown->inputs->boat.pins[flown->pin].label,
        "count", many->sample.rides, "seconds", many->seconds, "sure", many->is_sure, "stopped",
        many->is_stopped, "mean",
        is_sailed ? lw_table_json(&lw_ride_rates_table, &many->sample.mean) : json_null(), "error",
        is_sailed ? lw_table_json(&lw_ride_rates_table, &error) : json_null(), "rides", rides,
        "units", lw_table_units_json(&lw_ride_rates_table));
}
