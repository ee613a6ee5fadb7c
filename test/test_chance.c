// test_chance.c - claims about errors over blocks and the chances that follow from them.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/chance.h"
#include "test/check.h"

// Of a mean the jackknife is s / sqrt(n): the textbook's standard error.
TEST_FUNCTION(jackknife_of_a_mean_is_its_standard_error)
{
    random_stream stream = {5};
    for (int run = 0; run < 100; run++) {
        double x[LW_BLOCKS], of_set[LW_SETS], sum = 0.0, square = 0.0;
        for (int b = 0; b < LW_BLOCKS; b++) sum += x[b] = random_between(&stream, -3.0, 9.0);
        of_set[0] = sum / LW_BLOCKS;
        for (int b = 0; b < LW_BLOCKS; b++) {
            of_set[b + 1] = (sum - x[b]) / (LW_BLOCKS - 1.0);
            square += (x[b] - of_set[0]) * (x[b] - of_set[0]);
        }
        const double deviation = sqrt(square / (LW_BLOCKS - 1.0));
        CHECK_RELATIVE(lw_jackknife(of_set), deviation / sqrt(LW_BLOCKS), 1e-12);
    }
}

// Quantiles of Student's t as in every table of it, to the digits printed there; from memory. One
// degree of freedom is Cauchy's: 3/4 below 1.
TEST_FUNCTION(students_chance_is_that_of_the_tables)
{
    static const struct {
        double t, below;
        int freedom;
    } rows[] = {{1.0, 0.75, 1},    {3.182, 0.975, 3}, {2.571, 0.975, 5}, {1.895, 0.95, 7},
                {2.365, 0.975, 7}, {3.499, 0.995, 7}, {1.833, 0.95, 9}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK_NEAR(lw_student_below(rows[i].t, rows[i].freedom), rows[i].below, 1e-4);
        CHECK_NEAR(lw_student_below(-rows[i].t, rows[i].freedom), 1.0 - rows[i].below, 1e-4);
    }
    CHECK_NEAR(lw_student_below(0.0, 7), 0.5, 1e-15);
}

TEST_FUNCTION(the_less_is_known_the_nearer_the_chance_is_to_one_half)
{
    double before = 1.0;
    for (double spread = 0.5; spread < 1e4; spread *= 2.0) {
        const double chance = lw_chance(10.0, 3.0, spread);
        CHECK(chance > 0.5 && chance < before);
        CHECK_RELATIVE(chance, lw_chance(10.0, spread, 3.0), 1e-12);
        CHECK_NEAR(chance + lw_chance(-10.0, 3.0, spread), 1.0, 1e-12);
        before = chance;
    }
    CHECK(before < 0.51);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(jackknife_of_a_mean_is_its_standard_error),
        TEST(students_chance_is_that_of_the_tables),
        TEST(the_less_is_known_the_nearer_the_chance_is_to_one_half),
    };
    return RUN_TESTS(tests);
}
