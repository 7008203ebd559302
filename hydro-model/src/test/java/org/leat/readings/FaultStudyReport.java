package org.leat.readings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.leat.readings.FaultStudy.Taken;

/** The counts of the study as tables of Markdown. */
final class FaultStudyReport {

    /** One line of the study. */
    record Line(String plant, FaultKind kind, int size, Taken taken, FaultTally tally) {
        static Line of(String text) {
            int cut = text.indexOf(' ');
            String[] key = text.substring(0, cut).split(";", -1);
            return new Line(
                    key[0],
                    FaultKind.valueOf(key[1]),
                    Integer.parseInt(key[2]),
                    Taken.valueOf(key[3]),
                    FaultTally.of(text.substring(cut + 1)));
        }
    }

    /** The plants whose design names two nozzle sets or more. */
    private static final Set<String> TWO_SETS = Set.of("rowan-ghyll", "orchard-sluice", "elder-sike");

    private final List<Line> lines;

    FaultStudyReport(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /** {@return counts of several runs, those of the same plant, fault, size and way of reading together} */
    static FaultStudyReport read(List<String> text) {
        Map<String, Line> together = new LinkedHashMap<>();
        for (String one : text) {
            Line line = Line.of(one);
            String key = one.substring(0, one.indexOf(' '));
            Line before = together.putIfAbsent(key, line);
            if (before != null) {
                before.tally().add(line.tally());
            }
        }
        return new FaultStudyReport(List.copyOf(together.values()));
    }

    /** {@return the counts, a line for each plant, fault, size and way of reading} */
    List<String> counts() {
        return lines.stream()
                .map(l -> l.plant() + ";" + l.kind() + ";" + l.size() + ";" + l.taken() + " "
                        + l.tally().line())
                .toList();
    }

    /** {@return draws of each plant, fault and size: of those of the circuit, and of all others} */
    int[] draws() {
        int simulated = Integer.MAX_VALUE;
        int others = Integer.MAX_VALUE;
        for (Line line : lines) {
            if (SimulatedMachine.simulates(line.kind())) {
                simulated = Math.min(simulated, line.tally().draws);
            } else {
                others = Math.min(others, line.tally().draws);
            }
        }
        return new int[] {simulated, others};
    }

    /** Prints the tables of counts: files of them, or folders of such files; with a file to write them to first, puts all together. */
    public static void main(String[] args) throws IOException {
        List<String> text = new ArrayList<>();
        for (String name : List.of(args).subList(args.length > 1 ? 1 : 0, args.length)) {
            try (Stream<Path> files = Files.walk(Path.of(name))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    text.addAll(Files.readAllLines(file));
                }
            }
        }
        FaultStudyReport report = read(text);
        if (args.length > 1) {
            Files.write(Path.of(args[0]), report.counts());
        }
        System.out.print(report.tables());
    }

    /** {@return how many of some lines} */
    private int sum(List<Line> some, ToIntFunction<FaultTally> what) {
        return some.stream().mapToInt(line -> what.applyAsInt(line.tally())).sum();
    }

    List<Line> of(Taken taken, boolean sound) {
        return lines.stream()
                .filter(l -> l.taken() == taken && (l.kind() == FaultKind.NOTHING) == sound)
                .toList();
    }

    /** {@return what came of one fault and size of a plant} */
    FaultTally tally(String plant, FaultKind kind, int size, Taken taken) {
        return lines.stream()
                .filter(l -> l.plant().equals(plant) && l.kind() == kind && l.size() == size && l.taken() == taken)
                .map(Line::tally)
                .findFirst()
                .orElseThrow();
    }

    /** {@return share of sound plants that are called sound} */
    double sound(Taken taken) {
        List<Line> some = of(taken, true);
        return (double) sum(some, t -> t.first) / sum(some, t -> t.draws);
    }

    /** {@return of the faults that move a reading, the share named first, or named first or in its group} */
    double named(Taken taken, boolean group) {
        List<Line> some = of(taken, false);
        return (double) sum(some, t -> group ? t.group : t.first) / sum(some, t -> t.seen);
    }

