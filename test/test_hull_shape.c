// test_hull_shape.c - claims about hulls given by sections: how they float and what drives them.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/hull_afloat.h"
#include "test/check.h"

static lw_hull_shape shape, second;
static lw_hull_cut cut, other;

static const lw_hull_form wigley = {10.0, 1.0, 0.625};
static const lw_hull_dimensions dinghy = {3.353, 0.345, 0.157, 0.2, 0.598, 0.734, 0.25};

static void cut_wigley(double freeboard, lw_hull_attitude attitude)
{
    CHECK(lw_hull_shape_wigley(&shape, wigley, freeboard) == LW_HULL_OK);
    CHECK(lw_hull_cut_at(&cut, &shape, attitude) == LW_HULL_OK);
}

static void cut_dinghy(lw_hull_attitude attitude)
{
    CHECK(lw_hull_shape_of_dimensions(&shape, dinghy) == LW_HULL_OK);
    CHECK(lw_hull_cut_at(&cut, &shape, attitude) == LW_HULL_OK);
}

// A box: flat bottom, straight sides, square ends.
static void make_box(double length, double beam, double height)
{
    shape = (lw_hull_shape){.count = 5};
    for (int i = 0; i < 5; i++) {
        lw_hull_section *section = &shape.section[i];
        section->x = length * i / 4.0, section->count = 4;
        for (int k = 0; k < 4; k++) {
            section->height[k] = height * k / 3.0, section->half[k] = 0.5 * beam;
        }
    }
}

// --- floating

TEST_FUNCTION(wigley_hull_floats_as_its_formula_has_it)
{
    const double L = wigley.length, B = wigley.beam, T = wigley.draft;
    for (int i = 0; i < 2; i++) {
        cut_wigley(0.31 * i, (lw_hull_attitude){T, 0.0});
        const lw_hull_floating *f = &cut.floating;
        CHECK_RELATIVE(f->volume, 4.0 / 9.0 * L * B * T, 1e-12);
        CHECK_RELATIVE(f->waterplane, 2.0 / 3.0 * L * B, 1e-12);
        CHECK_RELATIVE(f->centre_z, 5.0 / 8.0 * T, 1e-12);
        CHECK_NEAR(f->centre_x, 0.0, 1e-12);
        CHECK_NEAR(f->waterplane_x, 0.0, 1e-12);
        CHECK_RELATIVE(f->across, 4.0 * B * B * B * L / 105.0, 1e-5);
        CHECK_RELATIVE(f->along, B * L * L * L / 30.0, 1e-5);
        CHECK_RELATIVE(f->wetted, lw_hull_form_hydrostatics(wigley).wetted, 1e-4);
        CHECK_RELATIVE(f->length, L, 1e-12);
    }
}

TEST_FUNCTION(box_floats_as_a_box)
{
    make_box(4.0, 1.0, 0.6);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.25, 0.0}) == LW_HULL_OK);
    const lw_hull_floating *f = &cut.floating;
    CHECK_RELATIVE(f->volume, 1.0, 1e-12);                       // 4 x 1 x 0.25
    CHECK_RELATIVE(f->wetted, 4.0 * (1.0 + 2.0 * 0.25), 1e-12);  // bottom and two sides
    CHECK_RELATIVE(f->across, 4.0 * 1.0 / 12.0, 1e-12);          // L B^3 / 12
    CHECK_RELATIVE(f->along, 1.0 * 64.0 / 12.0, 1e-12);          // B L^3 / 12
    CHECK_RELATIVE(f->centre_x, 2.0, 1e-12);
    CHECK_RELATIVE(f->centre_z, 0.125, 1e-12);
    CHECK_RELATIVE(f->transom_area, 0.25, 1e-12);
    CHECK_RELATIVE(f->transom_draft, 0.25, 1e-12);
}

