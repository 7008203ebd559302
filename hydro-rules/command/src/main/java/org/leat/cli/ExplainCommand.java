package org.leat.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.file.Names;
import org.leat.report.RulePage;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat explain RULE}. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Prints what a rule judges, why and by what.")
final class ExplainCommand implements Callable<Integer> {

    @Parameters(paramLabel = "RULE", description = "A rule's id, as penstock/static-pressure.")
    private String rule = "";

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        Rulebook rulebook = options.checker().rulebook();
        String unknown = unknown(rulebook, rule);
        if (unknown != null) {
            throw new ParameterException(spec.commandLine(), unknown);
        }
        Map<String, String> examples = new LinkedHashMap<>();
        options.packs().forEach(pack -> examples.putAll(pack.examples()));
        spec.commandLine().getOut().print(RulePage.of(rulebook.rule(rule), examples.get(rule)));
        return ExitCode.NOTHING;
    }

    /** {@return what to say of a rule that nobody knows; null of one that is known} */
    static @Nullable String unknown(Rulebook rulebook, String rule) {
        if (rulebook.indexOf(rule) >= 0) {
            return null;
        }
        String nearest = Names.nearest(
                rule, rulebook.rules().stream().map(r -> r.card().id()).toList());
        return "no rule is called " + rule + (nearest.isEmpty() ? "" : "; nearest is " + nearest);
    }
}
