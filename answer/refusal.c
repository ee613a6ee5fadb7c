// refusal.c - why a question cannot be asked so.
// SPDX-License-Identifier: MIT

#include <stdarg.h>

#include "answer/question.h"

bool lw_refuse(lw_refusal *refusal, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(refusal->text, sizeof refusal->text, format, arguments);
    va_end(arguments);
    return false;
}
