// desk.c - `lullwise desk`: the page in a browser on this computer.
// SPDX-License-Identifier: MIT

#include "desk/desk.h"

#include <errno.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "command/command.h"
#include "command/terminal/print.h"
#include "command/today.h"
#include "desk/browser.h"
#include "records/logbook/logbook.h"

// The port given, or the usual one; 0 after a fault was said.
static uint16_t port_given(const lw_options *options)
{
    static lw_faults faults;
    double port = LW_DESK_PORT;
    lw_options_quantity(options, "port", &port, &faults);
    lw_print_faults(stderr, &faults);
    if (faults.count) return 0;
    if (port == floor(port)) return (uint16_t)port;
    lw_print_complaint("desk", "a port is a whole number, as in --port %d", LW_DESK_PORT + 1);
    return 0;
}

static void show(const lw_options *options, const char *address)
{
    if (!lw_options_has(options, "no-browser") && lw_browser_show(address)) return;
    puts("Open this address in a browser on this computer.");
}

static void say_open(const char *address)
{
    printf("The page is at %s\n", address);
    if (!lw_desk_has_page())
        puts("It only says that this lullwise was built before it: `make run` builds both.");
    puts("Opened once, it also works while the desk is closed. Ctrl-C closes the desk.");
}

static lw_exit say_why_not(lw_desk_outcome outcome, const lw_options *options, uint16_t port)
{
    char address[LW_DESK_ADDRESS_ROOM];
    lw_desk_address_of(port, address);
    if (outcome == LW_DESK_RUNS_ALREADY) {
        printf("A desk is running already; its page is at %s\n", address);
        show(options, address);
        return LW_EXIT_FINE;
    }
    if (outcome == LW_DESK_PORT_TAKEN)
        lw_print_complaint("desk",
                           "something else on this computer has the port %u. End it, or take "
                           "another port, and keep to it, since what the page keeps belongs to its "
                           "address: lullwise desk --port %u",
                           (unsigned)port, port < 65535 ? port + 1U : LW_DESK_PORT);
    else
        lw_print_complaint("desk", "%s cannot be opened: %s", address,
                           errno ? strerror(errno) : "there is not enough memory");
    return LW_EXIT_NO_ANSWER;
}

static lw_exit run(const lw_options *options)
{
    const uint16_t port = port_given(options);
    if (!port) return LW_EXIT_WRONG_INPUT;
    static char home[LW_LOGBOOK_PATH];
    const char *logbook = lw_options_text(options, "logbook");
    if (!logbook && lw_logbook_home(home)) logbook = home;
    const lw_desk_limits limits = {.port = port,
                                   .visitors = LW_DESK_VISITORS,
                                   .seconds = LW_DESK_SECONDS,
                                   .logbook = logbook,
                                   .today = lw_today};
    lw_desk_outcome outcome;
    lw_desk *desk = lw_desk_open(&limits, &outcome);
    if (!desk) return say_why_not(outcome, options, port);
    say_open(lw_desk_address(desk));
    show(options, lw_desk_address(desk));
    fflush(stdout);
    lw_desk_run(desk);
    lw_desk_close(desk);
    puts("\nThe desk is closed.");
    return LW_EXIT_FINE;
}

const lw_command lw_command_desk = {
    .name = "desk",
    .summary = "Open the page, with all this in it, in a browser on this computer.",
    .operands = "",
    .takes = "port no-browser logbook",
    .doc =
        "Serves the page to the browsers of this computer, to no other one, until Ctrl-C. What "
        "you enter there stays in the browser, but for logged days: they are those of the logbook. "
        "From this address the page can also be "
        "installed, and opens when the desk is closed.",
    .is_behind = true,
    .run = run,
};
