// neighbour.c - who has a port: another desk, or something else?
// SPDX-License-Identifier: MIT

#include "desk/neighbour.h"

#include <event2/event.h>
#include <event2/http.h>
#include <stdio.h>
#include <string.h>

static void note_answer(struct evhttp_request *answer, void *is_desk)
{
    if (!answer) return;  // none came
    const char *server = evhttp_find_header(evhttp_request_get_input_headers(answer), "Server");
    *(bool *)is_desk = server && strcmp(server, LW_DESK_SERVER) == 0;
}

bool lw_neighbour_is_desk(uint16_t port)
{
    bool is_desk = false;
    char host[32];
    snprintf(host, sizeof host, "127.0.0.1:%u", (unsigned)port);
    struct event_base *base = event_base_new();
    struct evhttp_connection *connection =
        base ? evhttp_connection_base_new(base, NULL, "127.0.0.1", port) : NULL;
    struct evhttp_request *question = connection ? evhttp_request_new(note_answer, &is_desk) : NULL;
    if (question) {
        const struct timeval patience = {.tv_sec = 2};
        evhttp_add_header(evhttp_request_get_output_headers(question), "Host", host);
        event_base_loopexit(base, &patience);
        if (evhttp_make_request(connection, question, EVHTTP_REQ_HEAD, "/") == 0)
            event_base_dispatch(base);
    }
    if (connection) evhttp_connection_free(connection);
    if (base) event_base_free(base);
    return is_desk;
}
