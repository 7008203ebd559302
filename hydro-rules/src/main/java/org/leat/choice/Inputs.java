package org.leat.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.leat.check.AssumedValue;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.SensitiveVerdict;

/** Ranks the inputs that are not told by the questions that hang on them. */
final class Inputs {

    private static final Comparator<MissingInput> MOST_FIRST = Comparator.comparingLong(MissingInput::endangering)
            .thenComparingLong(i -> at(i, Level.ERROR))
            .thenComparingLong(i -> at(i, Level.WARNING))
            .thenComparingLong(i -> at(i, Level.NOTE))
            .reversed()
            .thenComparing(MissingInput::field);

    private Inputs() {}

    static List<MissingInput> of(Report report) {
        Map<String, List<Finding>> byField = new TreeMap<>();
        for (Finding question : report.worstFirst(Kind.OPEN)) {
            String missing = question.outcome().missing();
            if (missing != null) {
                add(byField, missing, question);
            }
            for (SensitiveVerdict rests : question.restsOn()) {
                if (!rests.field().equals(missing)) {
                    add(byField, rests.field(), question);
                }
            }
        }
        Set<String> assumed = report.assumptions().stream()
                .map(AssumedValue::assumption)
                .map(a -> a.path())
                .collect(Collectors.toSet());
        HowToLearn.Book book = HowToLearn.Book.shipped();
        List<MissingInput> inputs = new ArrayList<>();
        byField.forEach((field, settles) ->
                inputs.add(new MissingInput(field, settles, assumed.contains(field), book.of(field))));
        inputs.sort(MOST_FIRST);
        return List.copyOf(inputs);
    }

    private static void add(Map<String, List<Finding>> byField, String field, Finding question) {
        byField.computeIfAbsent(field, f -> new ArrayList<>()).add(question);
    }

    private static long at(MissingInput input, Level level) {
        return input.settles().stream()
                .filter(f -> f.outcome().level() == level)
                .count();
    }
}
