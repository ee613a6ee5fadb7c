// message.c - messages by MPI that nobody waits for.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "ranks/message.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

// On its way.
typedef struct sent {
    struct sent *next;
    MPI_Request request;
    char bytes[];
} sent;

static sent *on_the_way;

bool lw_message_next(lw_message *message)
{
    MPI_Status status;
    int is_there = 0, length;
    const int looked = MPI_Iprobe(MPI_ANY_SOURCE, MPI_ANY_TAG, MPI_COMM_WORLD, &is_there, &status);
    if (looked != MPI_SUCCESS || !is_there) return false;
    MPI_Get_count(&status, MPI_BYTE, &length);
    if ((size_t)length + 1 > message->room) {
        char *more = realloc(message->bytes, (size_t)length + 1);
        if (!more) return false;
        message->bytes = more, message->room = (size_t)length + 1;
    }
    message->from = status.MPI_SOURCE;
    message->tag = (lw_tag)status.MPI_TAG;
    message->length = (size_t)length;
    message->bytes[length] = '\0';
    return MPI_Recv(message->bytes, length, MPI_BYTE, status.MPI_SOURCE, status.MPI_TAG,
                    MPI_COMM_WORLD, MPI_STATUS_IGNORE) == MPI_SUCCESS;
}

bool lw_message_send(int to, lw_tag tag, const void *bytes, size_t length)
{
    if (length > INT_MAX) return false;
    sent *one = malloc(sizeof *one + length);
    if (!one) return false;
    if (length) memcpy(one->bytes, bytes, length);
    if (MPI_Isend(one->bytes, (int)length, MPI_BYTE, to, (int)tag, MPI_COMM_WORLD, &one->request) !=
        MPI_SUCCESS) {
        free(one);
        // NOLINTNEXTLINE(clang-analyzer-optin.mpi.MPI-Checker): nothing was sent
        return false;
    }
    one->next = on_the_way;
    on_the_way = one;
    return true;
}

void lw_message_settle(bool gives_up)
{
    for (sent **at = &on_the_way; *at;) {
        sent *one = *at;
        int has_arrived = 0;
        const int tested = MPI_Test(&one->request, &has_arrived, MPI_STATUS_IGNORE);
        if (!has_arrived && tested == MPI_SUCCESS && gives_up) MPI_Request_free(&one->request);
        if (!has_arrived && tested == MPI_SUCCESS && !gives_up) {
            at = &one->next;
            continue;
        }
        *at = one->next;
        if (has_arrived || tested != MPI_SUCCESS) free(one);
    }
}

bool lw_message_all_sent(void) { return on_the_way == NULL; }

double lw_message_clock(void) { return MPI_Wtime(); }

void lw_message_pause(void)
{
    const struct timespec while_waiting = {.tv_nsec = 1000000};
    nanosleep(&while_waiting, NULL);
}
