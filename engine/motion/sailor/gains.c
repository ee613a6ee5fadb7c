// gains.c - gains of the pilot model, from how the boat answers the sailor.
// SPDX-License-Identifier: MIT

#include "motion/sailor/gains.h"

#include <math.h>
#include <string.h>

#include "boat/effort.h"
#include "lullwise/elementary.h"
#include "solve/linear.h"

#define PLANT 12  // states of the boat alone that decide how she answers

// Crossover of the pilot's loops: where answer and lag leave a gain of one. A pilot who must lead
// works near 3 rad/s and near the limit of stability [mcruer-1967].
#define HEEL_CROSSOVER   2.5              // [rad/s]
#define COURSE_CROSSOVER 1.2              // [rad/s]                                      [judged]
#define PHASE_MARGIN     (40.0 * LW_DEG)  // of the heel's loop
#define LEAD_MOST        3.0              // [s] more than a person can look ahead        [judged]
#define SLOW_MOST        4.0              // [m/s] below which a boat is afloat           [judged]
#define SLOW_HEEL_MOST   1.0              // [1/rad] effort for heel, afloat              [judged]
#define HEEL_MOST        4.0              // [1/rad] the same in flight                   [judged]
#define HELM_PART        0.5              // of the heel's loop by the helm               [judged]
#define HELM_MOST        0.3              // [rad/rad] helm for heel                      [judged]
#define WIND_MOST        0.2              // [1/(m/s)] effort for wind                    [judged]

// Response of the boat to a state that the sailor sets, at a frequency: (i w - A) x = b, of the
// 12 states of the boat alone.
typedef struct response {
    double re[PLANT], im[PLANT];
} response;

static const size_t plant[PLANT] = {
#define AT LW_STATE_AT
    AT(surge), AT(sway),  AT(heave), AT(roll_rate), AT(pitch_rate), AT(yaw_rate),
    AT(heel),  AT(pitch), AT(bow),   AT(height),    AT(wand),       AT(downwash)};

static void respond(lw_jacobian jacobian, const double into[PLANT], double omega, response *out)
{
    enum { N = 2 * PLANT };
    double matrix[N * N], x[N];
    int pivot[N];
    memset(matrix, 0, sizeof matrix);
    for (int i = 0; i < PLANT; i++) {
        for (int j = 0; j < PLANT; j++) {
            const double a = -jacobian[plant[i]][plant[j]];
            matrix[i * N + j] = matrix[(PLANT + i) * N + PLANT + j] = a;
        }
        matrix[i * N + PLANT + i] = -omega;
        matrix[(PLANT + i) * N + i] = omega;
        x[i] = into[i], x[PLANT + i] = 0.0;
    }
    const bool is_regular = lw_linear_factor(matrix, N, pivot);
    if (is_regular) lw_linear_solve(matrix, N, pivot, x);
    for (int i = 0; i < PLANT; i++) {
        out->re[i] = is_regular ? x[i] : 0.0;
        out->im[i] = is_regular ? x[PLANT + i] : 0.0;
    }
}

// Gain and phase of a member of the response.
typedef struct bode {
    double gain, phase;
} bode;

static bode bode_of(const response *r, int member)
{
    const double re = r->re[member], im = r->im[member];
    return (bode){sqrt(re * re + im * im), lw_atan2(im, re)};
}

enum { IS_HEEL = 6, IS_BOW = 8 };

