package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rulebook;
import org.leat.choice.Proposals;
import org.leat.choice.Proposals.Proposal;
import org.leat.choice.Proposals.Reason;
import org.leat.design.Design;
import org.leat.plant.Plant;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.season.DesignYear;

/** Writes the plants that are proposed for a place, or why such a plant is the wrong one there. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class ProposalWriter {

    private static final double KILOWATT_HOUR = 3.6e6;
    private static final int WIDTH = 100;
    private static final int INDENT = 3;

    private final Map<String, String> texts;

    /** Writes in the words of a rulebook. */
    public ProposalWriter(Rulebook rulebook) {
        this.texts = rulebook.texts();
    }

    /**
     * Writes for a person.
     *
     * @param name of the survey
     * @param files where the designs were written, in the order of the proposals; empty where they were not
     */
    public void text(String name, Proposals.Answer answer, List<String> files, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        if (answer instanceof Proposals.Found found) {
            lines.add(name + ": what could stand there, of parts in usual sizes");
            for (int i = 0; i < found.best().size(); i++) {
                lines.add("");
                lines.addAll(one(i, found.best().get(i), files));
            }
            lines.add("");
            lines.addAll(Columns.wrapped(
                    found.solved() + " sets of parts were solved and " + found.judged()
                            + " designs judged. A proposal is a design to begin with: measure the parts you can get, write them"
                            + " into it, and check it again."
                            + (files.isEmpty() ? " --write FOLDER writes the design files." : ""),
                    WIDTH,
                    0));
        } else {
            lines.add(name + ": a plant of this kind is the wrong one here");
            lines.add("");
            Proposals.Wrong wrong = (Proposals.Wrong) answer;
            for (Reason reason : wrong.reasons()) {
                lines.addAll(Columns.wrapped("-  " + why(reason), WIDTH, INDENT));
            }
            if (!wrong.errors().isEmpty()) {
                lines.addAll(Columns.wrapped(
                        "   What speaks against most of them: " + mostOften(wrong.errors()) + ".", WIDTH, INDENT));
            }
        }
        lines.add("");
        lines.addAll(Columns.wrapped(texts.getOrDefault("caution", "").replace('\n', ' '), WIDTH, 0));
        for (String line : lines) {
            out.append(line).append('\n');
        }
    }

    private static String mostOften(Map<String, Integer> errors) {
        return errors.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(3)
                .map(e -> e.getKey() + " (" + e.getValue() + ")")
                .collect(Collectors.joining(", "));
    }

    private static List<String> one(int index, Proposal proposal, List<String> files) {
        List<String> lines = new ArrayList<>();
        String number = (index + 1) + "  ";
        lines.addAll(Columns.wrapped(
                number + proposal.merits().stream().map(ProposalWriter::merit).collect(Collectors.joining("; ")),
                WIDTH,
                INDENT));
        add(lines, "Gives     " + gives(proposal));
        add(lines, "Parts     " + parts(proposal.design()));
        add(lines, "Judged    " + judged(proposal));
        if (!files.isEmpty()) {
            add(lines, "File      " + PlainText.of(files.get(index)));
        }
        return lines;
    }

    private static void add(List<String> lines, String text) {
        lines.addAll(Columns.wrapped(" ".repeat(INDENT) + text, WIDTH, INDENT + 10));
    }

    private static String merit(Proposals.Merit merit) {
        return switch (merit) {
            case GIVES_MOST -> "Gives most of all that have no error";
            case NARROWER_PIPE -> "A narrower pipe, and still three quarters of the most or more";
            case LOWER_VOLTAGE -> "A lower voltage of the bank, and so in reach";
            case SMALLER_MACHINE ->
                "A smaller machine that still suffices for the loads, or gives three quarters of the most";
        };
    }

    private static String why(Reason reason) {
        return switch (reason.cause()) {
            case LOW_HEAD ->
                "Too little fall for a free jet: " + length(reason.value()) + ". Up to " + length(reason.limit())
                        + " is a low head (U.S. Department of Energy, Planning a Microhydropower System; 10 ft, from memory): a"
                        + " propeller or crossflow turbine, or a water wheel, is the machine there.";
            case HIGH_HEAD ->
                "Too much pressure: " + length(reason.value())
                        + " of fall. Polyethylene pipe ends at 25 bar, which leaves room"
                        + " for blows up to " + length(reason.limit())
                        + " (common practice: a third over the standing pressure); steel pipe, and people who know it, are needed.";
            case TOO_LITTLE ->
                "Too little power: about " + power(reason.value())
                        + " over the year, taking 53 % of the water's (the same source: feet times gallons a minute over ten)."
                        + " Below " + power(reason.limit())
                        + " regulator and inverter take a great share, and a small solar panel gives as much (common practice).";
            case DRY -> "Nothing is left of the stream for half of the year once what must stay in it stays.";
            case TOO_MUCH_WANTED ->
                "The loads take " + power(reason.value()) + " day and night; above " + power(reason.limit())
                        + " a generator of alternating current with a load controller is the usual plant, not a battery on a small"
                        + " machine (common practice).";
            case NO_PARTS ->
                "No set of usual parts is without an error; " + count(reason.value()) + " were solved."
                        + " Look at the way of the pipe: a long one at little fall, or more water than two jets pass.";
            case PIPE_SHORTER ->
                "The pipe is shorter than its fall: " + length(reason.value()) + " for " + length(reason.limit())
                        + ". One of the two is read wrongly.";
        };
    }

    private static String count(double value) {
        return Long.toString(Math.round(value));
    }

    private static String length(double metres) {
        return UsualUnits.show(metres, QuantityKind.LENGTH);
    }

    private static String power(double watts) {
        return UsualUnits.show(watts, QuantityKind.POWER);
    }

    private static String gives(Proposal proposal) {
        String mean = power(proposal.meanPower()) + " in the mean of the year";
        if (!(proposal.year() instanceof DesignYear.Told told)) {
            return mean + ".";
        }
        double made = told.year().totalMade() / KILOWATT_HOUR;
        int hours = told.year().hoursMissing();
        return mean + ", " + count(made) + " kWh with a visit a week; "
                + (hours == 0
                        ? "the loads never go short."
                        : "the loads go short in " + hours + " hours of the year, by "
                                + count(Math.ceil(told.year().totalMissing() / KILOWATT_HOUR)) + " kWh.");
    }

    private static String parts(Design design) {
        PlantNumbers numbers = Plant.of(design).numbers();
        SectionNumbers run = numbers.penstock().last();
        String bores = numbers.nozzles().sets().stream()
                .map(set -> set.bores().get(0))
                .distinct()
                .sorted()
                .map(bore -> UsualUnits.show(bore, QuantityKind.LENGTH, "mm", 3))
                .collect(Collectors.joining(", "));
        int jets = numbers.nozzles().sets().stream()
                .mapToInt(set -> set.bores().size())
                .max()
                .orElse(1);
        return "polyethylene pipe of " + UsualUnits.show(run.bore(), QuantityKind.LENGTH, "mm", 3) + " bore, "
                + length(numbers.penstock().length()) + "; " + (jets == 1 ? "one jet" : "up to " + jets + " jets")
                + ", nozzles of "
                + bores + "; wheel of "
                + UsualUnits.show(numbers.runner().pitchDiameter(), QuantityKind.LENGTH, "mm", 3) + "; machine of "
                + UsualUnits.show(rmsBetweenLeads(numbers), QuantityKind.VOLTAGE)
                + " rms between leads at 1000 rpm; bank of " + numbers.battery().cellsInSeries() + " cells in series, "
                + UsualUnits.show(Si.of(design.battery().capacity()), QuantityKind.CHARGE) + ".";
    }

    private static double rmsBetweenLeads(PlantNumbers numbers) {
        double electrical = 1000 * Math.PI / 30 * numbers.alternator().polePairs();
        return numbers.alternator().fluxLinkage() * electrical * Math.sqrt(1.5);
    }

    private static String judged(Proposal proposal) {
        List<String> warnings = failing(proposal, Level.WARNING);
        long open = proposal.report().count(Kind.OPEN);
        return "no error; "
                + (warnings.isEmpty() ? "no warning" : "warnings: " + String.join(", ", warnings)) + "; "
                + (open == 0 ? "no question open" : open + (open == 1 ? " question open" : " questions open")) + ".";
    }

    private static List<String> failing(Proposal proposal, Level level) {
        TreeSet<String> rules = new TreeSet<>();
        proposal.report().findings().forEach(finding -> {
            if (finding.outcome() instanceof Outcome.Fail && finding.outcome().level() == level) {
                rules.add(finding.outcome().rule());
            }
        });
        return List.copyOf(rules);
    }

    private record OfYear(
            @Nullable BigDecimal made,
            @Nullable BigDecimal used,
            @Nullable BigDecimal missing,
            int hoursMissing) {}

    private record One(
            List<Proposals.Merit> merits,
            @Nullable BigDecimal meanPower,
            @Nullable OfYear year,
            int errors,
            List<String> warnings,
            long open,
            @Nullable String file,
            String design) {}

    private record Against(
            Proposals.Cause cause,
            @Nullable BigDecimal value,
            @Nullable BigDecimal limit,
            String why) {}

    /** Writes for a program: SI units, energies of a year in joules, each design as the text of its file. */
    public void json(Proposals.Answer answer, List<String> files, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            if (answer instanceof Proposals.Found found) {
                json.writeBooleanField("suits", true);
                json.writeNumberField("solved", found.solved());
                json.writeNumberField("judged", found.judged());
                List<One> all = new ArrayList<>();
                for (int i = 0; i < found.best().size(); i++) {
                    all.add(asJson(found.best().get(i), files.isEmpty() ? null : files.get(i)));
                }
                json.writePOJOField("proposals", all);
            } else {
                Proposals.Wrong wrong = (Proposals.Wrong) answer;
                json.writeBooleanField("suits", false);
                json.writeNumberField("solved", wrong.solved());
                json.writePOJOField(
                        "reasons",
                        wrong.reasons().stream()
                                .map(r -> new Against(r.cause(), Numbers.of(r.value()), Numbers.of(r.limit()), why(r)))
                                .toList());
                json.writePOJOField("errors", wrong.errors());
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static One asJson(Proposal proposal, @Nullable String file) {
        OfYear year = proposal.year() instanceof DesignYear.Told told
                ? new OfYear(
                        Numbers.of(told.year().totalMade()),
                        Numbers.of(told.year().totalUsed()),
                        Numbers.of(told.year().totalMissing()),
                        told.year().hoursMissing())
                : null;
        return new One(
                proposal.merits(),
                Numbers.of(proposal.meanPower()),
                year,
                failing(proposal, Level.ERROR).size(),
                failing(proposal, Level.WARNING),
                proposal.report().count(Kind.OPEN),
                file,
                proposal.text());
    }
}
