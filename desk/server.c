// server.c - the desk: listens, asks the guard, and hands out the parts.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE  // types that the library's headers take for granted

#include <arpa/inet.h>
#include <errno.h>
#include <event2/buffer.h>
#include <event2/event.h>
#include <event2/http.h>
#include <event2/keyvalq_struct.h>
#include <event2/listener.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>
#include <sys/resource.h>

#include "desk/days.h"
#include "desk/desk.h"
#include "desk/guard.h"
#include "desk/neighbour.h"
#include "desk/part.h"
#include "desk/policy.h"
#include "desk/tracks.h"
#include "desk/visitor.h"

#define HEADERS_MOST 8192  // [bytes] the page's state may stand in the address
#define BACKLOG      128   // connections not yet accepted

static const int endings[] = {SIGINT, SIGTERM, SIGHUP};
#define ENDING_COUNT (sizeof endings / sizeof endings[0])

struct lw_desk {
    uint16_t port;
    const char *logbook;
    const char *(*today)(void);
    char address[LW_DESK_ADDRESS_ROOM];
    char policy[LW_POLICY_ROOM];
    struct event_base *base;
    struct evhttp *http;
    struct event *ends[ENDING_COUNT];
    lw_visitors visitors;
};

static const char *const headers[][2] = {
    {"Server", LW_DESK_SERVER},
    {"Connection", "close"},
    {"Cache-Control", "no-cache"},
    {"X-Content-Type-Options", "nosniff"},
    {"X-Frame-Options", "DENY"},
    {"Referrer-Policy", "no-referrer"},
    {"Cross-Origin-Opener-Policy", "same-origin"},
    {"Cross-Origin-Embedder-Policy", "require-corp"},
    {"Cross-Origin-Resource-Policy", "same-origin"},
    {"Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"},
};

// How often a header was given, and its first value.
static size_t header_count(const struct evkeyvalq *given, const char *name, const char **value)
{
    size_t count = 0;
    *value = NULL;
    for (const struct evkeyval *row = given->tqh_first; row; row = row->next.tqe_next) {
        if (strcasecmp(row->key, name) != 0) continue;
        if (count++ == 0) *value = row->value;
    }
    return count;
}

static lw_asked asked_by(const lw_desk *desk, struct evhttp_request *request)
{
    const struct evkeyvalq *given = evhttp_request_get_input_headers(request);
    const enum evhttp_cmd_type method = evhttp_request_get_command(request);
    lw_asked asked = {.is_reading = method == EVHTTP_REQ_GET || method == EVHTTP_REQ_HEAD,
                      .is_keeping = method == EVHTTP_REQ_POST,
                      .is_removing = method == EVHTTP_REQ_DELETE,
                      .has_logbook = desk->logbook != NULL,
                      .target = evhttp_request_get_uri(request)};
    asked.host_count = header_count(given, "Host", &asked.host);
    asked.origin_count = header_count(given, "Origin", &asked.origin);
    return asked;
}

static void add_headers(const lw_desk *desk, struct evhttp_request *request,
                        const lw_verdict *verdict, const char *type)
{
    struct evkeyvalq *out = evhttp_request_get_output_headers(request);
    for (size_t i = 0; i < sizeof headers / sizeof headers[0]; i++) {
        evhttp_add_header(out, headers[i][0], headers[i][1]);
    }
    evhttp_add_header(out, "Content-Security-Policy", desk->policy);
    evhttp_add_header(out, "Content-Type", type);
    if (verdict->status == 405) evhttp_add_header(out, "Allow", "GET, HEAD");
    if (verdict->status == 307) {
        char location[HEADERS_MOST + LW_DESK_ADDRESS_ROOM];
        snprintf(location, sizeof location, "%s%s", desk->address,
                 evhttp_request_get_uri(request) + 1);  // both have the "/"
        evhttp_add_header(out, "Location", location);
    }
}

// The answer's bytes, which stay where they are until `free_it` is called, if any. The library
// would send them after a HEAD, too, which is told their length only.
static void fill(struct evhttp_request *request, const char *bytes, size_t length,
                 evbuffer_ref_cleanup_cb free_it)
{
    char count[24];
    snprintf(count, sizeof count, "%zu", length);
    evhttp_add_header(evhttp_request_get_output_headers(request), "Content-Length", count);
    struct evbuffer *body = evhttp_request_get_output_buffer(request);
    const bool is_head = evhttp_request_get_command(request) == EVHTTP_REQ_HEAD;
    if (is_head || evbuffer_add_reference(body, bytes, length, free_it, NULL) != 0)
        if (free_it) free_it(bytes, length, NULL);
}

