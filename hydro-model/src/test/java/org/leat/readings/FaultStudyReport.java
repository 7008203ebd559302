package org.leat.readings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    private final List<Line> lines;

    FaultStudyReport(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    static FaultStudyReport read(List<String> text) {
        return new FaultStudyReport(text.stream().map(Line::of).toList());
    }

    /** Prints the tables of a folder of counts. */
    public static void main(String[] args) throws IOException {
        List<String> text = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of(args[0]))) {
            for (Path file : files.sorted().toList()) {
                text.addAll(Files.readAllLines(file));
            }
        }
        System.out.print(read(text).tables());
    }

    /** {@return how many of some lines} */
    private int sum(List<Line> some, java.util.function.ToIntFunction<FaultTally> what) {
        return some.stream().mapToInt(line -> what.applyAsInt(line.tally())).sum();
    }

    List<Line> of(Taken taken, boolean sound) {
        return lines.stream()
                .filter(l -> l.taken() == taken && (l.kind() == FaultKind.NOTHING) == sound)
                .toList();
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
    private double[] weighed(
            Taken taken,
            java.util.function.ToIntFunction<FaultTally> of,
            java.util.function.ToIntFunction<FaultTally> right) {
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

    String tables() {
        StringBuilder out = new StringBuilder();
        out.append("| readings | seen | first | in group | sound plants called sound | called above 90 %, wrong |");
        for (int tenth = 4; tenth < 10; tenth++) {
            out.append(" called ").append(10 * tenth).append(" %, right |");
        }
        out.append("\n|---|---|---|---|---|---|---|---|---|---|---|---|\n");
        for (Taken taken : Taken.values()) {
            List<Line> faults = of(taken, false);
            int seen = sum(faults, t -> t.seen);
            out.append("| ")
                    .append(words(taken))
                    .append(" | ")
                    .append(seen)
                    .append(" of ")
                    .append(sum(faults, t -> t.draws));
            out.append(" | ").append(percent(named(taken, false))).append(" | ").append(percent(named(taken, true)));
            out.append(" | ")
                    .append(percent(sound(taken)))
                    .append(" | ")
                    .append(percent(sureWrong(taken)))
                    .append(" |");
            for (int tenth = 4; tenth < 10; tenth++) {
                out.append(' ').append(percent(called(taken, tenth))).append(" |");
            }
            out.append('\n');
        }
        out.append("\n| fault |");
        for (Taken taken : Taken.values()) {
            out.append(' ').append(words(taken)).append(": seen | first | in group | called sound |");
        }
        out.append("\n|---|").append("---|".repeat(12)).append('\n');
        for (FaultKind kind : FaultKind.values()) {
            if (lines.stream().noneMatch(l -> l.kind() == kind)) {
                continue;
            }
            out.append("| ")
                    .append(kind.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                    .append(" |");
            for (Taken taken : Taken.values()) {
                List<Line> some = lines.stream()
                        .filter(l -> l.kind() == kind && l.taken() == taken)
                        .toList();
                int draws = sum(some, t -> t.seen);
                out.append(' ').append(draws).append(" |");
                out.append(' ')
                        .append(draws == 0 ? "–" : percent((double) sum(some, t -> t.first) / draws))
                        .append(" |");
                out.append(' ')
                        .append(draws == 0 ? "–" : percent((double) sum(some, t -> t.group) / draws))
                        .append(" |");
                out.append(' ')
                        .append(draws == 0 ? "–" : percent((double) sum(some, t -> t.nothing) / draws))
                        .append(" |");
            }
            out.append('\n');
        }
        return out.toString();
    }

    static String words(Taken taken) {
        return switch (taken) {
            case TWO_SETS -> "two sets";
            case ONE_SET -> "one set";
            case THREE -> "three readings";
        };
    }

    private static String percent(double share) {
        return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