// Bow up by arctan 0.05: the water stands at 0.25 - 0.05 x, and leaves the bottom at x = 4 with
// 0.05: a wedge of mean draft 0.15 whose middle lies at (0.25/2 16 - 0.05/3 64) / 0.6 = 1.5556 m.
TEST_FUNCTION(trimmed_box_floats_as_a_wedge)
{
    make_box(4.0, 1.0, 0.6);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.25, lw_atan(0.05)}) == LW_HULL_OK);
    CHECK_RELATIVE(cut.floating.volume, 0.6, 1e-12);
    CHECK_RELATIVE(cut.floating.centre_x, (2.0 - 3.2 / 3.0) / 0.6, 1e-12);
}

static bool volume_grows_by_the_waterplane(const double *x)
{
    const double step = 1e-5;
    if (lw_hull_shape_of_dimensions(&shape, dinghy) != LW_HULL_OK) return false;
    const lw_hull_attitude a = {x[0], x[1]}, deeper = {x[0] + step, x[1]}, up = {x[0], x[1] + step};
    if (lw_hull_cut_at(&cut, &shape, a) != LW_HULL_OK) return false;
    const lw_hull_floating f = cut.floating;
    if (lw_hull_cut_at(&cut, &shape, deeper) != LW_HULL_OK) return false;
    const double by_draft = (cut.floating.volume - f.volume) / step;
    if (lw_hull_cut_at(&cut, &shape, up) != LW_HULL_OK) return false;
    const double by_trim = (cut.floating.volume - f.volume) / step;
    return fabs(by_draft - f.waterplane) < 0.03 * f.waterplane &&
           fabs(by_trim + f.waterplane * f.waterplane_x) < 0.03 * f.waterplane * 1.7;
}

TEST_FUNCTION(volume_changes_by_the_waterplane_and_its_middle)
{
    CHECK_HOLDS(volume_grows_by_the_waterplane, 50, {0.06, 0.2}, {-0.02, 0.02});
}

TEST_FUNCTION(dimensions_are_met_by_the_hull_made_from_them)
{
    cut_dinghy((lw_hull_attitude){dinghy.draft, 0.0});
    const double L = dinghy.length, B = dinghy.beam, T = dinghy.draft;
    CHECK_RELATIVE(cut.floating.length, L, 1e-3);
    CHECK_RELATIVE(cut.floating.beam, B, 1e-3);
    CHECK_RELATIVE(cut.floating.draft, T, 1e-3);
    CHECK_RELATIVE(cut.floating.volume, dinghy.block * L * B * T, 2e-3);
    CHECK_RELATIVE(cut.floating.waterplane, dinghy.waterplane * L * B, 2e-3);
}

// Any hull of the description's usual ranges.
static bool usual_dimensions_are_met(const double *x)
{
    const lw_hull_dimensions d = {x[0], x[1], x[2], x[3] * x[1], x[4] * x[5], x[5], 0.2};
    if (lw_hull_shape_of_dimensions(&shape, d) != LW_HULL_OK) return false;
    if (lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){d.draft, 0.0}) != LW_HULL_OK) return false;
    const double box = d.length * d.beam * d.draft;
    return fabs(cut.floating.volume / (d.block * box) - 1.0) < 0.01 &&
           fabs(cut.floating.waterplane / (d.waterplane * d.length * d.beam) - 1.0) < 0.01;
}

TEST_FUNCTION(usual_dimensions_have_a_hull)
{
    CHECK_HOLDS(usual_dimensions_are_met, 200, {3.0, 3.6}, {0.25, 0.8}, {0.08, 0.25}, {0.15, 0.75},
                {0.72, 0.9}, {0.65, 0.85});
}

