package org.leat.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.leat.report.SettingsInForce;
import org.leat.report.Wrapping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code leat settings}. */
@Command(
        name = "settings",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Prints the settings in force, each with the file and line it came from.")
final class SettingsCommand implements Callable<Integer> {

    @Option(names = "--all", description = "Also what the rules say themselves and no file changes.")
    private boolean all;

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        SettingsInForce.lines(
                        options.checker().rulebook(), options.settings(), options.settingsNames(), options.more(), all)
                .forEach(line -> out.print(Wrapping.text(line, Terminals.width()) + "\n"));
        return ExitCode.NOTHING;
    }
}
