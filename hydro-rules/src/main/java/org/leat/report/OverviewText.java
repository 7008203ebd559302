package org.leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Level;
import org.leat.check.Paths;
import org.leat.choice.Cause;
import org.leat.choice.MissingInput;
import org.leat.choice.Overview;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Overview.UnderstoodNumber;
import org.leat.choice.Overview.Yield;
import org.leat.choice.Plan;
import org.leat.choice.Plan.Step;
import org.leat.choice.SafetyVerdict;
import org.leat.quantity.QuantityKind;
import org.leat.report.TextWriter.Colours;

/**
 * One design on one screen: whether it is safe to open, what it gives, how it was understood, what to do first and what to
 * tell next. Never more lines than it is given; what does not fit is counted.
 */
final class OverviewText {

    /** Causes and inputs shown at most. */
    static final int MOST = 5;

    private static final int FEWEST = 1;
    private static final int LABEL = 13;

    /** Lines at most of the title, of a paragraph at the top, and of each part of an item: names can be of any length. */
    private static final int TITLE = 2;

    private static final int PARAGRAPH = 4;
    private static final int ITEM = 3;

    private static final int HANGING = 5;
    private static final int LONGEST_LIST = 3;

    private static final Set<Plan.Why> ADVICE = Set.of(Plan.Why.NO_WAY_OUT, Plan.Why.ADVICE_ONLY, Plan.Why.LOSES_MOST);

    private final Wording wording;
    private final Colours colours;
    private final int width;

    OverviewText(Wording wording, Colours colours, int width) {
        this.wording = wording;
        this.colours = colours;
        this.width = width;
    }

    /**
     * {@return the lines, none wider than the width}
     *
     * @param name of the file and the design
     * @param sure how sure the verdicts are; empty where that was not asked
     * @param most lines at most
     */
    List<String> lines(String name, Overview overview, String sure, int most) {
        List<String> top = new ArrayList<>(titled(name));
        top.add("");
        top.addAll(labelled(
                "Safe to open?",
                verdict(overview.verdict()),
                level(overview.verdict().answer())));
        top.addAll(labelled("How sure", sure, null));
        top.addAll(labelled("It gives", yieldOf(overview.yields()), null));
        top.addAll(labelled("Understood", understood(overview.understood()), null));
        top.add("");
        int causes = Math.min(MOST, first(overview).size());
        int inputs = Math.min(MOST, overview.inputs().size());
        List<String> rest = rest(overview, causes, inputs);
        while (top.size() + rest.size() > most && (causes > FEWEST || inputs > FEWEST)) {
            if (inputs >= causes && inputs > FEWEST) {
                inputs--;
            } else {
                causes--;
            }
            rest = rest(overview, causes, inputs);
        }
        top.addAll(rest);
        return top;
    }

    /** {@return lines of a part at most: as many as told on a full screen, more on a narrow one} */
    private int atMost(int lines) {
        return (lines * Columns.MOST + width - 1) / width;
    }

    private List<String> titled(String name) {
        return Columns.wrapped(name, width, HANGING, atMost(TITLE)).stream()
                .map(colours::heading)
                .toList();
    }

    private List<String> rest(Overview overview, int causes, int inputs) {
        List<String> lines = new ArrayList<>(causes(overview, causes));
        lines.addAll(inputs(next(overview, inputs), overview.inputs().size()));
        return lines;
    }

    private List<String> labelled(String label, String text, @Nullable Level level) {
        if (text.isEmpty()) {
            return List.of();
        }
        String padded = label + " ".repeat(LABEL - label.length()) + "  ";
        List<String> lines =
                new ArrayList<>(Columns.wrapped(padded + PlainText.of(text), width, LABEL + 2, atMost(PARAGRAPH)));
        String first = lines.get(0);
        String painted = level == null ? colours.heading(label) : colours.level(level, label);
        lines.set(0, painted + first.substring(label.length()));
        return lines;
    }