// Response to effort: the sheet at once, for all of it, and given back as the body gets there,
//
//     (1 - h B) x sheet + h B x body,   B = 1 / (1 + i w tau)^2,   h = d out / d effort
static response to_effort_of(const lw_motion *motion, lw_jacobian jacobian, double effort,
                             double omega)
{
    const lw_craft *craft = motion->craft;
    const double by = 1e-4, reach = craft->body_reach - craft->body_inboard;
    const double hike = (lw_effort_hike(craft, lw_all(effort + by))[0] -
                         lw_effort_hike(craft, lw_all(effort - by))[0]) /
                        (2.0 * by);
    double into[PLANT];
    response sheet, body, out;
    for (int i = 0; i < PLANT; i++) into[i] = jacobian[plant[i]][AT(taken)];
    respond(jacobian, into, omega, &sheet);
    for (int i = 0; i < PLANT; i++) into[i] = -hike * jacobian[plant[i]][AT(body)];
    respond(jacobian, into, omega, &body);
    const double q = omega * motion->parameters.body_lag, re = 1.0 - q * q, im = 2.0 * q;
    const double B = re / (re * re + im * im), C = -im / (re * re + im * im);
    const double h = hike / reach;
    for (int i = 0; i < PLANT; i++) {
        out.re[i] =
            (1.0 - h * B) * sheet.re[i] + h * C * sheet.im[i] + B * body.re[i] - C * body.im[i];
        out.im[i] =
            (1.0 - h * B) * sheet.im[i] - h * C * sheet.re[i] + B * body.im[i] + C * body.re[i];
    }
    return out;
}

// What a change of wind does to the rates.
static void wind_into(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *at,
                      double into[PLANT])
{
    const double by = 1e-3;
    lw_ride_plan other = *plan;
    lw_ride_state up, down;
    other.wind = plan->wind + by;
    lw_motion_rates(motion, &other, at, &up);
    other.wind = plan->wind - by;
    lw_motion_rates(motion, &other, at, &down);
    for (int i = 0; i < PLANT; i++) into[i] = (up.at[plant[i]] - down.at[plant[i]]) / (2.0 * by);
}

#define LEAST_ANSWER 1e-3  // a boat that answers less is not steered harder

// Gains by the crossover model: there the loop's gain is one, and lead brings its phase as near to
// the margin as a person can. Effort goes with the wind as far as it undoes what the wind does.
lw_gains lw_gains_of(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *at,
                     double effort)
{
    lw_jacobian jacobian;
    double into[PLANT];
    lw_gains gains = {.speed = at->surge, .effort = effort};
    response to_wind, to_helm;
    lw_motion_jacobian(motion, plan, at, jacobian);
    const response to_effort = to_effort_of(motion, jacobian, effort, HEEL_CROSSOVER);
    const bode heel = bode_of(&to_effort, IS_HEEL);
    const double late = HEEL_CROSSOVER * (motion->parameters.delay + motion->parameters.hand_lag);
    const double behind = heel.phase > 0.0 ? heel.phase - 2.0 * LW_PI : heel.phase;
    const double wanted = PHASE_MARGIN - LW_PI - behind + late;
    const double angle = fmin(fmax(wanted, 0.0), 80.0 * LW_DEG);
    gains.lead_time = fmin(lw_tan(angle) / HEEL_CROSSOVER, LEAD_MOST);
    const double ahead = HEEL_CROSSOVER * gains.lead_time;
    const double per = 1.0 / (fmax(heel.gain, LEAST_ANSWER) * sqrt(1.0 + ahead * ahead));

    gains.heel = fmin(per, at->surge < SLOW_MOST ? SLOW_HEEL_MOST : HEEL_MOST);

    wind_into(motion, plan, at, into);
    respond(jacobian, into, HEEL_CROSSOVER, &to_wind);
    const double along =
        to_wind.re[IS_HEEL] * to_effort.re[IS_HEEL] + to_wind.im[IS_HEEL] * to_effort.im[IS_HEEL];
    gains.wind = fmin(fmax(-along / fmax(heel.gain * heel.gain, LEAST_ANSWER), 0.0), WIND_MOST);

    for (int i = 0; i < PLANT; i++) into[i] = jacobian[plant[i]][AT(helm)];
    respond(jacobian, into, COURSE_CROSSOVER, &to_helm);
    gains.heading = 1.0 / fmax(bode_of(&to_helm, IS_BOW).gain, LEAST_ANSWER);
    if (at->surge < SLOW_MOST) return gains;
    respond(jacobian, into, HEEL_CROSSOVER, &to_helm);
    const double lean = bode_of(&to_helm, IS_HEEL).gain * sqrt(1.0 + ahead * ahead);
    gains.heel_to_helm = fmin(HELM_PART / fmax(lean, LEAST_ANSWER), HELM_MOST);
    return gains;
}