static void free_text(const void *text, size_t length, void *given)
{
    (void)length, (void)given;
    free((void *)text);
}

#define WORDS "text/plain; charset=utf-8"

// A request's body, closed by a zero; to be freed. NULL: no memory.
static char *body_of(struct evhttp_request *request, size_t *length)
{
    struct evbuffer *input = evhttp_request_get_input_buffer(request);
    *length = evbuffer_get_length(input);
    char *body = calloc(1, *length + 1);
    if (body) evbuffer_copyout(input, body, *length);
    return body;
}

static const char *today_of(const lw_desk *desk) { return desk->today ? desk->today() : NULL; }

static lw_days_answer days_asked(const lw_desk *desk, struct evhttp_request *request,
                                 const char *id)
{
    const bool keeps = evhttp_request_get_command(request) == EVHTTP_REQ_POST;
    lw_days_asked asked = {.path = desk->logbook, .today = today_of(desk), .id = id};
    char *body = keeps ? body_of(request, &asked.length) : NULL;
    lw_days_answer answer = {.status = 500};
    asked.body = body;
    if (body || !keeps) answer = lw_days_answered(&asked);
    free(body);
    return answer;
}

static void reply_with_days(const lw_desk *desk, struct evhttp_request *request,
                            const lw_verdict *verdict)
{
    const lw_days_answer answer = days_asked(desk, request, verdict->id);
    add_headers(desk, request, verdict, answer.is_json ? "application/json" : WORDS);
    if (answer.text) fill(request, answer.text, strlen(answer.text), free_text);
    evhttp_send_reply(request, answer.status, NULL, NULL);
}

static void reply_with_track(const lw_desk *desk, struct evhttp_request *request,
                             const lw_verdict *verdict)
{
    lw_track_asked asked = {.query = evhttp_request_get_uri(request) + strlen(LW_TRACK_AT),
                            .today = today_of(desk)};
    char *body = body_of(request, &asked.length);
    lw_track_answer answer = {.status = 500};
    asked.body = body;
    if (body) answer = lw_track_answered(&asked);
    add_headers(desk, request, verdict, answer.status == 200 ? "application/octet-stream" : WORDS);
    if (answer.bytes) fill(request, answer.bytes, answer.length, free_text);
    evhttp_send_reply(request, answer.status, NULL, NULL);
    free(body);
}

static void reply(struct evhttp_request *request, void *given)
{
    const lw_desk *desk = given;
    const lw_asked asked = asked_by(desk, request);
    const lw_verdict verdict = lw_guard_verdict(&asked, desk->port);
    if (verdict.is_of_days) {
        reply_with_days(desk, request, &verdict);
        return;
    }
    if (verdict.is_of_track) {
        reply_with_track(desk, request, &verdict);
        return;
    }
    const bool is_part = verdict.status == 200;
    const char *bytes = is_part ? verdict.part->bytes : verdict.why;
    const size_t length = is_part ? (size_t)(verdict.part->end - bytes) : strlen(bytes);
    add_headers(desk, request, &verdict, is_part ? verdict.part->type : WORDS);
    fill(request, bytes, length, NULL);
    evhttp_send_reply(request, verdict.status, NULL, NULL);
}

static struct bufferevent *visit(struct event_base *base, void *desk)
{
    return lw_visitors_add(&((lw_desk *)desk)->visitors, base);
}

static void end_run(evutil_socket_t fd, short what, void *base)
{
    (void)fd, (void)what;
    event_base_loopbreak(base);
}

static void keep_quiet(int severity, const char *text)
{
    (void)severity, (void)text;  // about single connections, which nobody at the desk can mend
}

// Room for the connections, those not yet accepted, and what is open anyway.
static void raise_file_limit(size_t visitors)
{
    struct rlimit limit;
    const rlim_t wanted = visitors + (rlim_t)4 * BACKLOG;
    if (getrlimit(RLIMIT_NOFILE, &limit) != 0 || limit.rlim_cur >= wanted) return;
    limit.rlim_cur = wanted < limit.rlim_max ? wanted : limit.rlim_max;
    setrlimit(RLIMIT_NOFILE, &limit);
}