    private static @Nullable Level level(SafetyVerdict.Answer answer) {
        return switch (answer) {
            case UNREADABLE, UNSAFE -> Level.ERROR;
            case UNSOLVED, WARNED, UNJUDGED -> Level.WARNING;
            case LOOK, JUDGED -> null;
        };
    }

    /** {@return the verdict in a sentence or two} */
    static String verdict(SafetyVerdict v) {
        String unjudged = v.openEndangering() == 0
                ? v.setAside() + v.doubted() + v.playedDown() > 0 ? "" : "Every question of safety was judged."
                : capital(questions(v.openEndangering()))
                        + (v.openEndangering() == 1 ? " of safety was not judged." : " of safety were not judged.");
        String said = switch (v.answer()) {
            case UNREADABLE -> "Not known. The file could not be read as a design, so nothing was judged.";
            case UNSAFE -> "No. " + capital(number(v.errors(), "error")) + ". " + unjudged;
            case UNSOLVED ->
                "Not known. The plant could not be worked out. "
                        + (v.warningsEndangering() > 0 ? capital(warnings(v)) + ". " : "")
                        + unjudged;
            case WARNED -> "Not as it stands. No error, but " + warnings(v) + ". " + unjudged;
            case UNJUDGED -> "Not known. No error in what was judged. " + unjudged;
            case LOOK, JUDGED -> "Nothing that was judged speaks against it. " + unjudged;
        };
        StringBuilder text = new StringBuilder(said);
        if (v.doubted() > 0) {
            text.append(' ')
                    .append(capital(number(v.doubted(), "number")))
                    .append(
                            v.doubted() == 1
                                    ? " stated is odd: what rests on it"
                                    : " stated are odd: what rests on them")
                    .append(" is not yet judged.");
        }
        if (v.setAside() > 0) {
            text.append(' ')
                    .append(number(v.setAside(), "point"))
                    .append(" that can hurt")
                    .append(v.setAside() == 1 ? " does" : " do")
                    .append(" not count, by a baseline or someone's word.");
        }
        if (v.playedDown() > 0) {
            text.append(" Settings switch off, play down or loosen ")
                    .append(number(v.playedDown(), "rule"))
                    .append(" of safety.");
        }
        if (v.review() > 0) {
            text.append(' ')
                    .append(number(v.review(), "point"))
                    .append(v.review() == 1 ? " needs" : " need")
                    .append(" a person's eyes.");
        }
        return text.toString().replace("  ", " ").strip();
    }

    static String warnings(SafetyVerdict v) {
        return number(v.warningsEndangering(), "warning") + " of what can hurt someone";
    }

    private static String questions(long count) {
        return number(count, "question");
    }

