// test_desk.c - claims about the desk: what it serves, to whom, and what does not bring it down.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE

#include <errno.h>
#include <sys/resource.h>

#include "desk/part.h"
#include "desk/policy.h"
#include "test/check.h"
#include "test/visit.h"

static running_desk desk;

static int open_desk(void **state)
{
    (void)state;
    desk = start_desk(LW_DESK_VISITORS, LW_DESK_SECONDS);
    return desk.port ? 0 : -1;
}

static int close_desk(void **state)
{
    (void)state;
    return ends_well(desk.process, SIGTERM) ? 0 : -1;
}

static bool is_told_safely(void)
{
    return heard_has("\r\nContent-Security-Policy: default-src 'none'; ") &&
           heard_has("frame-ancestors 'none'") && !heard_has("unsafe-inline") &&
           !heard_has("'unsafe-eval'") && heard_has("\r\nX-Content-Type-Options: nosniff\r\n") &&
           heard_has("\r\nX-Frame-Options: DENY\r\n") &&
           heard_has("\r\nReferrer-Policy: no-referrer\r\n") &&
           heard_has("\r\nCross-Origin-Opener-Policy: same-origin\r\n") &&
           heard_has("\r\nCross-Origin-Resource-Policy: same-origin\r\n");
}

// --- what it serves

TEST_FUNCTION(every_part_is_served_whole_and_with_every_safe_header)
{
    for (const lw_part *part = lw_parts; part->path; part++) {
        char type[100];
        snprintf(type, sizeof type, "\r\nContent-Type: %s\r\n", part->type);
        CHECK(status_at(desk.port, "GET", part->path, "") == 200);
        CHECK(heard_has(type) && is_told_safely());
        const size_t length = (size_t)(part->end - part->bytes);
        CHECK(length > 0 && length == (size_t)(heard + heard_length - heard_body()));
        CHECK(memcmp(heard_body(), part->bytes, length) == 0);
    }
}

TEST_FUNCTION(what_stands_behind_the_question_mark_is_the_page_own)
{
    CHECK(status_at(desk.port, "GET", "/?wind=12&at=/../x", "") == 200);
    CHECK(memcmp(heard_body(), lw_parts->bytes, (size_t)(lw_parts->end - lw_parts->bytes)) == 0);
}

TEST_FUNCTION(a_head_is_told_of_the_page_without_it)
{
    CHECK(status_at(desk.port, "HEAD", "/", "") == 200);
    CHECK(is_told_safely() && heard_body()[0] == '\0');
}

// --- to whom

TEST_FUNCTION(a_host_of_another_name_is_refused)
{
    static const char *const hosts[] = {"Host: evil.example\r\n",
                                        "Host: evil.example:%u\r\n",
                                        "Host: 127.0.0.1\r\n",
                                        "Host: 127.0.0.1:%u0\r\n",
                                        "Host: 127.0.0.1:%u.\r\n",
                                        "Host: 127.0.0.1.evil:%u\r\n",
                                        "Host: user@127.0.0.1:%u\r\n",
                                        "Host: 127.0.0.2:%u\r\n",
                                        "Host: [::1]:%u\r\n",
                                        "Host: 2130706433:%u\r\n",
                                        "Host: \r\n",
                                        "Host: localhost\r\n"};
    for (size_t i = 0; i < sizeof hosts / sizeof hosts[0]; i++) {
        char host[200], request[300];
        snprintf(host, sizeof host, hosts[i], (unsigned)desk.port);
        snprintf(request, sizeof request, "GET / HTTP/1.1\r\n%s\r\n", host);
        CHECK(status_of(desk.port, request) == 403 && is_told_safely());
        CHECK(heard_has("The desk answers under its own address only."));
    }
}

TEST_FUNCTION(a_request_names_one_host_exactly)
{
    CHECK(status_of(desk.port, "GET / HTTP/1.1\r\n\r\n") == 400);
    CHECK(status_at(desk.port, "GET", "/", "Host: evil.example\r\n") == 400);
}

