// pilot.h - the sailor of a ride: what she wants in each wind, and the gains of her answers.
// SPDX-License-Identifier: MIT

#ifndef LW_PILOT_H
#define LW_PILOT_H

#include <stddef.h>

// Gains of the pilot model (motion/sailor/control.h) at one speed of the boat, by name and in a
// row.
// clang-format off
#define LW_GAINS 7
#define LW_GAINS_OF(number)                                                                 \
    union {                                                                                 \
        struct {                                                                            \
            number speed;        /* [m/s] */                                                \
            number heel;         /* k_e [1/rad]     effort for heel */                      \
            number lead_time;    /* T_l [s]         heel counted ahead */                   \
            number effort;       /* p_0 that holds the heel in the wind of the trim */      \
            number wind;         /* k_u [1/(m/s)]   feed-forward: effort for more of it */  \
            number heading;      /* k_h [rad/rad]   helm for course */                      \
            number heel_to_helm; /* k_x [rad/rad]   helm for heel */                        \
        };                                                                                  \
        number at[LW_GAINS];                                                                \
    }

// What the sailor wants in a wind, and how she holds it.
#define LW_WISH_MEMBERS (5 + LW_GAINS)
#define LW_WISH_OF(number, gains_of)                                                        \
    union {                                                                                 \
        struct {                                                                            \
            number heel, bow; /* in flight [rad] */                                         \
            number helm;      /* that holds them [rad] */                                   \
            number pitch;     /* bow up in that flight: beyond it she goes forward [rad] */ \
            number afloat;    /* heel on the hull [rad] */                                  \
            gains_of gains;   /* at the speed of that flight */                             \
        };                                                                                  \
        number at[LW_WISH_MEMBERS];                                                         \
    }
// clang-format on

typedef LW_GAINS_OF(double) lw_gains;
typedef LW_WISH_OF(double, lw_gains) lw_wish;
_Static_assert(sizeof(lw_gains) == LW_GAINS * sizeof(double), "a place for each gain");
_Static_assert(sizeof(lw_wish) == LW_WISH_MEMBERS * sizeof(double), "a place for each member");

// Winds that she has a wish for, even from a third of the plan's wind on; between them along
// straight lines. The plan's own is one of them.
#define LW_WISHES     9
#define LW_WISH_FIRST (1.0 / 3.0)  // of the plan's wind
#define LW_WISH_STEP  (1.0 / 6.0)  // of it
#define LW_WISH_MEAN  4            // where it is

// What the sailor wants, and how strongly she answers.
typedef struct lw_pilot {
    double bow_afloat;         // wanted on the hull [rad]
    lw_gains rest, rising;     // on the hull, and about to lift off it: by rising speed
    lw_wish wish[LW_WISHES];   // by the wind of some seconds
    double rudder[LW_WISHES];  // incidence wound to, by the wind of the last minute [rad]
    double wind;               // of the plan [m/s]
    double patience;           // 1 / T_i [1/s]
    double flight;             // [m/s] beyond this speed the helm is moved less, as 1 / V^2
} lw_pilot;

double lw_wish_wind(double mean, int which);  // [m/s], of a plan for a mean wind

// The same at every speed, and in every wind.
void lw_gains_everywhere(lw_pilot *pilot, const lw_gains *gains);

#endif