    static String number(long count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** {@return what the nozzles open as built give, and which set gives most where that is another} */
    static String yieldOf(List<Yield> yields) {
        if (yields.isEmpty()) {
            return "not known: the plant could not be worked out.";
        }
        Yield open = yields.get(0);
        StringBuilder text = new StringBuilder();
        if (open.batteryPower() <= 0) {
            text.append("nothing into the battery with the nozzle set ")
                    .append(open.nozzles())
                    .append(" open.");
        } else {
            text.append(power(open))
                    .append(" into the battery, ")
                    .append(UsualUnits.show(open.energyPerDay(), QuantityKind.ENERGY, "kWh", 2))
                    .append(" a day, nozzle set ")
                    .append(open.nozzles())
                    .append(" (")
                    .append(UsualUnits.show(open.current(), QuantityKind.CURRENT))
                    .append(" at ")
                    .append(UsualUnits.show(open.voltage(), QuantityKind.VOLTAGE))
                    .append(").");
        }
        if (!open.fullPipe()) {
            text.append(" The stream does not keep the pipe full.");
        }
        text.append(
                switch (open.hold()) {
                    case HELD -> "";
                    case NOT_HELD -> " The alternator does not hold the wheel.";
                    case BELOW_CUT_IN -> " The wheel turns too slowly for the battery\u2019s volts: no current.";
                    case DOES_NOT_START -> " The jet is too weak to start the wheel.";
                });
        yields.stream()
                .skip(1)
                .filter(y -> y.batteryPower() > open.batteryPower())
                .max((a, b) -> Double.compare(a.batteryPower(), b.batteryPower()))
                .ifPresent(y -> text.append(" Best of the sets on hand: ")
                        .append(power(y))
                        .append(" with ")
                        .append(y.nozzles())
                        .append('.'));
        return text.toString();
    }

    private static String power(Yield y) {
        return UsualUnits.show(y.batteryPower(), QuantityKind.POWER);
    }

    /** {@return the numbers that a builder can recognise or doubt, joined} */
    static String understood(List<UnderstoodNumber> numbers) {
        if (numbers.isEmpty()) {
            return "";
        }
        Map<String, List<String>> parts = new LinkedHashMap<>();
        for (UnderstoodNumber n : numbers) {
            parts.computeIfAbsent(part(n), p -> new ArrayList<>()).add(said(n));
        }
        return parts.entrySet().stream()
                        .map(e -> e.getKey() + " " + shortened(e.getValue(), 2 * LONGEST_LIST))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String part(UnderstoodNumber n) {
        return switch (n.what()) {
            case PIPE_BORE, PIPE_WALL -> "pipe";
            case STANDING_PRESSURE, NOZZLE_AREA, FLOW -> "nozzle";
            case PITCH_DIAMETER -> "wheel";
            case MOTOR_SPEED_PER_VOLT, MOTOR_VOLTS_AT_1000_RPM, MOTOR_RESISTANCE -> "motor";
            case BATTERY_NOMINAL_VOLTAGE, BATTERY_ENERGY -> "battery";
        };
    }

    private static String said(UnderstoodNumber n) {
        return measured(n, UsualUnits.show(n.value(), n.kind())) + (n.assumed() ? " assumed" : "");
    }

    private static String measured(UnderstoodNumber n, String value) {
        return switch (n.what()) {
            case PIPE_BORE -> n.of() + (n.of().isEmpty() ? "" : " ") + value + " bore";
            case PIPE_WALL -> value + " wall";
            case STANDING_PRESSURE -> value + " standing";
            case NOZZLE_AREA -> value + " opening";
            case FLOW -> value + " running";
            case PITCH_DIAMETER -> value;
            case MOTOR_SPEED_PER_VOLT -> value + " of peak";
            case MOTOR_VOLTS_AT_1000_RPM -> value + " at 1000 rpm";
            case MOTOR_RESISTANCE -> value + " between leads";
            case BATTERY_NOMINAL_VOLTAGE -> value + " nominal";
            case BATTERY_ENERGY -> value;
        };
    }

    /** {@return the causes worth being shown first: notes only where a change wins power} */
    static List<Cause> first(Overview overview) {
        return overview.causes().stream()
                .filter(c -> c.worst() != Level.NOTE || watts(c) > 0)
                .toList();
    }

    static long watts(Cause cause) {
        Step change = cause.change();
        return change == null || !cause.isTried() || change.way().gain().isEmpty()
                ? 0
                : Math.round(change.way().gain().getAsDouble());
    }

    private List<String> causes(Overview overview, int shown) {
        List<String> lines = new ArrayList<>();
        List<Cause> all = first(overview);
        if (all.isEmpty()) {
            return lines;
        }
        lines.add(colours.heading("Do these first") + of(shown, all.size()));
        for (int i = 0; i < shown; i++) {
            lines.addAll(cause(i + 1, all.get(i)));
        }
        String together = together(overview.plan(), all.subList(0, shown));
        if (!together.isEmpty()) {
            lines.addAll(Columns.wrapped("  " + together, width, 2, atMost(ITEM)));
        }
        lines.add("");
        return lines;
    }

    private static String of(int shown, int all) {
        return shown == all ? "" : " (" + shown + " of " + all + ")";
    }

    private List<String> cause(int number, Cause cause) {
        String what = what(cause, wording);
        String gain = watts(cause) == 0 ? "" : " (" + TextWriter.watts((double) watts(cause)) + ")";
        List<String> lines = new ArrayList<>(
                Columns.wrapped("  " + number + ". " + PlainText.of(what) + gain, width, HANGING, atMost(ITEM)));
        lines.addAll(Columns.wrapped(" ".repeat(HANGING) + PlainText.of(effect(cause)), width, HANGING, atMost(ITEM)));
        return lines;
    }

    /** {@return what to do about a cause, or what stays where nothing is known} */
    static String what(Cause cause, Wording wording) {
        Step change = cause.change();
        return change == null
                ? wording.of(cause.clears().get(0).worst()) + " No change that takes this away is known."
                : wording.of(change.way(), change.of());
    }

    static String effect(Cause cause) {
        Step change = cause.change();
        String what = counts(cause) + " (" + rules(cause) + ")";
        if (change == null) {
            return "stays: " + what;
        }
        if (!cause.isTried()) {
            return "advice, which cannot be tried here, against " + what;
        }
        String clears =
                cause.clears().isEmpty() && cause.calms().isEmpty() ? "the other changes need it" : "clears " + what;
        return clears + "; change " + fields(change.way().edits());
    }

    private static String counts(Cause cause) {
        List<String> parts = new ArrayList<>();
        for (Level level : List.of(Level.ERROR, Level.WARNING, Level.NOTE)) {
            long count = cause.count(level);
            if (count > 0) {
                parts.add(number(count, level.word()));
            }
        }
        return parts.size() < 2
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }

    private static String rules(Cause cause) {
        List<GroupedFailure> all = new ArrayList<>(cause.clears());
        all.addAll(cause.calms());
        all.sort(Comparator.comparing(GroupedFailure::worst, Finding.WORST_FIRST));
        return rules(all);
    }

    private static String rules(List<GroupedFailure> groups) {
        List<String> ids =
                groups.stream().map(g -> g.worst().outcome().rule()).distinct().toList();
        return shortened(ids, LONGEST_LIST);
    }

    private static String shortened(List<String> items, int most) {
        return items.size() <= most
                ? String.join(", ", items)
                : String.join(", ", items.subList(0, most)) + " and " + (items.size() - most) + " more";
    }

    /** {@return the fields that a change sets; the part that holds them all where there are several} */
    static String fields(List<Edit> edits) {
        List<String> paths = edits.stream().map(Edit::path).map(Paths::shown).toList();
        String around = paths.get(0);
        for (String path : paths) {
            while (!path.equals(around) && !path.startsWith(around + ".")) {
                int dot = around.lastIndexOf('.');
                if (dot < 0) {
                    return shortened(paths, 2);
                }
                around = around.substring(0, dot);
            }
        }
        return around;
    }

    /** {@return what comes of the least plan, in the numbers of the causes shown} */
    static String together(Plan plan, List<Cause> shown) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).inPlan()) {
                numbers.add(i + 1);
            }
        }
        int steps = plan.steps().size();
        int unseen = steps - numbers.size();
        String changes = numbers.isEmpty()
                ? number(steps, "change")
                : listed(numbers) + (unseen > 0 ? " and " + unseen + " more" : "");
        String leave = changes + (steps == 1 ? " alone leaves " : " together leave ");
        String power = plan.batteryPower().isEmpty()
                ? ""
                : " The plant then gives " + UsualUnits.show(plan.batteryPower().getAsDouble(), QuantityKind.POWER)
                        + ".";
        String open = plan.openAfter() == 0 ? "" : " " + questions(plan.openAfter()) + " of safety stay open.";
        return switch (plan.result()) {
            case NOTHING_NEEDED, NOTHING_JUDGED -> "";
            case FOUND -> leave + "no error." + power + open;
            case SOME_STAY ->
                steps == 0
                        ? told(plan, shown) ? "" : "No change that could be tried clears " + errors(plan) + "."
                        : leave + errors(plan) + ": " + why(plan) + "." + power;
            case NOT_WITHIN_BUDGET ->
                "No set of changes that leaves no error was found in " + plan.budget() + " tries; the best, "
                        + number(steps, "change") + ", leaves " + errors(plan) + ".";
        };
    }

    /** {@return whether every error that stays is among the causes shown} */
    private static boolean told(Plan plan, List<Cause> shown) {
        Set<GroupedFailure> told =
                shown.stream().flatMap(c -> c.clears().stream()).collect(Collectors.toSet());
        return plan.stays().stream().map(Plan.Staying::failure).allMatch(told::contains);
    }

    private static String listed(List<Integer> numbers) {
        boolean run = numbers.get(numbers.size() - 1) - numbers.get(0) == numbers.size() - 1;
        if (numbers.size() > 2 && run) {
            return numbers.get(0) + " to " + numbers.get(numbers.size() - 1);
        }
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" and "));
    }

    private static String errors(Plan plan) {
        List<GroupedFailure> stays =
                plan.stays().stream().map(Plan.Staying::failure).toList();
        long count = stays.stream().mapToLong(g -> g.count(Level.ERROR)).sum();
        return number(count, "error") + " (" + rules(stays) + ")";
    }

    private static String why(Plan plan) {
        Set<Plan.Why> all = plan.stays().stream().map(Plan.Staying::why).collect(Collectors.toCollection(TreeSet::new));
        if (all.size() > 1 && ADVICE.containsAll(all)) {
            return all.contains(Plan.Why.LOSES_MOST)
                    ? "nothing, only advice, or only what loses most of the power, is known against them"
                    : "nothing, or only advice, is known against them";
        }
        long errors = plan.stays().stream()
                .mapToLong(staying -> staying.failure().count(Level.ERROR))
                .sum();
        String which = errors == 1 ? "it" : "them";
        return all.stream().map(each -> why(each, which)).collect(Collectors.joining("; "));
    }

    private static String why(Plan.Why why, String which) {
        return switch (why) {
            case NO_WAY_OUT -> "nothing is known against " + which;
            case ADVICE_ONLY -> "only advice is known against " + which;
            case BRINGS_ANOTHER -> "what clears one brings another";
            case ONLY_FOR_SOME -> "no change holds for all nozzle sets";
            case AGAINST_OTHERS -> "what clears one does not go with the other changes";
            case LOSES_MOST -> "only advice is known against " + which + " that does not lose most of the power";
        };
    }

    /**
     * {@return the inputs worth being told next} What is told above as a number that was assumed is asked for here: where none such is
     * among those on which most hangs, the first takes the last place.
     */
    static List<MissingInput> next(Overview overview, int shown) {
        List<MissingInput> all = overview.inputs();
        List<MissingInput> next = new ArrayList<>(all.subList(0, Math.min(shown, all.size())));
        Set<String> assumed = overview.understood().stream()
                .filter(UnderstoodNumber::assumed)
                .map(UnderstoodNumber::element)
                .collect(Collectors.toSet());
        if (!next.isEmpty() && next.stream().noneMatch(i -> assumed.contains(i.field()))) {
            all.stream()
                    .filter(i -> assumed.contains(i.field()))
                    .findFirst()
                    .ifPresent(i -> next.set(next.size() - 1, i));
        }
        return next;
    }

    private List<String> inputs(List<MissingInput> inputs, int all) {
        List<String> lines = new ArrayList<>();
        if (inputs.isEmpty()) {
            return lines;
        }
        lines.add(colours.heading("Tell or measure these next, each with the questions that it settles")
                + of(inputs.size(), all));
        for (int i = 0; i < inputs.size(); i++) {
            MissingInput input = inputs.get(i);
            String line = "  " + (i + 1) + ". " + Paths.shown(input.field()) + ": "
                    + input.how().sentence() + " (" + settles(input) + ")";
            lines.addAll(Columns.wrapped(PlainText.of(line), width, HANGING, atMost(ITEM)));
        }
        lines.add("");
        return lines;
    }

    static String settles(MissingInput input) {
        long safety = input.endangering();
        long all = input.settles().size();
        return safety == 0
                ? questions(all)
                : safety == all ? safety + " of safety" : safety + " of safety, " + all + " in all";
    }
}
