// published_track.h - functions that test/published/ names: lines on the ellipsoid.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_TRACK_H
#define LW_TEST_PUBLISHED_TRACK_H

#include <geodesic.h>

#include "records/track/geodesy.h"
#include "test/published_row.h"

// Latitude and longitude [deg] of one end and of the other.
static double geodesic_length(const double *a)
{
    return lw_geodesic(a[0], a[1], a[2], a[3]).metres;
}
static double degrees_around(double angle)
{
    return angle < 0.0 ? angle / LW_DEG + 360.0 : angle / LW_DEG;
}
static double geodesic_sets_out(const double *a)
{
    return degrees_around(lw_geodesic(a[0], a[1], a[2], a[3]).sets_out);
}
static double geodesic_arrives(const double *a)
{
    return degrees_around(lw_geodesic(a[0], a[1], a[2], a[3]).arrives);
}

// A place so far [m] along a bearing [deg]: the library's, on our ellipsoid.
static void geodesic_ahead(const double *a, double *latitude, double *longitude)
{
    struct geod_geodesic earth;
    geod_init(&earth, LW_EARTH_RADIUS, LW_EARTH_FLATTENING);
    geod_direct(&earth, a[0], a[1], a[2], a[3], latitude, longitude, NULL);
}
static double geodesic_ahead_latitude(const double *a)
{
    double latitude, longitude;
    geodesic_ahead(a, &latitude, &longitude);
    return latitude;
}
static double geodesic_ahead_longitude(const double *a)
{
    double latitude, longitude;
    geodesic_ahead(a, &latitude, &longitude);
    return longitude;
}

// clang-format off
#define PUBLISHED_TRACK                                             \
    {"geodesic_length",   "m",   4, geodesic_length},               \
    {"geodesic_sets_out", "deg", 4, geodesic_sets_out},             \
    {"geodesic_arrives",  "deg", 4, geodesic_arrives},              \
    {"geodesic_ahead_latitude",  "deg", 4, geodesic_ahead_latitude}, \
    {"geodesic_ahead_longitude", "deg", 4, geodesic_ahead_longitude}
// clang-format on

#endif
