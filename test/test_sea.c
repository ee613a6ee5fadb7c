// test_sea.c - claims about an irregular sea.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "lullwise/weather.h"
#include "medium/sea_lanes.h"
#include "medium/wind.h"
#include "test/check.h"

#define SEEDS 32

static const lw_sea_kind chop = {.wave = {0.3, 2.0}, .gamma = 3.3};

static lw_sea_kind chop_from(double from, double spread)
{
    lw_sea_kind kind = chop;
    kind.from = from, kind.spread = spread;
    return kind;
}

static lw_sea_waves sea_of(lw_sea_kind kind, uint64_t number)
{
    return lw_sea_of(kind, lw_seed_of(number, LW_SEED_SEA));
}

// Four times the standard deviation of the surface over 10,000 s, on board of a boat that sails
// along (x, y) at a speed.
static double height_met(const lw_sea_waves *sea, double speed)
{
    double sum = 0.0, squares = 0.0;
    const int count = 50000;
    for (int i = 0; i < count; i++) {
        const double t = 0.2 * i;
        const double z = lw_sea_at(sea, 0.8 * speed * t, 0.6 * speed * t, t, 0.0).surface;
        sum += z, squares += z * z;
    }
    const double mean = sum / count;
    return 4.0 * sqrt(squares / count - mean * mean);
}

TEST_FUNCTION(significant_height_comes_back_from_10000_s_of_every_sea_within_3_percent)
{
    for (uint64_t seed = 0; seed < 8; seed++) {
        const lw_sea_waves sea = sea_of(chop_from(0.4, seed % 2 ? 0.5 : 0.0), seed);
        CHECK_RELATIVE(height_met(&sea, 0.0), chop.wave.height, 0.03);
        CHECK_RELATIVE(height_met(&sea, 8.0), chop.wave.height, 0.03);
    }
}

TEST_FUNCTION(surface_is_nearly_normal)
{
    double squares = 0.0, fourths = 0.0;
    int beyond = 0;
    const int count = 10000;
    for (uint64_t seed = 0; seed < SEEDS; seed++) {
        const lw_sea_waves sea = sea_of(chop, seed);
        for (int i = 0; i < count; i++) {
            const double z = lw_sea_at(&sea, 0.0, 0.0, 0.37 * i, 0.0).surface;
            squares += z * z, fourths += z * z * z * z;
            beyond += fabs(z) > 0.75 * chop.wave.height;
        }
    }
    const double all = count * SEEDS;
    CHECK_NEAR(fourths / all / (squares / all) / (squares / all), 2.8, 0.1);
    CHECK_NEAR(beyond / all, 0.5 * 0.0027, 0.0005);
}

// int weight(omega) S d omega between two multiples of the peak's frequency.
typedef double (*weight)(double omega);
static double moment(lw_sea_kind kind, weight of, double from, double to)
{
    const double omega_p = 2.0 * LW_PI / kind.wave.period, step = 1e-3;
    double sum = 0.0;
    for (double x = from + 0.5 * step; x < to; x += step) {
        const double omega = omega_p * x;
        sum += of(omega) * lw_wave_spectrum(kind.wave, kind.gamma, omega) * omega_p * step;
    }
    return sum;
}
static double one(double omega) { return omega > 0.0; }
static double square(double omega) { return omega * omega; }
static double square_at_depth(double omega)  // 0.5 m
{
    return omega * omega * lw_exp(-2.0 * 0.5 * omega * omega / LW_GRAVITY);
}

// Share of a sea's variance, at a fixed place, between two multiples of the peak's frequency:
// a sum over the lines of a record's Fourier series.
static double share_between(lw_sea_kind kind, double from, double to)
{
    enum { count = 1024 };
    const double step = 0.25, base = 2.0 * LW_PI / (count * step);
    const double omega_p = 2.0 * LW_PI / kind.wave.period;
    double inside = 0.0, all = 0.0;
    for (uint64_t seed = 0; seed < SEEDS; seed++) {
        const lw_sea_waves sea = sea_of(kind, seed);
        double z[count];
        for (int i = 0; i < count; i++) {
            const double window = sin(LW_PI * (i + 0.5) / count);
            z[i] = window * lw_sea_at(&sea, 0.0, 0.0, step * i, 0.0).surface;
        }
        for (int line = 1; line < count / 2; line++) {
            double re = 0.0, im = 0.0, c = 1.0, s = 0.0;
            const double turn_c = cos(base * step * line), turn_s = sin(base * step * line);
            for (int i = 0; i < count; i++) {
                re += z[i] * c, im += z[i] * s;
                const double next = c * turn_c - s * turn_s;
                s = c * turn_s + s * turn_c, c = next;
            }
            const double omega = base * line / omega_p, power = re * re + im * im;
            all += power;
            if (omega >= from && omega < to) inside += power;
        }
    }
    return inside / all;
}