// On the loopback address; NULL with errno when it cannot.
static struct evconnlistener *listener_on(struct event_base *base, uint16_t *port)
{
    struct sockaddr_in place = {
        .sin_family = AF_INET, .sin_port = htons(*port), .sin_addr.s_addr = htonl(INADDR_LOOPBACK)};
    socklen_t length = sizeof place;
    struct evconnlistener *listener = evconnlistener_new_bind(
        base, NULL, NULL, LEV_OPT_REUSEABLE | LEV_OPT_CLOSE_ON_FREE | LEV_OPT_CLOSE_ON_EXEC,
        BACKLOG, (struct sockaddr *)&place, sizeof place);
    if (listener &&
        getsockname(evconnlistener_get_fd(listener), (struct sockaddr *)&place, &length) == 0)
        *port = ntohs(place.sin_port);
    return listener;
}

static bool prepare(lw_desk *desk, const lw_desk_limits *limits)
{
    desk->port = limits->port, desk->logbook = limits->logbook, desk->today = limits->today;
    desk->base = event_base_new();
    desk->http = desk->base ? evhttp_new(desk->base) : NULL;
    if (!desk->http) return false;
    struct evconnlistener *listener = listener_on(desk->base, &desk->port);
    if (!listener) return false;
    if (!evhttp_bind_listener(desk->http, listener)) {
        evconnlistener_free(listener);
        return false;
    }
    lw_desk_address_of(desk->port, desk->address);
    evhttp_set_timeout(desk->http, (int)limits->seconds + 1);
    evhttp_set_max_headers_size(desk->http, HEADERS_MOST);
    evhttp_set_max_body_size(desk->http, LW_TRACK_BYTES_MOST);
    evhttp_set_allowed_methods(desk->http, 0xffff);  // the guard refuses them in words
    evhttp_set_bevcb(desk->http, visit, desk);
    evhttp_set_gencb(desk->http, reply, desk);
    for (size_t i = 0; i < ENDING_COUNT; i++) {
        desk->ends[i] = evsignal_new(desk->base, endings[i], end_run, desk->base);
        if (!desk->ends[i] || event_add(desk->ends[i], NULL) != 0) return false;
    }
    return lw_policy_of(lw_parts->bytes, (size_t)(lw_parts->end - lw_parts->bytes), desk->policy);
}

lw_desk *lw_desk_open(const lw_desk_limits *limits, lw_desk_outcome *outcome)
{
    event_set_log_callback(keep_quiet);
    signal(SIGPIPE, SIG_IGN);
    raise_file_limit(limits->visitors);
    *outcome = LW_DESK_NOT_OPENED;
    lw_desk *desk = calloc(1, sizeof *desk);
    if (!desk) return NULL;
    lw_visitors_begin(&desk->visitors, limits->visitors, limits->seconds);
    errno = 0;
    if (prepare(desk, limits)) {
        *outcome = LW_DESK_OPENED;
        return desk;
    }
    const int why = errno;
    lw_desk_close(desk);
    if (why == EADDRINUSE)
        *outcome = lw_neighbour_is_desk(limits->port) ? LW_DESK_RUNS_ALREADY : LW_DESK_PORT_TAKEN;
    errno = why;
    return NULL;
}

void lw_desk_address_of(uint16_t port, char address[LW_DESK_ADDRESS_ROOM])
{
    snprintf(address, LW_DESK_ADDRESS_ROOM, "http://127.0.0.1:%u/", (unsigned)port);
}

const char *lw_desk_address(const lw_desk *desk) { return desk->address; }

void lw_desk_run(lw_desk *desk) { event_base_dispatch(desk->base); }

void lw_desk_close(lw_desk *desk)
{
    if (desk->http) evhttp_free(desk->http);
    lw_visitors_end(&desk->visitors);
    for (size_t i = 0; i < ENDING_COUNT; i++) {
        if (desk->ends[i]) event_free(desk->ends[i]);
    }
    if (desk->base) event_base_free(desk->base);
    free(desk);
}
