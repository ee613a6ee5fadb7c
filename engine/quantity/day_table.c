// day_table.c - what each number of a day is and how to come by it.
// SPDX-License-Identifier: MIT

#include "lullwise/day.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity wind_rows[] = {
    {LW_MEMBER(lw_wind, lull),   .symbol = "U_l",
     .unit = LW_UNIT_KN, .min = 0.0,  .max = 45.0, .preset = 0.0, .error = 1.0,
     .usual_min = 2.0,   .usual_max = 25.0,  .decimals = 1,
     .doc = "Low wind over some minutes: one reading in ten is lower. Hand anemometer held up, a "
            "reading every ten seconds for five minutes."},

    {LW_MEMBER(lw_wind, mean),   .symbol = "U",
     .unit = LW_UNIT_KN, .min = 0.0,  .max = 45.0, .preset = 0.0, .error = 1.0,
     .usual_min = 4.0,   .usual_max = 28.0,  .decimals = 1,
     .doc = "Average wind of the same readings."},

    {LW_MEMBER(lw_wind, puff),   .symbol = "U_p",
     .unit = LW_UNIT_KN, .min = 0.0,  .max = 60.0, .preset = 0.0, .error = 1.0,
     .usual_min = 5.0,   .usual_max = 35.0,  .decimals = 1,
     .doc = "High wind over the same minutes: one reading in ten is higher."},

    {LW_MEMBER(lw_wind, height), .symbol = "z_0",
     .unit = LW_UNIT_M,  .min = 0.5,  .max = 50.0, .preset = 3.0, .error = 0.3,
     .usual_min = 1.0,   .usual_max = 15.0,  .decimals = 1,
     .doc = "Height above the water at which the wind was read: an arm held up on the beach is "
            "2 m and more."},

    {LW_MEMBER(lw_wind, period), .symbol = "T_g",
     .unit = LW_UNIT_S,  .min = 5.0,  .max = 1800.0, .preset = 60.0, .error = 20.0,
     .usual_min = 20.0,  .usual_max = 600.0, .decimals = 0,
     .doc = "Time from puff to puff. Watch over five puffs. [judged]"},

    {LW_MEMBER(lw_wind, shift),  .symbol = "s_w",
     .unit = LW_UNIT_DEG, .min = 0.0, .max = 30.0,  .preset = 0.0, .error = 3.0,
     .usual_min = 0.0,   .usual_max = 15.0,  .decimals = 0,
     .doc = "How far the wind's direction swings, as a standard deviation: half of the angle that "
            "it stays within for two thirds of the time. Compass, head to wind, over five minutes. "
            "0: steady. Used by rides only."},
};

static const lw_quantity forecast_rows[] = {
    {LW_MEMBER(lw_forecast, mean),   .symbol = "U_10",
     .unit = LW_UNIT_KN, .min = 0.0,  .max = 60.0, .preset = 0.0, .error = 2.0,
     .usual_min = 4.0,   .usual_max = 30.0,  .decimals = 1, .required = true,
     .doc = "Ten-minute mean of the forecast."},

    {LW_MEMBER(lw_forecast, gust),   .symbol = "U_g",
     .unit = LW_UNIT_KN, .min = 0.0,  .max = 90.0, .preset = 0.0, .error = 3.0,
     .usual_min = 0.0,   .usual_max = 45.0,  .decimals = 1,
     .doc = "Three-second gust of the forecast. 0: not given; then it is taken from the "
            "exposure. [wmo-1555]"},

    {LW_MEMBER(lw_forecast, height), .symbol = "z_f",
     .unit = LW_UNIT_M,  .min = 2.0,  .max = 100.0, .preset = 10.0, .error = 0.0,
     .usual_min = 9.0,   .usual_max = 11.0,  .decimals = 0,
     .doc = "Height of the forecast: 10 m unless it says otherwise."},
};

static const lw_quantity sea_rows[] = {
    {LW_MEMBER(lw_sea, fetch),  .symbol = "F",
     .unit = LW_UNIT_KM, .min = 0.0,  .max = 1000.0, .preset = 0.0, .error = 0.3,
     .usual_min = 0.0,   .usual_max = 50.0, .decimals = 1,
     .doc = "Length of open water to windward. From a map. 0: sheltered, flat. Used where height "
            "and period are 0."},

    {LW_MEMBER(lw_sea, height), .symbol = "H_s",
     .unit = LW_UNIT_M,  .min = 0.0,  .max = 4.0,  .preset = 0.0, .error = 0.05,
     .usual_min = 0.0,   .usual_max = 0.8,  .decimals = 2,
     .doc = "Significant wave height, crest to trough: the mean of the higher third, about what "
            "the eye reports. 0: from fetch and wind."},

    {LW_MEMBER(lw_sea, period), .symbol = "T_p",
     .unit = LW_UNIT_S,  .min = 0.0,  .max = 15.0, .preset = 0.0, .error = 0.3,
     .usual_min = 0.0,   .usual_max = 6.0,  .decimals = 1,
     .doc = "Time from crest to crest at a fixed place: time ten waves past a buoy and divide by "
            "ten. 0: from fetch and wind."},

    {LW_MEMBER(lw_sea, from),   .symbol = "beta",
     .unit = LW_UNIT_DEG, .min = -180.0, .max = 180.0, .preset = 0.0, .error = 10.0,
     .usual_min = -90.0, .usual_max = 90.0, .decimals = 0,
     .doc = "Where the waves come from, looking into the wind: 0 with it, 30 from 30 degrees to "
            "the left, -30 to the right. By eye or compass. Used by rides only."},

    {LW_MEMBER(lw_sea, spread), .symbol = "s_beta",
     .unit = LW_UNIT_DEG, .min = 0.0, .max = 35.0, .preset = 30.0, .error = 10.0,
     .usual_min = 0.0,   .usual_max = 33.0, .decimals = 0,
     .doc = "Standard deviation of the waves' directions. 0: long unbroken crests, as of a swell. "
            "A sea raised by wind has 26 to 33: cos^2 to cos^4 about its mean. [rp-c205] Used by "
            "rides only."},
};