TEST_FUNCTION(spectrum_comes_back_from_records)
{
    static const double edges[] = {0.74, 0.95, 1.05, 1.25, 1.6, 2.09};
    for (int g = 0; g < 2; g++) {
        lw_sea_kind kind = chop;
        kind.gamma = g == 0 ? 1.0 : 3.3;
        const double all = moment(kind, one, 0.74, 2.09);
        for (int i = 0; i < 5; i++) {
            const double want = moment(kind, one, edges[i], edges[i + 1]) / all;
            CHECK_NEAR(share_between(kind, edges[i], edges[i + 1]), want, 0.04);
        }
    }
}

// Mean over seeds and time of w^2 at a depth.
static double vertical_variance(lw_sea_kind kind, double depth)
{
    double sum = 0.0;
    const int count = 2000;
    for (uint64_t seed = 0; seed < SEEDS; seed++) {
        const lw_sea_waves sea = sea_of(kind, seed);
        for (int i = 0; i < count; i++) {
            const double w = lw_sea_at(&sea, 0.0, 0.0, 1.7 * i, depth).w;
            sum += w * w;
        }
    }
    return sum / (count * SEEDS);
}

TEST_FUNCTION(orbital_speed_is_that_of_the_spectrum_at_the_surface_and_below)
{
    for (int g = 0; g < 2; g++) {
        lw_sea_kind kind = chop;
        kind.gamma = g == 0 ? 1.0 : 3.3;
        const double m_0 = kind.wave.height * kind.wave.height / 16.0;
        const double scale = m_0 / moment(kind, one, 0.74, 2.09);
        CHECK_RELATIVE(vertical_variance(kind, 0.0), scale * moment(kind, square, 0.74, 2.09),
                       0.03);
        CHECK_RELATIVE(vertical_variance(kind, 0.5),
                       scale * moment(kind, square_at_depth, 0.74, 2.09), 0.03);
    }
}

TEST_FUNCTION(energy_left_out_is_what_the_header_says)
{
    lw_sea_kind kind = chop;
    for (int g = 0; g < 2; g++) {
        kind.gamma = g == 0 ? 1.0 : 3.3;
        const double all = moment(kind, one, 0.3, 30.0);
        CHECK_NEAR(moment(kind, one, 2.09, 30.0) / all, g == 0 ? 0.063 : 0.042, 0.003);
        CHECK(moment(kind, one, 0.3, 0.74) / all < 0.017);
    }
}

// The largest part of a record at one place that comes back after a time, up to an hour.
static double most_alike(const lw_sea_waves *sea)
{
    double most = 0.0;
    for (double lag = 20.0; lag < 3600.0; lag += 0.1) {
        double sum = 0.0, all = 0.0;
        for (int c = 0; c < LW_SEA_CHAINS; c++) {
            for (int i = 0; i < LW_SEA_OCTAVES; i++) {
                const double a = sea->chains[c].amplitude[i];
                sum += a * a * cos(sea->chains[c].omega[i] * lag);
                all += a * a;
            }
        }
        most = fmax(most, sum / all);
    }
    return most;
}

TEST_FUNCTION(no_record_repeats_within_an_hour)
{
    for (uint64_t seed = 0; seed < 8; seed++) {
        const lw_sea_waves sea = sea_of(chop, seed);
        CHECK(most_alike(&sea) < 0.95);
    }
}

TEST_FUNCTION(waves_run_where_they_should_and_spread_as_said)
{
    const double spread = 30.0 * LW_DEG, from = 0.7;
    double along = 0.0, squares = 0.0;
    for (uint64_t seed = 0; seed < 500; seed++) {
        const lw_sea_waves sea = sea_of(chop_from(from, spread), seed);
        for (int c = 0; c < LW_SEA_CHAINS; c++) {
            const double off = lw_atan2(-sea.chains[c].y, -sea.chains[c].x) - from;
            along += off, squares += off * off;
        }
    }
    const int count = 500 * LW_SEA_CHAINS;
    CHECK_NEAR(along / count, 0.0, 0.02);
    CHECK_RELATIVE(sqrt(squares / count), spread, 0.03);
    const lw_sea_waves straight = sea_of(chop_from(0.0, 0.0), 3);
    const lw_sea_point point = lw_sea_at(&straight, 3.0, 4.0, 5.0, 0.2);
    CHECK(fabs(point.v) < 1e-12 && fabs(point.u) > 0.0);
}

