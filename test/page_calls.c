// page_calls.c - the page's calls of the engine (web/page.h), played natively from standard input.
// SPDX-License-Identifier: MIT
//
// A line for each call: "read RECORD LENGTH" and that many bytes behind it, the file's name, a zero
// and its text; "fly" and seven numbers; "ride" and eight; "choice". Prints each parcel's hash: the
// page's own calls, played in a browser, must hand over the very same bytes
// (web/test/bits.test.mjs).

#include <inttypes.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include "web/page.h"

static void print_hash(void)  // FNV-1a, 64 bits
{
    const unsigned char *bytes = (const unsigned char *)lw_web_parcel();
    uint64_t hash = UINT64_C(0xcbf29ce484222325);
    for (size_t i = 0; i < lw_web_parcel_length(); i++) {
        hash = (hash ^ bytes[i]) * UINT64_C(0x100000001b3);
    }
    printf("%016" PRIx64 "\n", hash);
}

static bool play_read(void)
{
    int record;
    size_t length;
    if (scanf("%d %zu", &record, &length) != 2 || getchar() != '\n') return false;
    if (fread(lw_web_room(length), 1, length, stdin) != length) return false;
    lw_web_read(0, record, length);
    return true;
}

// A question of so many numbers, then its call.
static bool play_asked(size_t count, void (*call)(int slot))
{
    double asked[8];
    for (size_t i = 0; i < count; i++) {
        if (scanf("%lf", &asked[i]) != 1) return false;
    }
    memcpy(lw_web_room(count * sizeof *asked), asked, count * sizeof *asked);
    call(0);
    return true;
}

static bool play_choice(void)
{
    memcpy(lw_web_room(sizeof "pick"), "pick", sizeof "pick");
    if (!lw_web_ask(0, sizeof "pick")) return true;
    for (int step = 0; step < lw_web_ask_steps(0); step++) lw_web_ask_step(0, step);
    lw_web_ask_tell(0);
    return true;
}

static bool play(const char *call)
{
    if (strcmp(call, "read") == 0) return play_read();
    if (strcmp(call, "fly") == 0) return play_asked(7, lw_web_fly);
    if (strcmp(call, "ride") == 0) return play_asked(8, lw_web_ride);
    return strcmp(call, "choice") == 0 && play_choice();
}

int main(void)
{
    char call[8];
    lw_web_tables();
    print_hash();
    while (scanf("%7s", call) == 1) {
        if (!play(call)) {
            fprintf(stderr, "page_calls: \"%s\" cannot be played\n", call);
            return 1;
        }
        print_hash();
    }
    return 0;
}
