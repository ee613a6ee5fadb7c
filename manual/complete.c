// complete.c - what a shell completes after `lullwise`.
// SPDX-License-Identifier: MIT

#include "manual/complete.h"

#include "answer/options.h"
#include "command/commands.h"
#include "manual/takes.h"

// The first sentence of a help, without what a shell would take for its own.
static void write_help(FILE *out, const char *text)
{
    for (; *text && !(text[0] == '.' && (text[1] == ' ' || !text[1])); text++) {
        if (!strchr("'\"[]`$\\:", *text)) fputc(*text, out);
    }
}

static void write_commands(FILE *out)
{
    lw_command command;
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (!command.is_hidden) fprintf(out, " %s", command.name);
    }
}

static void write_options(FILE *out, const char *takes)
{
    const lw_option *option;
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        if (lw_takes(takes, option->name)) fprintf(out, " --%s", option->name);
    }
}

void lw_complete_bash(FILE *out)
{
    lw_command command;
    fputs(
        "# Completion of lullwise for bash; written by the build.\n"
        "_lullwise()\n{\n    local words\n    COMPREPLY=()\n"
        "    case \"${COMP_WORDS[1]}\" in\n",
        out);
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (command.is_hidden) continue;
        fprintf(out, "        %s) words=\"--help", command.name);
        write_options(out, command.takes);
        fputs("\" ;;\n", out);
    }
    fputs(
        "        *) words=\"--help --version\" ;;\n    esac\n"
        "    [ \"$COMP_CWORD\" -gt 1 ] || words=\"--help --version",
        out);
    write_commands(out);
    fputs(
        "\"\n    case \"${COMP_WORDS[COMP_CWORD]}\" in\n"
        "        -*) mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$2\") ;;\n"
        "        *) [ \"$COMP_CWORD\" -gt 1 ] || mapfile -t COMPREPLY < <(compgen -W \"$words\" -- "
        "\"$2\") ;;\n"
        "    esac\n}\ncomplete -o default -F _lullwise lullwise\n",
        out);
}

static void write_zsh_option(FILE *out, const lw_option *option)
{
    fprintf(out, " \\\n            '*--%s[", option->name);
    write_help(out, option->help);
    fputs("]", out);
    if (option->argument)
        fprintf(out, ":%s:%s", option->argument, strstr(option->argument, "FILE") ? "_files" : "");
    fputc('\'', out);
}

void lw_complete_zsh(FILE *out)
{
    lw_command command;
    const lw_option *option;
    fputs(
        "#compdef lullwise\n# Completion of lullwise for zsh; written by the build.\n"
        "if (( CURRENT == 2 )); then\n    compadd -- --help --version",
        out);
    write_commands(out);
    fputs(
        "\n    return\nfi\nlocal command=$words[2]\nshift words\n(( CURRENT-- ))\ncase $command "
        "in\n",
        out);
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (command.is_hidden) continue;
        fprintf(out, "    %s)\n        _arguments '--help[Show this help]'", command.name);
        for (size_t k = 0; (option = lw_option_at(k)); k++) {
            if (lw_takes(command.takes, option->name)) write_zsh_option(out, option);
        }
        fputs(" \\\n            '*:file:_files' ;;\n", out);
    }
    fputs("esac\n", out);
}

static void write_fish_option(FILE *out, const char *command, const lw_option *option)
{
    fprintf(out, "complete -c lullwise -n '__fish_seen_subcommand_from %s' -l %s", command,
            option->name);
    if (option->argument) fputs(strstr(option->argument, "FILE") ? " -r -F" : " -x", out);
    fputs(" -d '", out);
    write_help(out, option->help);
    fputs("'\n", out);
}

void lw_complete_fish(FILE *out)
{
    lw_command command;
    const lw_option *option;
    fputs("# Completion of lullwise for fish; written by the build.\n", out);
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (command.is_hidden) continue;
        fprintf(out, "complete -c lullwise -n __fish_use_subcommand -f -a %s -d '", command.name);
        write_help(out, command.summary);
        fputs("'\n", out);
        for (size_t k = 0; (option = lw_option_at(k)); k++) {
            if (lw_takes(command.takes, option->name)) write_fish_option(out, command.name, option);
        }
    }
}
