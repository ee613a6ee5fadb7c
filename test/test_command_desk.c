// test_command_desk.c - claims about `lullwise desk`: what it says, when it ends and how.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "test/check.h"
#include "test/program.h"
#include "test/visit.h"

static char folder[] = "/tmp/lullwise-test-XXXXXX";

static int enter_folder(void **state)
{
    (void)state;
    unsetenv("DISPLAY");
    unsetenv("WAYLAND_DISPLAY");
    unsetenv("BROWSER");
    return mkdtemp(folder) && chdir(folder) == 0 ? 0 : -1;
}

static int leave_folder(void **state)
{
    (void)state;
    char line[100];
    snprintf(line, sizeof line, "rm -r '%s'", folder);
    return system(line);
}

// A listening socket on any free port, which is noted.
static int take_any_port(uint16_t *port)
{
    struct sockaddr_in place = {.sin_family = AF_INET, .sin_addr.s_addr = htonl(INADDR_LOOPBACK)};
    socklen_t length = sizeof place;
    const int fd = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    CHECK(fd >= 0 && bind(fd, (struct sockaddr *)&place, length) == 0 && listen(fd, 5) == 0);
    CHECK(getsockname(fd, (struct sockaddr *)&place, &length) == 0);
    *port = ntohs(place.sin_port);
    return fd;
}

static uint16_t free_port(void)
{
    uint16_t port;
    close(take_any_port(&port));
    return port;
}

// `lullwise desk --port PORT`, both its outputs in the file "said".
static running_desk start_program(uint16_t port)
{
    running_desk desk = {.port = port};
    char text[10];
    snprintf(text, sizeof text, "%u", (unsigned)port);
    fflush(NULL);
    desk.process = fork();
    if (desk.process == 0) {
        const int said = open("said", O_CREAT | O_TRUNC | O_WRONLY, 0600);
        dup2(said, 1);
        dup2(said, 2);
        execl(LW_PROGRAM, LW_PROGRAM, "desk", "--port", text, (char *)NULL);
        _exit(127);
    }
    for (int i = 0; i < 1000 && !is_alive(port); i++) usleep(10000);
    return desk;
}

static bool file_has(const char *path, const char *text)
{
    static char bytes[10000];
    FILE *file = fopen(path, "r");
    bytes[file ? fread(bytes, 1, sizeof bytes - 1, file) : 0] = '\0';
    if (file) fclose(file);
    return strstr(bytes, text) != NULL;
}

static bool answer_fits_80_columns(void)
{
    for (const char *line = answer; *line; line += strcspn(line, "\n") + 1) {
        if (strcspn(line, "\n") > 80) return false;
    }
    return true;
}

static int desk_with(const char *options)
{
    char words[200];
    snprintf(words, sizeof words, "desk %s", options);
    return lullwise(words);
}

static int desk_on(uint16_t port)
{
    char words[100];
    snprintf(words, sizeof words, "desk --port %u", (unsigned)port);
    return lullwise(words);
}

TEST_FUNCTION(it_says_where_the_page_is_and_ends_fine_on_a_signal)
{
    char address[100];
    const running_desk desk = start_program(free_port());
    snprintf(address, sizeof address, "The page is at http://127.0.0.1:%u/\n", (unsigned)desk.port);
    CHECK(is_alive(desk.port));
    CHECK(ends_well(desk.process, SIGINT));
    CHECK(file_has("said", address) && file_has("said", "The desk is closed."));
}

TEST_FUNCTION(without_a_display_it_asks_to_open_the_address)
{
    const running_desk desk = start_program(free_port());
    CHECK(ends_well(desk.process, SIGTERM));
    CHECK(file_has("said", "Open this address in a browser on this computer."));
}

TEST_FUNCTION(a_second_desk_says_that_one_is_running_and_where)
{
    char address[100];
    const running_desk desk = start_program(free_port());
    snprintf(address, sizeof address, "its page is at http://127.0.0.1:%u/\n", (unsigned)desk.port);
    CHECK(desk_on(desk.port) == 0 && answer_fits_80_columns());
    CHECK(answer_has("A desk is running already") && answer_has(address));
    CHECK(is_alive(desk.port) && ends_well(desk.process, SIGINT));
}

TEST_FUNCTION(a_port_that_something_silent_has_is_named_with_what_to_do)
{
    uint16_t port;
    char words[50];
    const int taken = take_any_port(&port);
    snprintf(words, sizeof words, "--port %u", port < 65535 ? port + 1U : LW_DESK_PORT);
    CHECK(desk_on(port) == 1 && answer_fits_80_columns());
    CHECK(answer_has("something else on this computer has the port") && answer_has(words));
    close(taken);
}

// A browser that writes down what it was asked to show.
static void make_browser(void)
{
    FILE *file = fopen("browser", "w");
    CHECK(file && fputs("#!/bin/sh\necho \"$1\" >shown.new\nmv shown.new shown\n", file) > 0);
    CHECK(fclose(file) == 0 && chmod("browser", 0700) == 0);
}

TEST_FUNCTION(with_a_display_it_opens_the_browser)
{
    char address[100], browser[100];
    make_browser();
    snprintf(browser, sizeof browser, "%s/browser:other", folder);
    setenv("DISPLAY", ":99", 1);
    setenv("BROWSER", browser, 1);
    const running_desk desk = start_program(free_port());
    snprintf(address, sizeof address, "http://127.0.0.1:%u/\n", (unsigned)desk.port);
    for (int i = 0; i < 1000 && access("shown", F_OK) != 0; i++) usleep(10000);
    unsetenv("DISPLAY");
    unsetenv("BROWSER");
    CHECK(file_has("shown", address));
    CHECK(ends_well(desk.process, SIGINT) && !file_has("said", "Open this address"));
}

TEST_FUNCTION(a_browser_that_is_not_there_stops_nothing)
{
    setenv("DISPLAY", ":99", 1);
    setenv("BROWSER", "/nowhere/browser", 1);
    const running_desk desk = start_program(free_port());
    unsetenv("DISPLAY");
    unsetenv("BROWSER");
    CHECK(is_alive(desk.port) && ends_well(desk.process, SIGINT));
    CHECK(file_has("said", "Open this address in a browser on this computer."));
}

TEST_FUNCTION(a_wrong_port_is_wrong_input)
{
    CHECK(desk_with("--port 80") == 2 && answer_has("1024 to 65535"));
    CHECK(desk_with("--port 70000") == 2 && answer_has("1024 to 65535"));
    CHECK(desk_with("--port 8247.5") == 2 && answer_has("whole number"));
    CHECK(desk_with("--port here") == 2 && answer_has("--port"));
    CHECK(desk_with("boat.yaml") == 2 && answer_has("one word too many"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(it_says_where_the_page_is_and_ends_fine_on_a_signal),
        TEST(without_a_display_it_asks_to_open_the_address),
        TEST(a_second_desk_says_that_one_is_running_and_where),
        TEST(a_port_that_something_silent_has_is_named_with_what_to_do),
        TEST(with_a_display_it_opens_the_browser),
        TEST(a_browser_that_is_not_there_stops_nothing),
        TEST(a_wrong_port_is_wrong_input),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
