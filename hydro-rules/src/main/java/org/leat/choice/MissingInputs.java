package org.leat.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.leat.check.AssumedValue;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.CommonMessages;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.choice.MissingInput.HowToLearn;
import org.leat.design.Design;
import org.leat.design.ElementPath;

/** Ranks the inputs that are not told by the questions that hang on them. */
final class MissingInputs {

    private static final Comparator<MissingInput> MOST_FIRST = Comparator.comparingLong(MissingInput::endangering)
            .thenComparingLong(i -> at(i, Level.ERROR))
            .thenComparingLong(i -> at(i, Level.WARNING))
            .thenComparingLong(i -> at(i, Level.NOTE))
            .reversed()
            .thenComparing(MissingInput::field);

    private static final Set<String> OUT_OF_RANGE = Set.of(CommonMessages.ABOVE_RANGE, CommonMessages.BELOW_RANGE);

    private MissingInputs() {}

    /**
     * {@return the inputs that are not told, what hangs most on them first} What fails, or is for a person, hangs on an assumption
     * where it would be another verdict at an end of its range.
     *
     * @param design that was judged
     */
    static List<MissingInput> of(Report report, Design design) {
        Map<String, List<Finding>> byField = new TreeMap<>();
        Set<String> beyond = new TreeSet<>();
        for (Finding question : report.worstFirst(Kind.OPEN)) {
            String missing = question.outcome().missing();
            if (missing != null) {
                add(byField, missing, question);
                if (OUT_OF_RANGE.contains(question.outcome().message().id()) && isTold(design, missing)) {
                    beyond.add(missing);
                }
            }
            for (SensitiveVerdict rests : question.restsOn()) {
                if (!rests.field().equals(missing)) {
                    add(byField, rests.field(), question);
                }
            }
        }
        for (Kind kind : List.of(Kind.FAIL, Kind.REVIEW)) {
            for (Finding verdict : report.worstFirst(kind)) {
                verdict.restsOn().stream()
                        .map(SensitiveVerdict::field)
                        .distinct()
                        .forEach(field -> add(byField, field, verdict));
            }
        }
        Set<String> assumed = report.assumptions().stream()
                .map(AssumedValue::assumption)
                .map(a -> a.path())
                .collect(Collectors.toSet());
        HowToLearn.Book book = HowToLearn.Book.shipped();
        List<MissingInput> inputs = new ArrayList<>();
        byField.forEach((field, settles) -> inputs.add(new MissingInput(
                field,
                settles,
                assumed.contains(field),
                beyond.contains(field) ? book.beyond(field) : book.of(field))));
        inputs.sort(MOST_FIRST);
        return List.copyOf(inputs);
    }

    /** {@return whether the design states a field: without it, it would be another, or none} */
    private static boolean isTold(Design design, String field) {
        if (field.equals(ElementPath.ROOT) || !(DesignEdits.find(design, field) instanceof DesignEdits.Place)) {
            return false;
        }
        try {
            return !DesignEdits.apply(design, List.of(new Edit(field, null))).equals(design);
        } catch (IllegalArgumentException none) {
            return true;
        }
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