    /** What is called so likely, each fault and size as common as it is taken to be. */
    private double[] weighed(Taken taken, ToIntFunction<FaultTally> of, ToIntFunction<FaultTally> right) {
        Map<FaultKind, Integer> sizes = new EnumMap<>(FaultKind.class);
        lines.forEach(l -> sizes.merge(l.kind(), l.size() + 1, Math::max));
        double all = 0;
        double good = 0;
        for (Line line : lines) {
            if (line.taken() == taken) {
                double weight = line.kind().weight() / sizes.getOrDefault(line.kind(), 1) / line.tally().draws;
                all += weight * of.applyAsInt(line.tally());
                good += weight * right.applyAsInt(line.tally());
            }
        }
        return new double[] {all, good};
    }

    /** {@return of what is called 75 to 85 % likely, the share that is right} */
    double called(Taken taken, int tenth) {
        double[] of = weighed(taken, t -> t.called[tenth], t -> t.right[tenth]);
        return of[1] / of[0];
    }

    /** {@return of what is called more than 90 % likely, the share that is wrong} */
    double sureWrong(Taken taken) {
        double[] of = weighed(taken, t -> t.sure, t -> t.sureWrong);
        return of[1] / of[0];
    }

    /** {@return the counts of the plants that have two nozzle sets} */
    FaultStudyReport ofTwoSets() {
        return new FaultStudyReport(
                lines.stream().filter(l -> TWO_SETS.contains(l.plant())).toList());
    }

    /** {@return what the page of the study shows: how many draws, the whole, each fault} */
    String tables() {
        int[] draws = draws();
        StringBuilder out = new StringBuilder();
        out.append("Drawn for each fault, size and plant: ").append(draws[1]).append(" times, of the circuit ");
        out.append(draws[0]).append(" times, ").append(FaultStudy.NOISE_A_BUILD).append(" of them on one build.\n\n");
        out.append("| readings | seen | first | in group | sound plants called sound |\n|---|---|---|---|---|\n");
        for (Taken taken : Taken.values()) {
            whole(out, words(taken), taken);
        }
        ofTwoSets().whole(out, "two sets, the plants that have two", Taken.TWO_SETS);
        out.append("\n| readings | called above 90 %, wrong |");
        for (int tenth = 4; tenth < 10; tenth++) {
            out.append(" called ").append(10 * tenth).append(" %, right |");
        }
        out.append("\n|").append("---|".repeat(8)).append('\n');
        for (Taken taken : Taken.values()) {
            out.append("| ")
                    .append(words(taken))
                    .append(" | ")
                    .append(percent(sureWrong(taken)))
                    .append(" |");
            for (int tenth = 4; tenth < 10; tenth++) {
                out.append(' ').append(percent(called(taken, tenth))).append(" |");
            }
            out.append('\n');
        }
        for (Taken taken : Taken.values()) {
            out.append("\n| fault, ")
                    .append(words(taken))
                    .append(" | not shown | seen | first | in group | called sound |\n");
            out.append("|---|---|---|---|---|---|\n");
            for (FaultKind kind : FaultKind.values()) {
                fault(out, kind, taken);
            }
        }
        return out.toString();
    }

    private void whole(StringBuilder out, String name, Taken taken) {
        List<Line> faults = of(taken, false);
        out.append("| ")
                .append(name)
                .append(" | ")
                .append(sum(faults, t -> t.seen))
                .append(" of ");
        out.append(sum(faults, t -> t.draws))
                .append(" | ")
                .append(percent(named(taken, false)))
                .append(" | ");
        out.append(percent(named(taken, true)))
                .append(" | ")
                .append(percent(sound(taken)))
                .append(" |\n");
    }

    private void fault(StringBuilder out, FaultKind kind, Taken taken) {
        List<Line> some = lines.stream()
                .filter(l -> l.kind() == kind && l.taken() == taken)
                .toList();
        if (some.isEmpty()) {
            return;
        }
        double seen = sum(some, t -> t.seen);
        out.append("| ")
                .append(kind.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .append(" | ");
        out.append(percent((double) sum(some, t -> t.hidden) / sum(some, t -> t.draws)))
                .append(" | ");
        out.append(Math.round(seen)).append(" | ");
        out.append(percent(sum(some, t -> t.first) / seen)).append(" | ");
        out.append(percent(sum(some, t -> t.group) / seen)).append(" | ");
        out.append(percent(sum(some, t -> t.nothing) / seen)).append(" |\n");
    }

    static String words(Taken taken) {
        return switch (taken) {
            case TWO_SETS -> "all readings";
            case ONE_SET -> "one set";
            case THREE -> "three readings";
        };
    }

    private static String percent(double share) {
        return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