static const lw_quantity water_rows[] = {
    {LW_MEMBER(lw_water, temperature), .symbol = "t_w",
     .unit = LW_UNIT_DEGC, .min = 0.0, .max = 40.0, .preset = 15.0, .error = 1.0,
     .usual_min = 4.0,     .usual_max = 30.0, .decimals = 0,
     .doc = "Temperature of the water. Thermometer at arm's depth."},

    {LW_MEMBER(lw_water, salinity),    .symbol = "S",
     .unit = LW_UNIT_GPKG, .min = 0.0, .max = 42.0, .preset = 35.0, .error = 3.0,
     .usual_min = 0.0,     .usual_max = 40.0, .decimals = 0,
     .doc = "Salt in the water: a lake 0, a brackish sea 10, the ocean 35. [common practice]"},
};

static const lw_quantity air_rows[] = {
    {LW_MEMBER(lw_air, temperature), .symbol = "t_a",
     .unit = LW_UNIT_DEGC, .min = -20.0, .max = 50.0,   .preset = 15.0, .error = 1.0,
     .usual_min = 3.0,     .usual_max = 38.0,   .decimals = 0,
     .doc = "Temperature of the air, in the shade. Thermometer."},

    {LW_MEMBER(lw_air, pressure),    .symbol = "p_a",
     .unit = LW_UNIT_HPA,  .min = 600.0, .max = 1080.0, .preset = 1013.0, .error = 3.0,
     .usual_min = 960.0,   .usual_max = 1045.0, .decimals = 0,
     .doc = "Air pressure where you sail, not reduced to sea level. A phone's barometer, or the "
            "forecast less 12 hPa for each 100 m of height of the lake."},
};

static const lw_quantity cost_rows[] = {
    {LW_MEMBER(lw_cost, swim),       .symbol = "t_swim",
     .unit = LW_UNIT_S, .min = 0.0,  .max = 600.0,  .preset = 60.0, .error = 15.0,
     .usual_min = 15.0, .usual_max = 240.0,  .decimals = 0,
     .doc = "What a swim costs: from the fall to being under way again; taking off comes on top. A "
            "watch, or a guess. [judged]"},

    {LW_MEMBER(lw_cost, tack),       .symbol = "t_tack",
     .unit = LW_UNIT_S, .min = 0.0,  .max = 120.0,  .preset = 8.0, .error = 2.0,
     .usual_min = 2.0,  .usual_max = 30.0,   .decimals = 0,
     .doc = "What a tack costs against sailing straight on. [judged]"},

    {LW_MEMBER(lw_cost, gybe),       .symbol = "t_gybe",
     .unit = LW_UNIT_S, .min = 0.0,  .max = 120.0,  .preset = 6.0, .error = 2.0,
     .usual_min = 1.0,  .usual_max = 30.0,   .decimals = 0,
     .doc = "What a gybe costs against sailing straight on. [judged]"},

    {LW_MEMBER(lw_cost, tack_every), .symbol = "d_tack",
     .unit = LW_UNIT_M, .min = 20.0, .max = 5000.0, .preset = 300.0, .error = 50.0,
     .usual_min = 80.0, .usual_max = 1500.0, .decimals = 0,
     .doc = "Distance sailed between tacks, or between gybes. From a track."},
};

static const lw_quantity reading_rows[] = {
    {.key = "reading", .offset = 0, .symbol = "U",
     .unit = LW_UNIT_KN, .min = 0.0, .max = 60.0, .preset = 10.0, .error = 0.5,
     .usual_min = 1.0,   .usual_max = 40.0, .decimals = 1,
     .doc = "One wind reading, at the height given under wind."},
};

