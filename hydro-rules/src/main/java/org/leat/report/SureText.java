package org.leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.design.ElementPath;
import org.leat.sure.Sureness;
import org.leat.sure.Sureness.Basis;
import org.leat.sure.Sureness.OfVerdict;

/** How sure verdicts are, for a person. A probability is said with where it comes from, and never in place of a verdict. */
final class SureText {

    /** Nothing was asked. */
    static final SureText NONE = new SureText();

    private static final int MOST = 5;
    private static final double UNLIKELY = 0.1;
    private static final double HAPPENED_IN_NONE = 3;

    private final @Nullable Report report;
    private final @Nullable Sureness sureness;

    private final @Nullable Rulebook rulebook;

    private SureText() {
        report = null;
        sureness = null;
        rulebook = null;
    }

    SureText(Report report, Sureness sureness, Rulebook rulebook) {
        this.report = report;
        this.sureness = sureness;
        this.rulebook = rulebook;
    }

    /** {@return how sure all of it is, in a few sentences; empty where it was not asked} */
    String head() {
        if (sureness == null || report == null) {
            return "";
        }
        if (sureness.inputs().isEmpty() || sureness.verdicts().isEmpty()) {
            return "Not told: "
                    + (sureness.verdicts().isEmpty() ? "nothing was compared." : "nothing has a tolerance.");
        }
        long near = count(Basis.SAMPLED);
        String rest = sureness.inputs().size()
                + (sureness.inputs().size() == 1 ? " input varies" : " inputs vary")
                + " within what is told or assumed, all else is taken as exact; of "
                + sureness.verdicts().size()
                + " verdicts with a limit " + count(Basis.UNMOVED) + " do not move, " + count(Basis.FIRST_ORDER)
                + " stay 3 standard uncertainties from their limits, " + near
                + (near == 1 ? " is" : " are") + " nearer.";
        if (sureness.anyError().isEmpty()) {
            return "No compared value comes near its limit. " + capital(rest);
        }
        double errors = sureness.anyError().getAsDouble();
        String doubt = sureness.doubtful() > 0
                ? ", " + percent(sureness.doubtful()) + " more where safety could not all be judged"
                : "";
        String asFar = report.count(Kind.OPEN) > 0 ? ", as far as it was judged" : "";
        String word = errors == 1
                ? "An error stands whatever varies"
                : report.failures(Level.ERROR) > 0
                        ? "An error stands in " + percent(errors) + " of " + sureness.points() + " plants" + doubt
                        : capital(said(errors, sureness.doubtful())) + " in " + sureness.points()
                                + " plants, errors alone counted" + asFar;
        return word + ". " + capital(rest);
    }

    private long count(Basis basis) {
        return sureness == null
                ? 0
                : sureness.verdicts().stream().filter(v -> v.basis() == basis).count();
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** {@return the verdicts that were sampled, those that may turn first} */
    List<String> lines(boolean all) {
        if (sureness == null) {
            return List.of();
        }
        List<OfVerdict> sampled = sureness.verdicts().stream()
                .filter(v -> v.basis() == Basis.SAMPLED && v.failing().isPresent())
                .filter(v -> all || mayTurn(v))
                .sorted(Comparator.comparing(
                                (OfVerdict v) -> v.finding().outcome().level())
                        .reversed()
                        .thenComparing(v -> Math.abs(v.failing().orElse(0) - 0.5))
                        .thenComparing(OfVerdict::identity))
                .toList();
        int shown = all ? sampled.size() : Math.min(MOST, sampled.size());
        List<String> lines = new ArrayList<>();
        for (OfVerdict verdict : sampled.subList(0, shown)) {
            lines.add(PlainText.of(line(verdict)));
        }
        if (shown < sampled.size()) {
            lines.add(sampled.size() - shown + " more: --whole");
        }
        return lines;
    }

    private static boolean mayTurn(OfVerdict v) {
        double failing = v.failing().orElse(0);
        return v.undecided() > 0 || (failing > 0 && failing < 1);
    }

    private String line(OfVerdict v) {
        Outcome outcome = v.finding().outcome();
        StringBuilder line = new StringBuilder(outcome.rule());
        if (!outcome.path().equals(ElementPath.ROOT)) {
            line.append(" at ").append(Paths.shown(outcome.path()));
        }
        if (!outcome.during().isEmpty()) {
            line.append(", ").append(outcome.during());
        }
        line.append(" (")
                .append(outcome.level().word())
                .append(", ")
                .append(kind(outcome))
                .append("): ");
        line.append(said(v.failing().orElse(0), v.undecided()));
        Comparison compared = outcome.comparison();
        if (compared != null && rulebook != null) {
            ComparisonText text = ComparisonText.of(compared, rulebook.rule(outcome.rule()));
            line.append("; ").append(text.value()).append(", ").append(text.limit());
            v.uncertainty().ifPresent(u -> line.append(", u ").append(text.uncertainty(u)));
        }
        v.most()
                .ifPresent(most -> line.append("; most by ")
                        .append(Paths.shown(most.path()))
                        .append(" (")
                        .append(Math.round(most.share() * 100))
                        .append(" %)"));
        return line.toString();
    }

    private static String kind(Outcome outcome) {
        return switch (outcome.kind()) {
            case FAIL -> "fails";
            case PASS -> "holds";
            case OPEN -> "open";
            default -> outcome.kind().word();
        };
    }

    /** Fine only where what fails and what could not be judged are both rare. */
    private String said(double failing, double undecided) {
        String number = "(" + percent(failing) + " to fail"
                + (undecided > 0 ? ", " + percent(undecided) + " not to be judged)" : ")");
        if (failing + undecided < UNLIKELY) {
            return "likely fine " + number;
        }
        return (failing > 1 - UNLIKELY ? "likely fails " : undecided >= UNLIKELY ? "not known " : "either way ")
                + number;
    }

    /** None or all of so many plants says no more than that it is rarer than three in so many, at 95 %. */
    private String percent(double share) {
        double least = HAPPENED_IN_NONE / Math.max(1, sureness == null ? 1 : sureness.points());
        if (share <= 0) {
            return "under " + digits(least);
        }
        return share >= 1 ? "over " + digits(1 - least) : digits(share);
    }

    private static String digits(double share) {
        boolean fine = share < 0.0995 || share > 0.9905;
        return String.format(Locale.ROOT, fine ? "%.1f %%" : "%.0f %%", share * 100);
    }
}
