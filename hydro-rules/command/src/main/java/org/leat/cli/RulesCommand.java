package org.leat.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.leat.check.RuleInForce;
import org.leat.report.PlainText;
import org.leat.report.Wrapping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code leat rules}. */
@Command(
        name = "rules",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Lists the rules.")
final class RulesCommand implements Callable<Integer> {

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<RuleInForce> rules = options.checker().rulebook().rules();
        int widest = rules.stream().mapToInt(r -> r.card().id().length()).max().orElse(1);
        for (RuleInForce rule : rules) {
            out.print(Wrapping.text(
                    String.format(
                            Locale.ROOT,
                            "%-" + widest + "s  %-7s  %s\n",
                            rule.card().id(),
                            rule.level().word(),
                            PlainText.of(rule.card().title())),
                    Terminals.width()));
        }
        return ExitCode.NOTHING;
    }
}
