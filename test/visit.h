// visit.h - a desk in a process of its own, and raw sockets to it.
// SPDX-License-Identifier: MIT
//
// Define _GNU_SOURCE before the first include. Everything is on the loopback address, and every
// wait has an end.

#ifndef LW_TEST_VISIT_H
#define LW_TEST_VISIT_H

#include <arpa/inet.h>
#include <errno.h>
#include <signal.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include "desk/desk.h"

typedef struct running_desk {
    pid_t process;
    uint16_t port;
} running_desk;

// A desk on any free port, with a logbook. It ends by a signal; its exit status is 0 when it closed
// as it should.
static inline running_desk start_desk_with(const char *logbook, size_t visitors, double seconds)
{
    running_desk desk = {0};
    int ends[2];
    fflush(NULL);
    if (pipe(ends) != 0 || (desk.process = fork()) < 0) return desk;
    if (desk.process == 0) {
        const lw_desk_limits limits = {
            .visitors = visitors, .seconds = seconds, .logbook = logbook};
        lw_desk_outcome outcome;
        lw_desk *opened = lw_desk_open(&limits, &outcome);
        const char *colon = opened ? strrchr(lw_desk_address(opened), ':') : NULL;
        const uint16_t port = colon ? (uint16_t)atoi(colon + 1) : 0;
        if (write(ends[1], &port, sizeof port) != sizeof port || !opened) exit(1);
        alarm(120);  // should the test die first
        lw_desk_run(opened);
        lw_desk_close(opened);
        exit(0);
    }
    close(ends[1]);
    if (read(ends[0], &desk.port, sizeof desk.port) != sizeof desk.port) desk.port = 0;
    close(ends[0]);
    return desk;
}

static inline running_desk start_desk(size_t visitors, double seconds)
{
    return start_desk_with(NULL, visitors, seconds);
}

// True when the process ended by itself, and well.
static inline bool ends_well(pid_t process, int by_signal)
{
    int status = -1;
    if (process <= 0 || kill(process, by_signal) != 0) return false;
    return waitpid(process, &status, 0) == process && WIFEXITED(status) && !WEXITSTATUS(status);
}

// A connection on which no single wait is longer than a minute; -1: none.
static inline int connect_to(uint16_t port)
{
    const struct timeval patience = {.tv_sec = 60};
    const struct sockaddr_in place = {
        .sin_family = AF_INET, .sin_port = htons(port), .sin_addr.s_addr = htonl(INADDR_LOOPBACK)};
    const int fd = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (fd < 0) return -1;
    setsockopt(fd, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    setsockopt(fd, SOL_SOCKET, SO_SNDTIMEO, &patience, sizeof patience);
    if (connect(fd, (const struct sockaddr *)&place, sizeof place) == 0) return fd;
    close(fd);
    return -1;
}

static inline bool say(int fd, const char *bytes, size_t length)
{
    while (length) {
        const ssize_t sent = send(fd, bytes, length, MSG_NOSIGNAL);
        if (sent <= 0) return false;
        bytes += sent, length -= (size_t)sent;
    }
    return true;
}

static char heard[2000000];  // of the last answer
static size_t heard_length;

// Everything up to the end of the connection, which is closed. False when the end does not come.
static inline bool hear(int fd)
{
    ssize_t got = -1;
    heard_length = 0;
    while (heard_length < sizeof heard - 1 &&
           (got = recv(fd, heard + heard_length, sizeof heard - 1 - heard_length, 0)) > 0) {
        heard_length += (size_t)got;
    }
    heard[heard_length] = '\0';
    close(fd);
    return got == 0;
}

// Says a whole request and hears the answer: its status, 0 when none came or it did not end.
static inline int status_of(uint16_t port, const char *request)
{
    int status = 0;
    const int fd = connect_to(port);
    heard[0] = '\0';
    if (fd < 0) return 0;
    say(fd, request, strlen(request));
    if (!hear(fd) && errno != ECONNRESET) return 0;
    return sscanf(heard, "HTTP/1.1 %d", &status) == 1 ? status : 0;
}

// A usual request for a target, with more header lines ("A: b\r\n").
static inline int status_at(uint16_t port, const char *method, const char *target, const char *more)
{
    char request[4000];
    snprintf(request, sizeof request, "%s %s HTTP/1.1\r\nHost: 127.0.0.1:%u\r\n%s\r\n", method,
             target, (unsigned)port, more);
    return status_of(port, request);
}

static inline bool heard_has(const char *text) { return strstr(heard, text) != NULL; }

// What stands behind the headers.
static inline const char *heard_body(void)
{
    const char *end = strstr(heard, "\r\n\r\n");
    return end ? end + 4 : heard + heard_length;
}

static inline bool is_alive(uint16_t port) { return status_at(port, "GET", "/", "") == 200; }

#endif