TEST_FUNCTION(offsets_of_the_wigley_hull_give_the_same_hull)
{
    static lw_hull_offsets offsets;
    const double L = wigley.length, B = wigley.beam, T = wigley.draft;
    offsets = (lw_hull_offsets){.stations = 13, .waterlines = 7};
    for (int i = 0; i < 13; i++) {
        const double s = i / 6.0 - 1.0;
        offsets.x[i] = 0.5 * L * s;
        for (int k = 0; k < 7; k++) {
            const double r = 1.0 - k / 6.0;
            offsets.height[k] = T * k / 6.0,
            offsets.half[i][k] = 0.5 * B * (1.0 - s * s) * (1.0 - r * r);
        }
    }
    CHECK(lw_hull_shape_of_offsets(&shape, &offsets).status == LW_HULL_OK);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){T, 0.0}) == LW_HULL_OK);
    CHECK_RELATIVE(cut.floating.volume, 4.0 / 9.0 * L * B * T, 1e-12);
    const double V = 0.4 * sqrt(LW_GRAVITY * L);
    CHECK_RELATIVE(lw_hull_wave_area(&cut, V), lw_hull_form_wave_area(wigley, V), 1e-3);
}

static bool hull_floats_where_it_is_put(const double *x)
{
    if (lw_hull_shape_of_dimensions(&shape, dinghy) != LW_HULL_OK) return false;
    if (lw_hull_float(&cut, &shape, x[0], x[1]) != LW_HULL_OK) return false;
    return fabs(cut.floating.volume / x[0] - 1.0) < 1e-6 &&
           fabs(cut.floating.centre_x - x[1]) < 1e-5 && cut.floating.wetted > 0.0;
}

TEST_FUNCTION(hull_floats_with_its_weight_over_its_buoyancy)
{
    CHECK_HOLDS(hull_floats_where_it_is_put, 50, {0.08, 0.14}, {1.4, 1.7});
}

TEST_FUNCTION(box_floats_at_the_depth_of_its_volume)
{
    make_box(4.0, 1.0, 0.6);
    CHECK(lw_hull_float(&cut, &shape, 1.2, 2.0) == LW_HULL_OK);
    CHECK_NEAR(cut.attitude.draft, 0.3, 1e-9);
    CHECK_NEAR(cut.attitude.trim, 0.0, 1e-9);
    // moved forward by d: trim lowers the bow by d V / I_L = d 1.2 / 5.3333, to first order
    CHECK(lw_hull_float(&cut, &shape, 1.2, 2.05) == LW_HULL_OK);
    CHECK_RELATIVE(cut.attitude.trim, -0.05 * 1.2 / 5.33333, 1e-3);
    CHECK(lw_hull_float(&cut, &shape, 2.39, 2.0) == LW_HULL_OK);  // nearly to the deck
    CHECK(lw_hull_float(&cut, &shape, 2.41, 2.0) == LW_HULL_DECK_UNDER);
}

TEST_FUNCTION(too_heavy_or_too_far_forward_is_told)
{
    CHECK(lw_hull_shape_of_dimensions(&shape, dinghy) == LW_HULL_OK);
    memset(&cut, 7, sizeof cut);
    other = cut;
    CHECK(lw_hull_float(&cut, &shape, 5.0, 1.6) == LW_HULL_DECK_UNDER);
    CHECK(lw_hull_float(&cut, &shape, 0.11, 3.3) == LW_HULL_NO_BALANCE);
    CHECK(lw_hull_float(&cut, &shape, -1.0, 1.6) == LW_HULL_NOT_A_NUMBER);
    CHECK(lw_hull_float(&cut, &shape, NAN, 1.6) == LW_HULL_NOT_A_NUMBER);
    CHECK(memcmp(&cut, &other, sizeof cut) == 0);
}

// --- waves

TEST_FUNCTION(waves_of_the_wigley_hull_are_those_of_its_closed_form)
{
    cut_wigley(0.2, (lw_hull_attitude){wigley.draft, 0.0});
    for (double Fn = 0.16; Fn < 1.5; Fn *= 1.07) {
        const double V = Fn * sqrt(LW_GRAVITY * wigley.length);
        CHECK_RELATIVE(lw_hull_wave_area(&cut, V), lw_hull_form_wave_area(wigley, V), 2e-3);
    }
}