// --- lanes

static lw_sea_lanes lanes_of(lw_sea_kind kind, double step)
{
    lw_sea_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) {
        const lw_sea_waves sea = sea_of(kind, (uint64_t)i);
        lw_sea_lanes_put(&lanes, i, &sea, step);
    }
    return lanes;
}

// A boat that turns and changes speed for 1,000 s.
TEST_FUNCTION(fast_looks_agree_with_the_exact_sea)
{
    const double step = 0.02;
    lw_sea_lanes lanes = lanes_of(chop_from(0.3, 0.4), step);
    double x = 0.0, y = 0.0;
    for (int i = 1; i <= 50000; i++) {
        const double t = step * i, speed = 7.0 + 3.0 * sin(0.05 * t), heading = 0.02 * t;
        x += step * speed * cos(heading), y += step * speed * sin(heading);
        lw_sea_lanes_advance(&lanes);
        if (i % 100 != 0) continue;
        const double depth = 0.7 + 0.6 * sin(0.3 * t);
        const lw_sea_look look = lw_sea_lanes_look(&lanes, lw_all(x), lw_all(y), lw_all(depth));
        const lw_lanes surface = lw_sea_lanes_surface(&lanes, lw_all(x), lw_all(y));
        for (int k = 0; k < LW_WIDTH; k++) {
            const lw_sea_waves sea = sea_of(chop_from(0.3, 0.4), (uint64_t)k);
            const lw_sea_point point = lw_sea_at(&sea, x, y, t, depth);
            CHECK_NEAR(look.surface[k], point.surface, 3e-6);
            CHECK_NEAR(surface[k], point.surface, 3e-6);
            CHECK_NEAR(look.u[k], point.u, 5e-6);
            CHECK_NEAR(look.v[k], point.v, 5e-6);
            CHECK_NEAR(look.w[k], point.w, 5e-6);
        }
    }
}

TEST_FUNCTION(flat_water_is_flat)
{
    lw_medium pond = {.wind_height = 2.0};
    const lw_sea_waves sea = sea_of(lw_sea_kind_of(&pond, 8.0), 1);
    const lw_sea_point point = lw_sea_at(&sea, 1.0, 2.0, 3.0, 0.4);
    CHECK(point.surface == 0.0 && point.u == 0.0 && point.v == 0.0 && point.w == 0.0);
    lw_sea_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) lw_sea_lanes_put(&lanes, i, &sea, 0.01);
    const lw_sea_look look = lw_sea_lanes_look(&lanes, lw_all(1.0), lw_all(2.0), lw_all(0.4));
    CHECK(look.surface[0] == 0.0 && look.u[0] == 0.0 && look.w[0] == 0.0);
}

TEST_FUNCTION(spectrum_is_peaked_for_a_young_sea_and_not_for_an_old_one)
{
    const lw_medium young = {.wind_height = 10.0, .fetch = 500.0},
                    old = {.wind_height = 10.0, .fetch = 1e7};
    CHECK(lw_sea_kind_of(&young, 10.0).gamma == 5.0);
    CHECK_RELATIVE(lw_sea_kind_of(&old, 10.0).gamma, 1.0, 0.01);
}

TEST_FUNCTION(sea_of_a_day_runs_as_the_day_says)
{
    const lw_day day = {.wind.height = 2.0,
                        .water = {15.0, 35.0},
                        .air = {15.0, 101325.0},
                        .sea = {.fetch = 2000.0, .from = 0.5, .spread = 0.25}};
    const lw_medium medium = lw_medium_of(&day);
    const lw_sea_kind kind = lw_sea_kind_of(&medium, 6.0);
    CHECK(kind.from == 0.5 && kind.spread == 0.25);
    CHECK(kind.wave.height == lw_medium_wave(&medium, 6.0).height);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(significant_height_comes_back_from_10000_s_of_every_sea_within_3_percent),
        TEST(surface_is_nearly_normal),
        TEST(spectrum_comes_back_from_records),
        TEST(orbital_speed_is_that_of_the_spectrum_at_the_surface_and_below),
        TEST(energy_left_out_is_what_the_header_says),
        TEST(no_record_repeats_within_an_hour),
        TEST(waves_run_where_they_should_and_spread_as_said),
        TEST(fast_looks_agree_with_the_exact_sea),
        TEST(flat_water_is_flat),
        TEST(sea_of_a_day_runs_as_the_day_says),
        TEST(spectrum_is_peaked_for_a_young_sea_and_not_for_an_old_one),
    };
    return RUN_TESTS(tests);
}
