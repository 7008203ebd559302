package org.leat.season;

import java.time.LocalDate;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Stream;
import org.leat.design.StreamFlow;
import org.leat.plant.Plant;
import org.leat.plant.derive.LoadDerivation;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.Si;

/** The year of a design, or what must be told before there is one. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface DesignYear {

    /** Days from one visit to the next where nobody says; common practice: somebody looks at the screen once a week. */
    int USUAL_VISIT = 7;

    /**
     * A year that was run.
     *
     * @param year hour by hour
     * @param table of the plant's power
     * @param loads of a day
     * @param bank the battery
     * @param keeping how the plant was run
     * @param stream where the flows come from
     */
    record Told(Year year, PowerTable table, LoadDay loads, YearBattery bank, Year.Keeping keeping, Source stream)
            implements DesignYear {}

    /**
     * No year: something is not told.
     *
     * @param path of the field
     * @param why what it is needed for, a word of the nomenclature
     */
    record Open(String path, String why) implements DesignYear {}

    /** Where the flows of a year come from. */
    enum Source {
        /** a series of days, handed in or of the design. */
        SERIES,
        /** the months of the design. */
        MONTHS,
        /** the duration curve of the design: the order of its days is not known. */
        DURATION,
        /** one flow for the whole year: what a dry season takes is not known. */
        CONSTANT
    }

    /**
     * {@return the year of a plant}
     *
     * @param days of the stream; null for the flows that the design states
     * @param visit days from one visit to the next
     */
    static DesignYear of(Plant plant, @Nullable FlowSeries days, int visit) {
        if (!plant.unsolvable().isEmpty()) {
            return new Open(plant.unsolvable().get(0).path(), "the plant cannot be solved without it");
        }
        Optional<String> missing = LoadDerivation.missing(plant.design());
        if (missing.isPresent()) {
            return new Open(missing.get(), "what the loads take in a day");
        }
        SiteNumbers site = plant.numbers().site();
        FlowSeries own = days == null ? daily(plant.design().site().stream()) : days;
        FlowSeries series = own == null ? FlowClasses.series(site) : own;
        if (series == null) {
            return new Open("/site/stream", "what the stream brings over the year");
        }
        PowerTable table = PowerTable.of(plant);
        LoadDay loads = LoadDay.of(LoadDerivation.of(plant.design()));
        YearBattery bank = YearBattery.of(plant.numbers().battery());
        Year.Keeping keeping = new Year.Keeping(site.keptInStream(), visit);
        return new Told(
                Year.of(series, table, loads, bank, keeping),
                table,
                loads,
                bank,
                keeping,
                own == null ? source(site) : Source.SERIES);
    }

    private static @Nullable FlowSeries daily(@Nullable Stream stream) {
        if (stream == null || !(stream.flow() instanceof StreamFlow.Daily daily)) {
            return null;
        }
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        for (int i = 0; i < daily.flows().size(); i++) {
            days.put(daily.from().plusDays(i), Si.of(daily.flows().get(i)));
        }
        return FlowSeries.of(days, 0);
    }

    private static Source source(SiteNumbers site) {
        return switch (site.stream().get(0).kind()) {
            case CONSTANT -> Source.CONSTANT;
            case MONTH -> Source.MONTHS;
            case EXCEEDED -> Source.DURATION;
        };
    }
}