// J / (n c) of Wigley's hull at any draft and trim by plain sums over small cells.
static double cells_square(lw_hull_attitude attitude, double along, double down)
{
    const int across = 400, up = 100;
    const double L = wigley.length, B = wigley.beam, T = wigley.draft;
    double sum[2] = {0.0, 0.0};
    for (int i = 0; i < across; i++) {
        const double s = 2.0 * (i + 0.5) / across - 1.0, x = 0.5 * L * s;
        const double water = attitude.draft - x * lw_tan(attitude.trim), cell = water / up;
        for (int k = 0; k < up; k++) {
            const double z = cell * (k + 0.5), r = fmax(1.0 - z / T, 0.0);
            const double y = 0.5 * B * (1.0 - s * s) * (1.0 - r * r);
            const double part = y * exp(-down * (water - z)) * cell * L / across;
            sum[0] += part * cos(along * x), sum[1] += part * sin(along * x);
        }
    }
    return sum[0] * sum[0] + sum[1] * sum[1];
}

TEST_FUNCTION(waves_of_a_sunk_and_trimmed_hull_are_those_of_a_plain_sum)
{
    const double L = wigley.length;
    const lw_hull_attitude attitudes[] = {{0.4, 0.0}, {0.7, 0.02}, {0.55, -0.015}};
    for (int i = 0; i < 3; i++) {
        cut_wigley(0.4, attitudes[i]);
        const double V = 0.45 * sqrt(LW_GRAVITY * L), n = LW_GRAVITY / (V * V);
        double sum = 0.0;
        const double step = 0.02;
        for (int k = 0; k < 180; k++) {
            const double c = cosh(k * step);
            sum += (k == 0 ? 0.5 : 1.0) * step * n * n * c * c * c * c *
                   cells_square(attitudes[i], n * c, n * c * c);
        }
        CHECK_RELATIVE(lw_hull_wave_area(&cut, V), 8.0 * n * n / LW_PI * sum, 5e-3);
    }
}

// The dinghy's lines turned end for end, transom dry: thin-ship waves are the same.
TEST_FUNCTION(hull_going_backward_makes_the_same_waves)
{
    cut_dinghy((lw_hull_attitude){0.14, 0.0});
    second = (lw_hull_shape){.count = shape.count};
    for (int i = 0; i < shape.count; i++) {
        second.section[i] = shape.section[shape.count - 1 - i];
        second.section[i].x = -second.section[i].x;
    }
    CHECK(lw_hull_cut_at(&other, &second, (lw_hull_attitude){0.14, 0.0}) == LW_HULL_OK);
    // the bow, now the transom, would have its hollow
    other.floating.transom_draft = 0.0;
    for (double V = 1.0; V < 6.0; V += 0.5) {
        CHECK_RELATIVE(lw_hull_wave_area(&other, V), lw_hull_wave_area(&cut, V), 1e-3);
    }
}

static bool waves_scale(const double *x)
{
    const lw_hull_form one = {1.0, 0.1, x[1]}, large = {x[0], 0.1 * x[0], x[1] * x[0]};
    const lw_hull_form wide = {1.0, 0.12, x[1]};
    const double V = x[2] * sqrt(LW_GRAVITY);
    double area[3];
    const lw_hull_form forms[] = {one, large, wide};
    for (int i = 0; i < 3; i++) {
        if (lw_hull_shape_wigley(&shape, forms[i], 0.0) != LW_HULL_OK) return false;
        const lw_hull_attitude attitude = {forms[i].draft, 0.0};
        if (lw_hull_cut_at(&cut, &shape, attitude) != LW_HULL_OK) return false;
        area[i] = lw_hull_wave_area(&cut, i == 1 ? V * sqrt(x[0]) : V);
    }
    return fabs(area[1] / (area[0] * x[0] * x[0]) - 1.0) < 1e-3 &&
           fabs(area[2] / (area[0] * 1.44) - 1.0) < 1e-9;
}

TEST_FUNCTION(waves_follow_froude_and_the_square_of_the_beam)
{
    CHECK_HOLDS(waves_scale, 30, {0.5, 30.0}, {0.03, 0.1}, {0.2, 1.2});
}

TEST_FUNCTION(hull_that_rises_makes_less_waves)
{
    double before = 0.0;
    for (double draft = 0.01; draft < 0.2; draft += 0.01) {
        cut_dinghy((lw_hull_attitude){draft, 0.0});
        const double area = lw_hull_wave_area(&cut, 3.0);
        CHECK(area > before);
        before = area;
    }
}

