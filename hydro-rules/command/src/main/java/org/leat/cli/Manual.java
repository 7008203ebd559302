package org.leat.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Writes manual pages and the shell's completion from the command itself, so that neither can say what the command does not.
 * Used by the build only.
 */
public final class Manual {

    private static final int WIDTH = 78;

    private Manual() {}

    /** Writes {@code man/man1/*.1} and {@code bash-completion/completions/leat} below the folder that is named. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        CommandLine command = Leat.command();
        command.setUsageHelpWidth(WIDTH);
        Path pages = Files.createDirectories(folder.resolve("man").resolve("man1"));
        Files.writeString(pages.resolve("leat.1"), page(command));
        for (Map.Entry<String, CommandLine> sub : command.getSubcommands().entrySet()) {
            Files.writeString(pages.resolve("leat-" + sub.getKey() + ".1"), page(sub.getValue()));
        }
        Path completion =
                Files.createDirectories(folder.resolve("bash-completion").resolve("completions"));
        Files.writeString(completion.resolve("leat"), completion(command), StandardCharsets.UTF_8);
    }

    /** Words of options as they are written, and files wherever there is no word: most arguments are files. */
    private static String completion(CommandLine command) {
        return AutoComplete.bash("leat", command)
                .lines()
                .filter(line -> !line.strip().equals("type compopt &>/dev/null && compopt +o default"))
                .map(line -> {
                    int words = line.indexOf("_option_args=(");
                    return words < 0
                            ? line
                            : line.substring(0, words) + line.substring(words).toLowerCase(Locale.ROOT);
                })
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** {@return the manual page of a command, in the language of man(7)} */
    static String page(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        Help help = command.getHelp();
        StringBuilder page = new StringBuilder();
        String name = spec.qualifiedName("-");
        page.append(".TH \"").append(name.toUpperCase(Locale.ROOT)).append("\" \"1\" \"\" \"leat\" \"\"\n");
        section(
                page,
                "NAME",
                List.of(name + " - " + lines(spec.usageMessage().description()).replace('\n', ' ')));
        page.append(".SH SYNOPSIS\n.nf\n");
        text(page, help.synopsis(0).stripTrailing());
        page.append(".fi\n");
        if (!spec.positionalParameters().isEmpty()) {
            page.append(".SH ARGUMENTS\n");
            for (PositionalParamSpec argument : spec.positionalParameters()) {
                if (!argument.hidden()) {
                    entry(page, argument.paramLabel(), argument);
                }
            }
        }
        page.append(".SH OPTIONS\n");
        for (OptionSpec option : spec.options()) {
            if (!option.hidden()) {
                String label = String.join(", ", option.names());
                entry(page, option.arity().max() > 0 ? label + " " + option.paramLabel() : label, option);
            }
        }
        if (!command.getSubcommands().isEmpty()) {
            page.append(".SH COMMANDS\n");
            command.getSubcommands().forEach((word, sub) -> {
                page.append(".TP\n.B ").append(escaped(word)).append('\n');
                text(page, lines(sub.getCommandSpec().usageMessage().description()));
            });
        }
        String[] footer = spec.usageMessage().footer();
        if (footer.length > 0) {
            section(page, "NOTES", List.of(footer));
        }
        return page.toString();
    }

    private static void entry(StringBuilder page, String label, ArgSpec of) {
        page.append(".TP\n.B ").append(escaped(label)).append('\n');
        text(page, lines(of.description()));
    }

    private static void section(StringBuilder page, String title, List<String> lines) {
        page.append(".SH ").append(title).append('\n');
        text(page, String.join("\n", lines));
    }

    /** Text as picocli would show it, without its marks. */
    private static String lines(String... text) {
        return Ansi.OFF.string(String.join("\n", text).replace("%n", "\n").replace("%%", "%"));
    }

    private static void text(StringBuilder page, String text) {
        text.lines()
                .forEach(line -> page.append(line.isBlank() ? ".PP" : escaped(line.strip()))
                        .append('\n'));
    }

    private static String escaped(String line) {
        String safe = line.replace("\\", "\\e").replace("-", "\\-");
        return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
    }
}