TEST_FUNCTION(another_origin_is_refused_and_the_own_one_is_not)
{
    char own[100];
    snprintf(own, sizeof own, "Origin: http://127.0.0.1:%u\r\n", (unsigned)desk.port);
    CHECK(status_at(desk.port, "GET", "/", own) == 200);
    static const char *const origins[] = {"Origin: http://evil.example\r\n", "Origin: null\r\n",
                                          "Origin: http://127.0.0.1\r\n",
                                          "Origin: http://127.0.0.1:1\r\n", "Origin: \r\n"};
    for (size_t i = 0; i < sizeof origins / sizeof origins[0]; i++) {
        CHECK(status_at(desk.port, "GET", "/", origins[i]) == 403);
        CHECK(heard_has("The desk answers its own page only."));
    }
    strcat(own, "Origin: http://evil.example\r\n");
    CHECK(status_at(desk.port, "GET", "/", own) == 400);
}

TEST_FUNCTION(localhost_leads_to_the_one_address)
{
    char request[200], location[200];
    snprintf(request, sizeof request, "GET /?a=b HTTP/1.1\r\nHost: LocalHost:%u\r\n\r\n",
             (unsigned)desk.port);
    snprintf(location, sizeof location, "\r\nLocation: http://127.0.0.1:%u/?a=b\r\n",
             (unsigned)desk.port);
    CHECK(status_of(desk.port, request) == 307 && heard_has(location));
}

TEST_FUNCTION(nothing_but_reading_is_answered)
{
    static const char *const methods[] = {"PUT",   "DELETE", "OPTIONS", "TRACE",
                                          "PATCH", "POST",   "BREW"};
    for (size_t i = 0; i < sizeof methods / sizeof methods[0]; i++) {
        CHECK(status_at(desk.port, methods[i], "/", "Content-Length: 0\r\n") == 405);
        CHECK(heard_has("\r\nAllow: GET, HEAD\r\n"));
    }
}

TEST_FUNCTION(no_path_leads_beyond_the_parts)
{
    static const char *const targets[] = {"/../etc/passwd",
                                          "/..%2f..%2fetc/passwd",
                                          "/%2e%2e/%2e%2e/etc/passwd",
                                          "//etc/passwd",
                                          "/./",
                                          "//",
                                          "/icon.svg/",
                                          "/icon.svg/..",
                                          "/ICON.SVG",
                                          "/icon.svg%00",
                                          "/icon%2esvg",
                                          "/icon.svg;a",
                                          "/icon.svg#a",
                                          "/\\..\\..\\etc\\passwd",
                                          "/index.html",
                                          "/.git/config",
                                          "/desk.c",
                                          "icon.svg",
                                          "*",
                                          "http://evil.example/",
                                          "file:///etc/passwd"};
    for (size_t i = 0; i < sizeof targets / sizeof targets[0]; i++) {
        const int status = status_at(desk.port, "GET", targets[i], "");
        if (status != 404 && status != 400) print_error("%s: %d\n", targets[i], status);
        CHECK(status == 404 || status == 400);
        CHECK(!heard_has("root:") && !heard_has("<svg"));
    }
}

// --- what does not bring it down

// A request with `count` header lines of `length` letters each.
static bool is_refused_and_survived(size_t count, size_t length)
{
    const int fd = connect_to(desk.port);
    char *line = calloc(1, length + 20);
    CHECK(fd >= 0 && line != NULL);
    bool is_said = say(fd, "GET / HTTP/1.1\r\n", 16);
    memcpy(line, "X: ", 3);
    memset(line + 3, 'a', length);
    memcpy(line + 3 + length, "\r\n", 2);
    for (size_t i = 0; i < count && is_said; i++) is_said = say(fd, line, length + 5);
    free(line);
    hear(fd);
    return !heard_has("200 OK") && is_alive(desk.port);
}

TEST_FUNCTION(huge_headers_are_refused)
{
    CHECK(is_refused_and_survived(1, 10000));
    CHECK(is_refused_and_survived(1, 5000000));
    CHECK(is_refused_and_survived(5000, 10));
    CHECK(is_refused_and_survived(200, 5000));
}