TEST_FUNCTION(hollow_behind_a_transom_grows_smoothly_from_none)
{
    double before = 0.0;
    for (double trim = 0.0; trim < 3.0; trim += 0.05) {
        cut_dinghy((lw_hull_attitude){dinghy.draft + 1.6 * lw_tan(trim * LW_DEG), trim * LW_DEG});
        const double area = lw_hull_wave_area(&cut, 3.0);
        CHECK(before == 0.0 || fabs(area / before - 1.0) < 0.03);
        before = area;
    }
}

// Re = 3 x 3.353 / 1.1e-6 = 9.1445e6: C_F = 0.075 / (6.96117 - 2)^2 = 3.0471e-3.
TEST_FUNCTION(friction_is_that_of_the_line)
{
    cut_dinghy((lw_hull_attitude){dinghy.draft, 0.0});
    const double want = 1.15 * 3.0471e-3 * cut.floating.wetted;
    CHECK_RELATIVE(lw_hull_friction_area(&cut, 3.0, 1.1e-6, 0.15), want, 1e-4);
    CHECK(lw_hull_friction_area(&cut, 0.0, 1.1e-6, 0.15) > 0.0);
}

// --- what is refused

static lw_hull_status status_of_box(void) { return lw_hull_shape_check(&shape).status; }

TEST_FUNCTION(wrong_shapes_are_refused_and_nothing_is_cut)
{
    memset(&cut, 7, sizeof cut);
    other = cut;
    make_box(4.0, 1.0, 0.6);
    CHECK(status_of_box() == LW_HULL_OK);
    shape.count = 2;
    CHECK(status_of_box() == LW_HULL_STATIONS_COUNT);
    shape.count = LW_HULL_STATIONS + 1;
    CHECK(status_of_box() == LW_HULL_STATIONS_COUNT);
    make_box(4.0, 1.0, 0.6), shape.section[2].count = 2;
    CHECK(status_of_box() == LW_HULL_POINTS_COUNT);
    make_box(4.0, 1.0, 0.6), shape.section[1].half[2] = -0.1;
    const lw_hull_fault fault = lw_hull_shape_check(&shape);
    CHECK(fault.status == LW_HULL_BREADTH && fault.station == 1 && fault.point == 2);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.2, 0.0}) == LW_HULL_BREADTH);
    CHECK(lw_hull_float(&cut, &shape, 0.5, 2.0) == LW_HULL_BREADTH);
    make_box(4.0, 1.0, 0.6), shape.section[3].half[0] = NAN;
    CHECK(status_of_box() == LW_HULL_NOT_A_NUMBER);
    make_box(4.0, 1.0, 0.6), shape.section[3].x = INFINITY;
    CHECK(status_of_box() == LW_HULL_NOT_A_NUMBER);
    make_box(4.0, 1.0, 0.6), shape.section[3].x = 0.5;
    CHECK(status_of_box() == LW_HULL_ORDER);
    make_box(4.0, 1.0, 0.6), shape.section[0].height[0] = 0.7;
    CHECK(status_of_box() == LW_HULL_KEEL);
    make_box(4.0, 1.0, 0.6), shape.section[0].height[1] = 0.5;
    CHECK(status_of_box() == LW_HULL_HEIGHTS);
    make_box(4.0, 0.0, 0.6);
    CHECK(status_of_box() == LW_HULL_BREADTH);
    CHECK(memcmp(&cut, &other, sizeof cut) == 0);
}

