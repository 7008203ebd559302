package org.leat.page;

import java.util.List;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

/** For how much of the year a stream leaves a flow to the plant. */
final class YearShare {

    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    private YearShare() {}

    /**
     * {@return the share of the year with at least that flow for the plant} Straight between two points of a duration curve;
     * nothing is known of the year beyond its first point, and there that point's share is kept for no more flow than it has.
     *
     * @param levels most water first
     * @param flow m³/s
     */
    static double with(List<StreamLevel> levels, double flow) {
        StreamLevel.Kind kind = levels.get(0).kind();
        if (kind != StreamLevel.Kind.EXCEEDED) {
            long enough = levels.stream().filter(l -> l.available() >= flow).count();
            return (double) enough / levels.size();
        }
        StreamLevel more = levels.get(0);
        if (flow > more.available()) {
            return 0;
        }
        for (StreamLevel level : levels) {
            if (level.available() <= flow) {
                double span = more.available() - level.available();
                return span > 0
                        ? level.at() - (level.at() - more.at()) * (flow - level.available()) / span
                        : level.at();
            }
            more = level;
        }
        return more.at();
    }

    /** {@return when a stream has a flow, in words} */
    static String told(StreamLevel level) {
        return switch (level.kind()) {
            case CONSTANT -> "as told for the whole year";
            case EXCEEDED -> "reached or exceeded " + ShownText.percent(level.at()) + " of the year";
            case MONTH -> MONTHS.get((int) Math.round(level.at()) - 1);
        };
    }
}
