// demo.h - the demo boat, her lighter sailor and day, read and prepared.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_DEMO_H
#define LW_TEST_DEMO_H

#include "lullwise/polar.h"
#include "records/record_file.h"
#include "test/check.h"

static struct {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
    lw_sections sections;
} demo;

static void read_or_stop(const lw_record *record, const char *path, void *data)
{
    lw_faults faults = {0};
    if (!lw_record_read_file(record, path, data, &faults)) fail_msg("%s does not read", path);
    lw_faults_free(&faults);
}

// Once in a program.
static void read_demo(void)
{
    static lw_polar_room room;
    if (demo.boat.pin_count > 0) return;
    read_or_stop(&lw_boat_record, LW_DEMO_DIR "/heron.yaml", &demo.boat);
    read_or_stop(&lw_sailor_record, LW_DEMO_DIR "/light.yaml", &demo.sailor);
    read_or_stop(&lw_day_record, LW_DEMO_DIR "/breeze.yaml", &demo.day);
    lw_sections_prepare(&demo.sections, &demo.boat, &room);
}

#endif
