package org.leat.report.mending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Dangers;
import org.leat.check.Failures;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.file.DesignEdit;
import org.leat.file.Reading;
import org.leat.report.FileChange;

/**
 * Carries ways out into the text of a design file. Takes the worst failure first; of its ways out that change one value
 * in the file, the one that wins most power at the battery or loses least, without a number taken as none, among equals
 * the first that the rule names. The changed text is read and judged again before the next: a change stays only if its
 * failure is gone, nothing more fails as badly, in no case more than before, and nothing that can hurt is worse. All
 * changes together are judged once more against the text as it was. No value is changed twice; what a thing is marked or
 * measured to be, and what is on hand already, is never changed.
 */
public final class Mending {

    private static final int MOST = 50;

    private static final Comparator<WayOut> BEST_FIRST =
            Comparator.comparingDouble((WayOut way) -> -way.gain().orElse(0));

    private final Checker checker;
    private final Reader reader;
    private final Level from;
    private final Set<String> rules;
    private final Set<String> changed = new HashSet<>();
    private final List<Mended.Step> steps = new ArrayList<>();
    private final Map<Identity, Mended.Why> refused = new LinkedHashMap<>();

    /** Reads a text as the design file that it is to become. */
    @FunctionalInterface
    public interface Reader {
        /** {@return what the text says} */
        Reading read(String text);
    }

    private Mending(Checker checker, Reader reader, Level from, Set<String> rules) {
        this.checker = checker;
        this.reader = reader;
        this.from = from;
        this.rules = rules;
    }

    /**
     * {@return what comes of mending a design file's text}
     *
     * @param text without byte order mark
     * @param reader reads such texts
     * @param from the least level of a failure to be mended
     * @param rules whose failures are to be mended; empty for every rule's
     */
    public static Mended of(Checker checker, String text, Reader reader, Level from, Set<String> rules) {
        return new Mending(checker, reader, from, Set.copyOf(rules)).run(text);
    }

    private Mended run(String text) {
        Reading reading = reader.read(text);
        Report before = checker.check(reading);
        Report report = before;
        while (steps.size() < MOST) {
            Tried next = next(reading, report);
            if (next == null) {
                break;
            }
            reading = next.reading();
            report = next.report();
        }
        // each step is no worse than the one before by more than nobody sees; all of them together must not be either
        boolean together = Dangers.worse(before, report).isPresent();
        if (together) {
            steps.clear();
            report = before;
            reading = reader.read(text);
        }
        List<Mended.Left> left = new ArrayList<>();
        for (Finding finding : report.worstFirst(Kind.FAIL)) {
            if (asked(finding)) {
                Mended.Why why = refused.get(finding.outcome().identity());
                Mended.Why untried = together ? Mended.Why.WORSE_TOGETHER : Mended.Why.TOO_MANY_CHANGES;
                left.add(new Mended.Left(finding, why == null ? untried : why));
            }
        }
        return new Mended(before, report, reading.text(), steps, left);
    }

    private boolean asked(Finding finding) {
        return finding.failsAt(from)
                && (rules.isEmpty() || rules.contains(finding.outcome().rule()));
    }

    private record Tried(Reading reading, Report report) {}

    private @Nullable Tried next(Reading reading, Report report) {
        for (Finding finding : report.worstFirst(Kind.FAIL)) {
            Identity identity = finding.outcome().identity();
            if (asked(finding) && !refused.containsKey(identity)) {
                Mended.Why why = finding.waysOut().isEmpty() ? Mended.Why.NO_WAY_OUT : Mended.Why.ADVICE_ONLY;
                for (WayOut way : finding.waysOut().stream().sorted(BEST_FIRST).toList()) {
                    Mended.Why not = hindrance(way, reading);
                    Tried tried = not == null ? tried(finding, way, reading, report) : null;
                    if (tried != null) {
                        return tried;
                    }
                    Mended.Why reason = not == null ? Mended.Why.BRINGS_ANOTHER : not;
                    why = reason.compareTo(why) > 0 ? reason : why;
                }
                refused.put(identity, why);
            }
        }
        return null;
    }

    private Mended.@Nullable Why hindrance(WayOut way, Reading reading) {
        if (way.edits().isEmpty()) {
            return Mended.Why.ADVICE_ONLY;
        }
        if (FileChange.statesFact(way, reading)) {
            return Mended.Why.FACT;
        }
        if (!way.onHand().isEmpty()) {
            return Mended.Why.ON_HAND;
        }
        if (way.edits().size() > 1) {
            return Mended.Why.SEVERAL_VALUES;
        }
        if (FileChange.of(way, reading).isEmpty()) {
            boolean list = way.edits().get(0).value() instanceof List<?>
                    && reading.positions().exactly(way.edits().get(0).path()) != null;
            return list ? Mended.Why.LIST : Mended.Why.NOT_IN_PLACE;
        }
        return changed.contains(way.edits().get(0).path()) ? Mended.Why.CHANGED_ALREADY : null;
    }

    private @Nullable Tried tried(Finding finding, WayOut way, Reading reading, Report report) {
        DesignEdit edit = FileChange.of(way, reading).orElseThrow().get(0);
        Reading after = reader.read(DesignEdit.apply(reading.text(), List.of(edit)));
        Report judged = checker.check(after);
        Level level = finding.outcome().level();
        boolean gone = judged.findings().stream()
                .filter(f -> f.outcome().identity().equals(finding.outcome().identity()))
                .allMatch(f -> f.outcome().kind() == Kind.PASS);
        boolean worse = failures(judged).worseThan(failures(report), level).isPresent()
                || Dangers.worse(report, judged).isPresent();
        if (!judged.readable() || judged.broke() || !gone || worse) {
            return null;
        }
        changed.add(way.edits().get(0).path());
        steps.add(new Mended.Step(finding, way, edit, line(reading, edit), line(after, edit)));
        return new Tried(after, judged);
    }

    private static Failures failures(Report report) {
        return Failures.of(report.findings().stream().map(Finding::outcome).toList());
    }

    private static String line(Reading reading, DesignEdit edit) {
        return reading.text().split("\r\n|\r|\n", -1)[edit.position().line() - 1];
    }
}
