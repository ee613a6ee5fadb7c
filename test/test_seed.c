// test_seed.c - claims about random numbers.
// SPDX-License-Identifier: MIT

#include "lullwise/weather.h"
#include "medium/seed_lanes.h"
#include "test/check.h"

#define DRAWS 1000000

TEST_FUNCTION(mixer_gives_its_known_answers)  // [splitmix64]
{
    static const uint64_t known[] = {UINT64_C(6457827717110365317), UINT64_C(3203168211198807973),
                                     UINT64_C(9817491932198370423), UINT64_C(4593380528125082431),
                                     UINT64_C(16408922859458223821)};
    uint64_t state = 1234567;
    for (int i = 0; i < 5; i++) CHECK(lw_seed_mix(&state) == known[i]);
}

TEST_FUNCTION(stream_gives_its_known_answers)  // [xoshiro]
{
    static const uint64_t known[] = {UINT64_C(41943041),
                                     UINT64_C(58720359),
                                     UINT64_C(3588806011781223),
                                     UINT64_C(3591011842654386),
                                     UINT64_C(9228616714210784205),
                                     UINT64_C(9973669472204895162),
                                     UINT64_C(14011001112246962877),
                                     UINT64_C(12406186145184390807),
                                     UINT64_C(15849039046786891736),
                                     UINT64_C(10450023813501588000)};
    lw_seed seed = {{1, 2, 3, 4}};
    for (int i = 0; i < 10; i++) CHECK(lw_seed_bits(&seed) == known[i]);
}

TEST_FUNCTION(lanes_draw_what_single_streams_draw)
{
    lw_seed seeds[LW_WIDTH];
    lw_seed_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) {
        seeds[i] = lw_seed_of((uint64_t)i, LW_SEED_GUST);
        lw_seed_lanes_put(&lanes, i, seeds[i]);
    }
    for (int draw = 0; draw < 1000; draw++) {
        const lw_bits bits = lw_seed_lanes_bits(&lanes);
        for (int i = 0; i < LW_WIDTH; i++) CHECK(bits[i] == lw_seed_bits(&seeds[i]));
    }
}

// Mean, variance and fourth moment about the mean, over the square of the variance.
static void check_moments(const double sum[4], double mean, double variance, double kurtosis)
{
    const double m = sum[0] / DRAWS, q = sum[1] / DRAWS, c = sum[2] / DRAWS, f = sum[3] / DRAWS;
    const double v = q - m * m;
    CHECK_NEAR(m, mean, 4.0 * sqrt(variance / DRAWS));
    CHECK_RELATIVE(v, variance, 0.01);
    CHECK_RELATIVE((f - 4.0 * m * c + 6.0 * m * m * q - 3.0 * m * m * m * m) / (v * v), kurtosis,
                   0.01);
}

static void add_powers(double sum[4], double x)
{
    double power = 1.0;
    for (int i = 0; i < 4; i++) sum[i] += power *= x;
}

TEST_FUNCTION(uniform_and_normal_deviates_have_their_moments)
{
    double uniform[4] = {0}, normal[4] = {0}, noise[4] = {0};
    lw_seed seed = lw_seed_of(7, LW_SEED_SEA);
    lw_seed_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) lw_seed_lanes_put(&lanes, i, lw_seed_of(8, LW_SEED_SEA));
    for (int i = 0; i < DRAWS; i++) {
        const double u = lw_seed_uniform(&seed);
        CHECK(u >= 0.0 && u < 1.0);
        add_powers(uniform, u);
        add_powers(normal, lw_seed_normal(&seed));
        add_powers(noise, lw_noise_of(lw_seed_lanes_bits(&lanes))[0]);
    }
    check_moments(uniform, 0.5, 1.0 / 12.0, 1.8);
    check_moments(normal, 0.0, 1.0, 3.0);
    check_moments(noise, 0.0, 1.0, 1.8);
}

TEST_FUNCTION(neighbouring_numbers_and_other_uses_give_streams_that_share_nothing)
{
    double product[3] = {0};
    lw_seed a = lw_seed_of(41, LW_SEED_SEA), b = lw_seed_of(42, LW_SEED_SEA),
            c = lw_seed_of(41, LW_SEED_GUST), d = lw_seed_of(0, LW_SEED_SEA);
    for (int i = 0; i < DRAWS; i++) {
        const double x = lw_seed_normal(&a);
        product[0] += x * lw_seed_normal(&b);
        product[1] += x * lw_seed_normal(&c);
        product[2] += x * lw_seed_normal(&d);
    }
    for (int i = 0; i < 3; i++) CHECK_NEAR(product[i] / DRAWS, 0.0, 4.0 / sqrt(DRAWS));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(mixer_gives_its_known_answers),
        TEST(stream_gives_its_known_answers),
        TEST(lanes_draw_what_single_streams_draw),
        TEST(uniform_and_normal_deviates_have_their_moments),
        TEST(neighbouring_numbers_and_other_uses_give_streams_that_share_nothing),
    };
    return RUN_TESTS(tests);
}
