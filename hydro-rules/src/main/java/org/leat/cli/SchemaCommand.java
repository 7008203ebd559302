package org.leat.cli;

import java.util.concurrent.Callable;
import org.leat.file.DesignSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code leat schema}. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Prints the JSON Schema of design files.")
final class SchemaCommand implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(DesignSchema.json().stripTrailing() + "\n");
        return ExitCode.NOTHING;
    }
}