TEST_FUNCTION(wrong_offsets_and_dimensions_are_refused)
{
    static lw_hull_offsets offsets;
    offsets = (lw_hull_offsets){.stations = 2, .waterlines = 5};
    CHECK(lw_hull_shape_of_offsets(&shape, &offsets).status == LW_HULL_STATIONS_COUNT);
    offsets.stations = 4;
    CHECK(lw_hull_shape_of_offsets(&shape, &offsets).status == LW_HULL_HEIGHTS);
    for (int k = 0; k < 5; k++) offsets.height[k] = 0.1 * k;
    offsets.keel[2] = 0.4;
    CHECK(lw_hull_shape_of_offsets(&shape, &offsets).status == LW_HULL_KEEL);
    offsets.keel[2] = NAN;
    CHECK(lw_hull_shape_of_offsets(&shape, &offsets).status == LW_HULL_NOT_A_NUMBER);

    lw_hull_dimensions d = dinghy;
    d.block = 0.74;  // fuller than its waterline
    CHECK(lw_hull_shape_of_dimensions(&shape, d) == LW_HULL_DIMENSIONS);
    d = dinghy, d.beam = 0.0;
    CHECK(lw_hull_shape_of_dimensions(&shape, d) == LW_HULL_DIMENSIONS);
    d = dinghy, d.transom_beam = 0.5;
    CHECK(lw_hull_shape_of_dimensions(&shape, d) == LW_HULL_DIMENSIONS);
    d = dinghy, d.draft = NAN;
    CHECK(lw_hull_shape_of_dimensions(&shape, d) == LW_HULL_NOT_A_NUMBER);
    CHECK(lw_hull_shape_wigley(&shape, (lw_hull_form){1.0, -0.1, 0.1}, 0.0) == LW_HULL_DIMENSIONS);
    for (int i = 0; i < LW_HULL_STATUS_COUNT; i++) CHECK(lw_hull_status_text(i)[0] != '\0');
}

TEST_FUNCTION(clear_of_the_water_and_under_it_are_told)
{
    CHECK(lw_hull_shape_of_dimensions(&shape, dinghy) == LW_HULL_OK);
    memset(&cut, 7, sizeof cut);
    other = cut;
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){-0.01, 0.0}) == LW_HULL_DRY);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.5, 0.0}) == LW_HULL_DECK_UNDER);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){NAN, 0.0}) == LW_HULL_NOT_A_NUMBER);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.1, 1.5}) == LW_HULL_NOT_A_NUMBER);
    CHECK(memcmp(&cut, &other, sizeof cut) == 0);
}

static bool every_number_is_finite(const double *x)
{
    const lw_hull_dimensions d = {x[0], x[1], x[2], fmin(x[3], x[1]), x[4], x[5], 0.2};
    if (lw_hull_shape_of_dimensions(&shape, d) != LW_HULL_OK) return true;
    if (lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){x[6], x[7]}) != LW_HULL_OK) return true;
    const lw_hull_floating *f = &cut.floating;
    const double wave = lw_hull_wave_area(&cut, x[8]);
    return f->volume > 0.0 && f->wetted > 0.0 && fabs(f->along + f->across + f->centre_z) < 1e3 &&
           wave >= 0.0 && wave < 1e3;
}

TEST_FUNCTION(every_hull_and_attitude_has_a_finite_answer)
{
    CHECK_HOLDS(every_number_is_finite, 300, {2.5, 4.5}, {0.15, 1.2}, {0.05, 0.4}, {0.0, 1.0},
                {0.3, 0.8}, {0.5, 0.95}, {-0.05, 0.5}, {-0.1, 0.1}, {0.0, 12.0});
}

TEST_FUNCTION(a_hull_displaces_its_load_held_level_or_trimmed_by_it)
{
    lw_boat boat;
    lw_record_preset(&lw_boat_record, &boat);
    const lw_person person = {.mass = 75.0, .gear = 5.0};
    lw_hull_load load = lw_hull_load_of(&boat.hull, &person, 0.8);
    CHECK_NEAR(load.mass, boat.hull.mass + 80.0, 1e-12);
    CHECK_RELATIVE(load.mass * load.x, boat.hull.mass * boat.hull.centre_x + 80.0 * 0.8, 1e-12);
    CHECK(lw_hull_shape_of_boat(&shape, &boat.hull) == LW_HULL_OK);
    CHECK(lw_hull_float_load(&cut, &shape, load, 1025.0) == LW_HULL_OK);
    CHECK_RELATIVE(lw_hull_afloat_of(&cut, 1025.0).displaced, load.mass, 1e-5);
    CHECK_NEAR(lw_hull_afloat_of(&cut, 1025.0).centre_x, load.x, 1e-3);
    load.x = NAN;
    CHECK(lw_hull_float_load(&cut, &shape, load, 1025.0) == LW_HULL_OK);
    CHECK_RELATIVE(lw_hull_afloat_of(&cut, 1025.0).displaced, load.mass, 1e-6);
    CHECK(cut.attitude.trim == 0.0);
}