TEST_FUNCTION(a_huge_target_is_refused)
{
    const size_t length = 100000;
    char *request = calloc(1, length + 20);
    CHECK(request != NULL);
    memcpy(request, "GET /", 5);
    memset(request + 5, 'a', length);
    memcpy(request + 5 + length, " HTTP/1.1\r\n\r\n", 13);
    status_of(desk.port, request);
    free(request);
    CHECK(!heard_has("200 OK") && is_alive(desk.port));
}

TEST_FUNCTION(a_body_is_refused)
{
    CHECK(status_at(desk.port, "POST", "/", "Content-Length: 1000000000\r\n") >= 400);
    CHECK(status_at(desk.port, "POST", "/", "Content-Length: -1\r\n") != 200);
    CHECK(status_at(desk.port, "POST", "/", "Transfer-Encoding: chunked\r\n\r\nfffffff\r\n") !=
          200);
    CHECK(is_alive(desk.port));
}

TEST_FUNCTION(broken_requests_do_not_bring_it_down)
{
    static const char letters[] = "GET / HTTP/1.1\r\n\r\nHost: :\t\0\xff%?";
    random_stream stream = {5};
    for (int i = 0; i < 300 * soak_times(); i++) {
        char request[300] = "GET / HTTP/1.1\r\n";
        const size_t begin = i % 2 ? 0 : 16;  // every other one is well begun
        const size_t end = begin + 1 + random_bits(&stream) % (sizeof request - begin - 1);
        for (size_t k = begin; k < end; k++) {
            request[k] = letters[random_bits(&stream) % (sizeof letters - 1)];
        }
        const int fd = connect_to(desk.port);
        CHECK(fd >= 0);
        say(fd, request, end);
        shutdown(fd, SHUT_WR);
        CHECK(hear(fd) || errno == ECONNRESET);
        CHECK(!heard_has("200 OK"));
    }
    CHECK(is_alive(desk.port));
}

static void close_all(const int *fds, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (fds[i] >= 0) close(fds[i]);
    }
}

TEST_FUNCTION(a_thousand_silent_connections_keep_nobody_out)
{
    enum { COUNT = 1000 };
    static int fds[COUNT];
    struct rlimit limit;
    CHECK(getrlimit(RLIMIT_NOFILE, &limit) == 0 && limit.rlim_max > COUNT + 50);
    limit.rlim_cur = limit.rlim_max < 4000 ? limit.rlim_max : 4000;
    CHECK(setrlimit(RLIMIT_NOFILE, &limit) == 0);
    for (size_t i = 0; i < COUNT; i++) CHECK((fds[i] = connect_to(desk.port)) >= 0);
    CHECK(is_alive(desk.port));
    for (size_t i = 0; i < COUNT; i++) say(fds[i], "GET / HTTP/1.1\r\n", 16);
    CHECK(is_alive(desk.port));
    close_all(fds, COUNT);
    CHECK(is_alive(desk.port));
}

TEST_FUNCTION(a_thousand_requests_are_all_served)
{
    for (size_t i = 0; i < 1000; i++) CHECK(status_at(desk.port, "GET", "/icon.svg", "") == 200);
}

// --- slow clients, who have half a second here

static int open_hasty_desk(void **state)
{
    (void)state;
    desk = start_desk(10, 0.5);
    return desk.port ? 0 : -1;
}

TEST_FUNCTION(who_says_nothing_is_shut_out)
{
    const int fd = connect_to(desk.port);
    CHECK(fd >= 0 && hear(fd) && heard_length == 0 && is_alive(desk.port));
}

TEST_FUNCTION(who_stops_in_the_middle_is_shut_out)
{
    const int fd = connect_to(desk.port);
    CHECK(fd >= 0 && say(fd, "GET / HTTP/1.1\r\nHost: 127", 25));
    hear(fd);
    CHECK(!heard_has("200 OK") && is_alive(desk.port));
}

// The library's own timeout, which every byte begins anew, would let this one stay for ever.
TEST_FUNCTION(who_sends_a_byte_now_and_then_is_shut_out)
{
    static const char drop[] = "X";
    const int fd = connect_to(desk.port);
    bool is_open = fd >= 0 && say(fd, "GET / HTTP/1.1\r\n", 16);
    CHECK(is_open);
    for (size_t i = 0; i < 100 && is_open; i++) {
        usleep(100000);
        is_open = say(fd, drop, 1);
    }
    close(fd);
    CHECK(!is_open && is_alive(desk.port));
}

