// policy.c - the Content-Security-Policy of the page: what is written in it may run, nothing else.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE  // memmem

#include "desk/policy.h"

#include <nettle/base64.h>
#include <nettle/sha2.h>
#include <stdio.h>
#include <string.h>

// WebAssembly is the engine; workers are made from the page's own text (blob:), the service worker
// comes from the desk. No frame may hold the page, no form may leave it.
#define BEFORE                                                                          \
    "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; " \
    "connect-src 'self'; img-src 'self' data: blob:; manifest-src 'self'; "             \
    "worker-src 'self' blob:"

typedef struct text {
    const char *at, *end;
} text;

// Where `word` is next, or NULL.
static const char *next(text in, const char *word)
{
    return memmem(in.at, (size_t)(in.end - in.at), word, strlen(word));
}

// What stands between the next opening and closing tag of that name; `page` moves behind it.
static bool next_piece(text *page, const char *name, text *piece)
{
    char opening[16], closing[16];
    snprintf(opening, sizeof opening, "<%s", name);
    snprintf(closing, sizeof closing, "</%s", name);
    const char *tag = next(*page, opening);
    if (!tag) return false;
    piece->at = next((text){tag, page->end}, ">");
    if (!piece->at++) return false;
    piece->end = next((text){piece->at, page->end}, closing);
    if (!piece->end) return false;
    page->at = piece->end;
    return true;
}

static bool add(char policy[LW_POLICY_ROOM], const char *words)
{
    const size_t length = strlen(policy), more = strlen(words);
    if (length + more >= LW_POLICY_ROOM) return false;
    memcpy(policy + length, words, more + 1);
    return true;
}

static bool add_hash(char policy[LW_POLICY_ROOM], text piece)
{
    uint8_t digest[SHA256_DIGEST_SIZE];
    char words[16 + BASE64_ENCODE_RAW_LENGTH(SHA256_DIGEST_SIZE)] = " 'sha256-";
    struct sha256_ctx hash;
    sha256_init(&hash);
    sha256_update(&hash, (size_t)(piece.end - piece.at), (const uint8_t *)piece.at);
    sha256_digest(&hash, sizeof digest, digest);
    base64_encode_raw(words + strlen(words), sizeof digest, digest);
    return add(policy, words) && add(policy, "'");
}

static bool add_pieces(char policy[LW_POLICY_ROOM], text page, const char *name)
{
    text piece;
    while (next_piece(&page, name, &piece)) {
        if (!add_hash(policy, piece)) return false;
    }
    return true;
}

bool lw_policy_of(const char *page, size_t length, char policy[LW_POLICY_ROOM])
{
    const text whole = {page, page + length};
    policy[0] = '\0';
    return add(policy, BEFORE "; script-src 'wasm-unsafe-eval'") &&
           add_pieces(policy, whole, "script") && add(policy, "; style-src 'self'") &&
           add_pieces(policy, whole, "style");
}