static const lw_quantity leg_rows[] = {
    {LW_MEMBER(lw_leg, heading), .symbol = "gamma",
     .unit = LW_UNIT_DEG, .min = -180.0, .max = 180.0, .preset = 0.0, .error = 5.0,
     .usual_min = -180.0, .usual_max = 180.0, .decimals = 0, .required = true,
     .doc = "Direction of the next mark from the wind: 0 dead upwind, 90 a reach, 180 dead "
            "downwind. Either sign will do."},

    {LW_MEMBER(lw_leg, length),  .symbol = "d",
     .unit = LW_UNIT_M,   .min = 10.0, .max = 50000.0, .preset = 800.0, .error = 50.0,
     .usual_min = 100.0,  .usual_max = 5000.0, .decimals = 0, .required = true,
     .doc = "Straight line from mark to mark. From a map or the course card."},
};
// clang-format on
LW_TABLE_COVERS(lw_wind, wind_rows);
LW_TABLE_COVERS(lw_forecast, forecast_rows);
LW_TABLE_COVERS(lw_sea, sea_rows);
LW_TABLE_COVERS(lw_water, water_rows);
LW_TABLE_COVERS(lw_air, air_rows);
LW_TABLE_COVERS(lw_cost, cost_rows);
LW_TABLE_COVERS(lw_leg, leg_rows);

const lw_table lw_wind_table = {
    "wind", "Wind", wind_rows, LW_ROW_COUNT(wind_rows),
    "Lulls and puffs as read where you sail. Give lull, mean and puff here, or readings, or a "
    "forecast: one of the three. With readings or a forecast, height, period and shift may stand "
    "here."};
static const lw_table forecast_table = {
    "forecast", "Forecast", forecast_rows, LW_ROW_COUNT(forecast_rows),
    "Instead of wind readings. Lulls and puffs then follow from the exposure."};
const lw_table lw_sea_table = {
    "sea", "Sea", sea_rows, LW_ROW_COUNT(sea_rows),
    "Chop decides how much of a foil tip's depth is left. Without this section: flat water."};
const lw_table lw_water_table = {"water", "Water", water_rows, LW_ROW_COUNT(water_rows),
                                 "What the foils run in."};
const lw_table lw_air_table = {"air", "Air", air_rows, LW_ROW_COUNT(air_rows),
                               "Cold air is heavier and pushes harder."};
static const lw_table cost_table = {"cost", "What time is worth", cost_rows,
                                    LW_ROW_COUNT(cost_rows),
                                    "Seconds that things cost on a course."};
static const lw_table reading_table = {
    "readings", "Readings", reading_rows, LW_ROW_COUNT(reading_rows),
    "Wind readings, evenly over some minutes: instead of lull, mean and puff."};
static const lw_table leg_table = {"legs", "Legs", leg_rows, LW_ROW_COUNT(leg_rows),
                                   "The course, mark to mark."};

#define PLAIN(member, of)                                                            \
    {                                                                                \
        .table = &(of), .kind = LW_SECTION_PLAIN, .offset = offsetof(lw_day, member) \
    }

// clang-format off
static const lw_section sections[] = {
    {.table = &lw_wind_table, .kind = LW_SECTION_PLAIN, .offset = offsetof(lw_day, wind),
     .count_offset = offsetof(lw_day, has_wind)},
    {.table = &reading_table, .kind = LW_SECTION_VALUES, .offset = offsetof(lw_day, readings),
     .stride = sizeof(double), .most = LW_READINGS_MOST,
     .count_offset = offsetof(lw_day, reading_count)},
    {.table = &forecast_table, .kind = LW_SECTION_PLAIN, .offset = offsetof(lw_day, forecast),
     .count_offset = offsetof(lw_day, has_forecast)},
    PLAIN(sea,   lw_sea_table),
    PLAIN(water, lw_water_table),
    PLAIN(air,   lw_air_table),
    {.table = &leg_table, .kind = LW_SECTION_LIST, .required = true,
     .offset = offsetof(lw_day, legs), .stride = sizeof(lw_leg), .most = LW_LEGS_MOST,
     .count_offset = offsetof(lw_day, leg_count)},
    PLAIN(cost,  cost_table),
};

static const char *const aims[] = {"race", "steady", "easy", NULL};
static const char *const exposures[] = {"in-land", "off-land", "off-sea", "at-sea", NULL};

static const lw_text texts[] = {
    {.key = "name", .offset = offsetof(lw_day, name), .preset = "Unnamed day",
     .doc = "Date, water, or whatever you will know the day by."},
    {.key = "aim", .offset = offsetof(lw_day, aim), .preset = "race", .words = aims,
     .doc = "race: least time. steady: least time with few swims. easy: the widest "
            "hold, even if she flies in the puffs only."},
    {.key = "exposure", .offset = offsetof(lw_day, exposure), .preset = "off-land",
     .words = exposures,
     .doc = "Where the wind comes from. in-land: among trees and houses. off-land: off the shore, "
            "as on a lake. off-sea: onshore. at-sea: 20 km of water to windward and more. "
            "[wmo-1555]"},
};
// clang-format on

const lw_record lw_day_record = {
    .name = "day",
    .title = "Day",
    .texts = texts,
    .text_count = LW_ROW_COUNT(texts),
    .sections = sections,
    .section_count = LW_ROW_COUNT(sections),
    .size = sizeof(lw_day),
    .doc =
        "One day: wind, sea, water, air and course. Every number has its unit behind it: 12 kn, "
        "6 m/s, 1.5 km, 20°."};
