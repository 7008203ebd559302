package org.leat.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option {@code --format} of a command that writes for people or for a program. */
final class TextOrJson {

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            converter = OptionWords.OfFormat.class,
            description = "What is written; text if not said.")
    private Format format = Format.TEXT;

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    /** {@return whether JSON is asked for} Any other format than these two is a wrong call. */
    boolean json() {
        if (format != Format.TEXT && format != Format.JSON && command != null) {
            throw new ParameterException(command.commandLine(), command.name() + " writes text or json");
        }
        return format == Format.JSON;
    }
}
