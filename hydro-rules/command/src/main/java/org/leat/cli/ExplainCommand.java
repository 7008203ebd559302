package org.leat.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.choice.MissingInput.HowToLearn;
import org.leat.file.Names;
import org.leat.report.Glossary;
import org.leat.report.PlainText;
import org.leat.report.RulePage;
import org.leat.report.Wrapping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat explain RULE}, or a word of a report, or a field of a design file. */
@Command(
        name = "explain",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Prints what a rule judges, why and by what; what a word of a report means; how to come by a field of a"
                        + " design file.")
final class ExplainCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "RULE|WORD|FIELD",
            arity = "1..*",
            description =
                    "A rule's id, as penstock/static-pressure; a word of a report, as air gap; a field of a design"
                            + " file, as alternator.speed-limit.")
    private List<String> asked = List.of();

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        Rulebook rulebook = options.checker().rulebook();
        String what = String.join(" ", asked);
        PrintWriter out = spec.commandLine().getOut();
        if (rulebook.indexOf(what) >= 0) {
            Map<String, String> examples = new LinkedHashMap<>();
            options.packs().forEach(pack -> examples.putAll(pack.examples()));
            out.print(Wrapping.page(RulePage.of(rulebook.rule(what), examples.get(what)), Terminals.width()));
            return ExitCode.NOTHING;
        }
        Glossary words = Glossary.shipped();
        String sentence = words.sentence(what);
        String how = HowToLearn.sentenceOf(what);
        if (sentence == null && how == null) {
            throw new ParameterException(spec.commandLine(), unknown(rulebook, words, what));
        }
        if (sentence != null) {
            out.print(Wrapping.text(PlainText.of(what) + ": " + sentence + ".\n", Terminals.width()));
        }
        if (how != null) {
            out.print(Wrapping.text(PlainText.of(what) + ", to tell it: " + how + ".\n", Terminals.width()));
        }
        return ExitCode.NOTHING;
    }

    private static String unknown(Rulebook rulebook, Glossary words, String what) {
        List<String> known = new ArrayList<>(words.all().keySet());
        rulebook.rules().forEach(r -> known.add(r.card().id()));
        String nearest = Names.nearest(what, known);
        return "no rule, word or field is called " + what + (nearest.isEmpty() ? "" : "; nearest is " + nearest);
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