// The library keeps a connection after CONNECT, as for a tunnel: its life ends all the same.
TEST_FUNCTION(who_asks_for_a_tunnel_is_refused_and_shut_out)
{
    CHECK(status_at(desk.port, "CONNECT", "evil.example:443", "") == 405 && is_alive(desk.port));
}

// --- its end

TEST_FUNCTION(each_ending_signal_ends_it_well_with_connections_open)
{
    static const int signals[] = {SIGINT, SIGTERM, SIGHUP};
    for (size_t i = 0; i < 3; i++) {
        const running_desk other = start_desk(10, 20.0);
        int fds[12];
        CHECK(other.port != 0 && is_alive(other.port));
        for (size_t k = 0; k < 12; k++) fds[k] = connect_to(other.port);
        say(fds[11], "GET / HT", 8);
        CHECK(is_alive(other.port));
        CHECK(ends_well(other.process, signals[i]));
        close_all(fds, 12);
    }
}

// --- its policy

static const char *policy_of(const char *page)
{
    static char policy[LW_POLICY_ROOM];
    return lw_policy_of(page, strlen(page), policy) ? policy : NULL;
}

// The script and its hash are the example of the standard. [csp3]
TEST_FUNCTION(a_script_in_the_page_is_named_by_its_hash)
{
    const char *policy = policy_of("<p><script type=\"module\">alert('Hello, world.');</script>");
    CHECK(policy && strstr(policy,
                           "script-src 'wasm-unsafe-eval' "
                           "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='; "
                           "style-src 'self'"));
}

TEST_FUNCTION(a_script_is_not_named_as_a_style)
{
    const char *policy = policy_of("<style>alert('Hello, world.');</style><script></script>");
    CHECK(policy && strstr(policy, "style-src 'self' 'sha256-qznL"));
}

TEST_FUNCTION(an_open_script_is_not_named)
{
    const char *policy = policy_of("<script>alert('Hello, world.');");
    CHECK(policy && !strstr(policy, "sha256"));
}

TEST_FUNCTION(a_policy_without_room_is_none)
{
    char page[100 * 18 + 1] = "";
    for (size_t i = 0; i < 100; i++) strcat(page, "<script></script >");
    CHECK(policy_of(page) == NULL);
}

int main(void)
{
    const struct CMUnitTest usual[] = {
        TEST(every_part_is_served_whole_and_with_every_safe_header),
        TEST(what_stands_behind_the_question_mark_is_the_page_own),
        TEST(a_head_is_told_of_the_page_without_it),
        TEST(a_host_of_another_name_is_refused),
        TEST(a_request_names_one_host_exactly),
        TEST(another_origin_is_refused_and_the_own_one_is_not),
        TEST(localhost_leads_to_the_one_address),
        TEST(nothing_but_reading_is_answered),
        TEST(no_path_leads_beyond_the_parts),
        TEST(huge_headers_are_refused),
        TEST(a_huge_target_is_refused),
        TEST(a_body_is_refused),
        TEST(broken_requests_do_not_bring_it_down),
        TEST(a_thousand_silent_connections_keep_nobody_out),
        TEST(a_thousand_requests_are_all_served),
        TEST(each_ending_signal_ends_it_well_with_connections_open),
        TEST(a_script_in_the_page_is_named_by_its_hash),
        TEST(a_script_is_not_named_as_a_style),
        TEST(an_open_script_is_not_named),
        TEST(a_policy_without_room_is_none),
    };
    const struct CMUnitTest slow[] = {
        TEST(who_says_nothing_is_shut_out),
        TEST(who_stops_in_the_middle_is_shut_out),
        TEST(who_sends_a_byte_now_and_then_is_shut_out),
        TEST(who_asks_for_a_tunnel_is_refused_and_shut_out),
    };
    const int failed = cmocka_run_group_tests(usual, open_desk, close_desk);
    return failed + cmocka_run_group_tests(slow, open_hasty_desk, close_desk);
}
