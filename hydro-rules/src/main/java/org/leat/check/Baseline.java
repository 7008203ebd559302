package org.leat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apiguardian.api.API;

/**
 * Findings that were accepted once, by the name of the design and by what makes a finding the same: rule, element by
 * name, case. Neither file nor line nor the order of a list is part of it.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Baseline {

    /** How much worse a margin may be, as a share of the limit, and still be what was accepted. */
    public static final double LEEWAY = 0.01;

    /** What a log's rounding loses. */
    private static final double ROUNDING = 1e-6;

    private final Map<String, Map<Identity, Accepted>> byDesign = new TreeMap<>();
    private final Map<String, Map<Identity, Kind>> rest = new TreeMap<>();

    /**
     * One finding as it was.
     *
     * @param design what its design was called
     * @param identity see {@link Finding#stable()}
     * @param kind what had come of it
     * @param level how much it mattered
     * @param margin see {@link Finding#margin()}; empty where nothing was compared
     * @param text what was said
     * @param suppressed whether it did not count then by someone's word: then it was not accepted for itself
     */
    public record Accepted(
            String design,
            Identity identity,
            Kind kind,
            Level level,
            OptionalDouble margin,
            String text,
            boolean suppressed) {}

    private Baseline(List<Accepted> accepted) {
        for (Accepted one : accepted) {
            if (one.kind().needsAttention()) {
                byDesign.computeIfAbsent(one.design(), d -> new TreeMap<>())
                        .merge(one.identity(), one, (a, b) -> a.kind().compareTo(b.kind()) <= 0 ? a : b);
            } else {
                rest.computeIfAbsent(one.design(), d -> new TreeMap<>()).put(one.identity(), one.kind());
            }
        }
    }

    /** {@return a baseline of these} */
    public static Baseline of(List<Accepted> accepted) {
        return new Baseline(accepted);
    }

    /** {@return how many findings that need attention it holds} */
    public int size() {
        return byDesign.values().stream().mapToInt(Map::size).sum();
    }

    /** {@return how a finding of a design stands to this} */
    BaselineState state(String design, Finding finding) {
        if (!finding.outcome().kind().needsAttention()) {
            Kind then = rest.getOrDefault(design, Collections.emptyMap()).get(finding.stable());
            return then == finding.outcome().kind() ? BaselineState.UNCHANGED : BaselineState.NEW;
        }
        Accepted was = of(design).get(finding.stable());
        if (was == null || worse(was, finding) || (was.suppressed() && finding.suppressed() == null)) {
            return BaselineState.NEW;
        }
        Outcome now = finding.outcome();
        boolean same = was.kind() == now.kind() && was.level() == now.level() && !beyond(was, finding, ROUNDING);
        return same ? BaselineState.UNCHANGED : BaselineState.UPDATED;
    }

    private static boolean worse(Accepted was, Finding finding) {
        Outcome now = finding.outcome();
        boolean fails = now.kind() == Kind.FAIL && was.kind() == Kind.FAIL;
        return now.kind().compareTo(was.kind()) < 0
                || now.level().compareTo(was.level()) > 0
                || (fails && Tightness.of(finding).isBeyond(Tightness.of(was), LEEWAY));
    }

    private static boolean beyond(Accepted was, Finding finding, double leeway) {
        Tightness then = Tightness.of(was);
        Tightness now = Tightness.of(finding);
        return was.kind() == Kind.FAIL && (now.isBeyond(then, leeway) || then.isBeyond(now, leeway));
    }

    /** {@return what is known of a design and not among the findings} */
    List<AbsentFinding> absent(String design, List<Finding> findings) {
        Map<Identity, Accepted> left = new TreeMap<>(of(design));
        findings.stream().filter(f -> f.outcome().kind().needsAttention()).forEach(f -> left.remove(f.stable()));
        List<AbsentFinding> absent = new ArrayList<>();
        left.values().forEach(a -> absent.add(new AbsentFinding(a.identity(), a.kind(), a.level(), a.text())));
        return absent;
    }

    private Map<Identity, Accepted> of(String design) {
        return byDesign.getOrDefault(design, Collections.emptyMap());
    }

    /**
     * What a baseline knows of a design and is found no more.
     *
     * @param identity rule, element and case
     * @param kind what had come of it
     * @param level how much it mattered
     * @param text what was said then
     */
    public record AbsentFinding(Identity identity, Kind kind, Level level, String text) {}

    /** How a finding stands to the baseline, in the words of SARIF 2.1.0 §3.27.24. */
    public enum BaselineState {
        /** not in the baseline, or worse than there. */
        NEW("new"),
        /** in the baseline, the same. */
        UNCHANGED("unchanged"),
        /** in the baseline, told differently there but no better. */
        UPDATED("updated"),
        /** in the baseline only. */
        ABSENT("absent");

        private final String word;

        BaselineState(String word) {
            this.word = word;
        }

        /** {@return SARIF's word} */
        public String word() {
            return word;
        }
    }
}
