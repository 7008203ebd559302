package org.leat.cli;

import java.util.concurrent.Callable;
import org.leat.file.DesignSchema;
import org.leat.settings.SettingsFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code leat schema}. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Prints the JSON Schema of design files, or of settings files.")
final class SchemaCommand implements Callable<Integer> {

    @Option(names = "--of-settings", description = "Of settings files.")
    private boolean ofSettings;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .print((ofSettings ? SettingsFiles.schema() : DesignSchema.json()).stripTrailing() + "\n");
        return ExitCode.NOTHING;
    }
}