// A box 2 m x 0.4 m, 0.1 m deep: B = 0.05 m above its bottom; trimmed by 0.03 its lowest corner is
// an end.
TEST_FUNCTION(the_centre_of_buoyancy_stands_above_the_lowest_point)
{
    make_box(2.0, 0.4, 0.4);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.1, 0.0}) == LW_HULL_OK);
    CHECK_NEAR(lw_hull_afloat_of(&cut, 1000.0).centre_height, 0.05, 1e-9);
    CHECK_NEAR(lw_hull_afloat_of(&cut, 1000.0).block, 1.0, 1e-9);
    CHECK(lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){0.1, 0.03}) == LW_HULL_OK);
    CHECK_NEAR(lw_hull_afloat_of(&cut, 1000.0).centre_height, cut.floating.centre_z, 1e-9);
}

TEST_FUNCTION(resistance_is_that_of_its_areas_at_the_speed_of_the_froude_number)
{
    const lw_hull_water water = {1000.0, 1e-6, 0.1};
    CHECK(lw_hull_float_wigley(&cut, &shape, 3.0) == LW_HULL_OK);
    const double speed = lw_hull_speed_at(&cut, 0.5);
    const lw_hull_drive drive = lw_hull_drive_at(&cut, water, speed);
    CHECK_RELATIVE(drive.froude, 0.5, 1e-12);
    CHECK_RELATIVE(drive.waves, 500.0 * speed * speed * lw_hull_wave_area(&cut, speed), 1e-12);
    CHECK_RELATIVE(drive.total, drive.friction + drive.waves, 1e-12);
    CHECK_RELATIVE(drive.total_coefficient,
                   drive.total / (500.0 * speed * speed * cut.floating.wetted), 1e-12);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(wigley_hull_floats_as_its_formula_has_it),
        TEST(box_floats_as_a_box),
        TEST(trimmed_box_floats_as_a_wedge),
        TEST(volume_changes_by_the_waterplane_and_its_middle),
        TEST(dimensions_are_met_by_the_hull_made_from_them),
        TEST(usual_dimensions_have_a_hull),
        TEST(offsets_of_the_wigley_hull_give_the_same_hull),
        TEST(hull_floats_with_its_weight_over_its_buoyancy),
        TEST(box_floats_at_the_depth_of_its_volume),
        TEST(too_heavy_or_too_far_forward_is_told),
        TEST(waves_of_the_wigley_hull_are_those_of_its_closed_form),
        TEST(waves_of_a_sunk_and_trimmed_hull_are_those_of_a_plain_sum),
        TEST(hull_going_backward_makes_the_same_waves),
        TEST(waves_follow_froude_and_the_square_of_the_beam),
        TEST(hull_that_rises_makes_less_waves),
        TEST(hollow_behind_a_transom_grows_smoothly_from_none),
        TEST(friction_is_that_of_the_line),
        TEST(wrong_shapes_are_refused_and_nothing_is_cut),
        TEST(wrong_offsets_and_dimensions_are_refused),
        TEST(clear_of_the_water_and_under_it_are_told),
        TEST(every_hull_and_attitude_has_a_finite_answer),
        TEST(a_hull_displaces_its_load_held_level_or_trimmed_by_it),
        TEST(the_centre_of_buoyancy_stands_above_the_lowest_point),
        TEST(resistance_is_that_of_its_areas_at_the_speed_of_the_froude_number),
    };
    return RUN_TESTS(tests);
}
