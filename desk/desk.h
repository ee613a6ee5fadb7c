// desk.h - a web server for this computer only, which serves the page and the page's other parts.
// SPDX-License-Identifier: MIT
//
// It listens on the loopback address, so no other computer reaches it, and answers only requests
// that name its own address: a page of somebody else's, open in the same browser, gets nothing.

#ifndef LW_DESK_H
#define LW_DESK_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

// What a browser keeps belongs to the address with its port: another port is another, empty page.
// So the port stays the same from day to day, and a taken one is not quietly exchanged.
#define LW_DESK_PORT 8247  // without --port; in nobody's list of common ports [judged]

#define LW_DESK_ADDRESS_ROOM 32  // "http://127.0.0.1:65535/"

// A browser opens half a dozen connections and is served in milliseconds.
#define LW_DESK_VISITORS 200  // connections at a time; one more, and the oldest is closed [judged]
#define LW_DESK_SECONDS \
    20.0  // [s] from a connection's first sign to its end at the latest [judged]

typedef struct lw_desk_limits {
    uint16_t port;               // 0: any that is free
    size_t visitors;             // connections at a time
    double seconds;              // [s] a connection's life at most
    const char *logbook;         // its path, which must outlive the desk; NULL: none
    const char *(*today)(void);  // the date here as in 2030-05-17; NULL: not known
} lw_desk_limits;

typedef enum lw_desk_outcome {
    LW_DESK_OPENED,
    LW_DESK_RUNS_ALREADY,  // another desk has the port
    LW_DESK_PORT_TAKEN,    // something else has it
    LW_DESK_NOT_OPENED,    // errno tells why
} lw_desk_outcome;

typedef struct lw_desk lw_desk;

// From here on the address answers, once lw_desk_run is called, and the signals interrupt,
// terminate and hang-up end the run instead of the program. NULL unless the outcome is
// LW_DESK_OPENED.
lw_desk *lw_desk_open(const lw_desk_limits *limits, lw_desk_outcome *outcome);

// Where a desk on a port is: "http://127.0.0.1:8247/".
void lw_desk_address_of(uint16_t port, char address[LW_DESK_ADDRESS_ROOM]);
const char *lw_desk_address(const lw_desk *desk);

void lw_desk_run(lw_desk *desk);  // until one of the signals comes
void lw_desk_close(lw_desk *desk);

// False when the program was built before the page: a page that says so stands in for it.
bool lw_desk_has_page(void);

#endif
