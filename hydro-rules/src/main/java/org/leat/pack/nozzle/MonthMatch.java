package org.leat.pack.nozzle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Cases;
import org.leat.plant.duties.SeasonMatch;
import org.leat.season.DesignYear;
import org.leat.season.FlowSeries;
import org.leat.season.Year.Month;

/**
 * How well the nozzle sets on hand suit the stream of a month, day by day.
 *
 * @param month of the year
 * @param share energy of the jets over that of nozzles cut for each day's flow
 * @param worst the day that is suited worst
 */
record MonthMatch(Month month, double share, SeasonMatch worst) {

    /** {@return every month with water for the plant} */
    static List<MonthMatch> all(Cases cases, DesignYear.Told told) {
        FlowSeries series = told.year().series();
        Map<Double, SeasonMatch> known = new HashMap<>();
        List<MonthMatch> all = new ArrayList<>();
        int day = 0;
        for (Month month : told.year().months()) {
            List<SeasonMatch> days = new ArrayList<>();
            for (int i = 0; i < month.days(); i++, day++) {
                double available = series.flow(day) - told.keeping().kept();
                if (available > 0) {
                    days.add(known.computeIfAbsent(available, flow -> SeasonMatch.of(cases, flow)));
                }
            }
            if (!days.isEmpty()) {
                all.add(of(month, days));
            }
        }
        return List.copyOf(all);
    }

    private static MonthMatch of(Month month, List<SeasonMatch> days) {
        double ideal = days.stream().mapToDouble(SeasonMatch::ideal).sum();
        double had = days.stream().mapToDouble(d -> d.ideal() * d.share()).sum();
        return new MonthMatch(month, ideal > 0 ? had / ideal : 1, Worst.least(days, SeasonMatch::share));
    }
}
