package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.season.DesignYear;
import org.leat.season.FlowSeries;
import org.leat.season.LoadDay;
import org.leat.season.PowerTable;
import org.leat.season.Year;
import org.leat.season.YearBattery;

/** What rules ask of a year, against a year that can be worked out by hand: 100 W with water, nothing in a dry August. */
class SolvedYearTest {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    /** 100 W at 10 L/s and more; the loads take 50 W day and night; a bank of 10 days of them, 90 % efficient, down to a fifth. */
    private static DesignYear.Told year(DesignYear.Source source) {
        Double[] flows = new Double[12];
        Arrays.fill(flows, 0.012);
        flows[7] = 0.0;
        PowerTable table = PowerTable.ofPoints(
                new NozzleGroup("one", List.of(0.01), true), new double[] {0, 0.0099, 0.01}, new double[] {0, 0, 100});
        LoadDay loads = LoadDay.of(
                Collections.nCopies(24, 50.0).stream().mapToDouble(w -> w).toArray());
        YearBattery bank = new YearBattery(50 * 10 * DAY, 0.2, 1, 0.9, 1000);
        Year.Keeping keeping = new Year.Keeping(0.001, 1);
        return new DesignYear.Told(
                Year.of(FlowSeries.ofMonths(List.of(flows)), table, loads, bank, keeping),
                table,
                loads,
                bank,
                keeping,
                source);
    }

    @Test
    void the_leanest_month_is_the_dry_one_and_the_loads_get_what_the_bank_holds() {
        SolvedYear.LoadsOfMonth lean = SolvedYear.leanest(year(DesignYear.Source.MONTHS));
        assertThat(lean.month().month().getMonthValue()).isEqualTo(8);
        assertThat(lean.wanted()).isCloseTo(50 * DAY, within(1.0));
        // eight tenths of ten days over 31 days
        assertThat(lean.there()).isCloseTo(50 * DAY * 8 / 31, within(1.0));
        assertThat(SolvedYear.name(year(DesignYear.Source.MONTHS), lean.month()))
                .isEqualTo("August");
        assertThat(SolvedYear.name(year(DesignYear.Source.DURATION), lean.month()))
                .isEqualTo("the leanest month");
    }

    @Test
    void from_the_first_dry_hour_to_the_last_of_filling_again_the_battery_is_not_full() {
        // 31 dry days, then eight tenths of 500 W·days at 0.9 of the 50 W left over, 24 h · 8 / 0.9, the last hour of
        // which fills it
        double filling = Math.ceil(8 * 24 / 0.9) - 1;
        assertThat(SolvedYear.longestWithoutFull(year(DesignYear.Source.MONTHS)))
                .isCloseTo(31 * DAY + filling * HOUR, within(1.0));
    }

    @Test
    void the_charge_reached_nine_tenths_of_the_time_lies_on_the_way_down_and_up() {
        DesignYear.Told told = year(DesignYear.Source.MONTHS);
        assertThat(SolvedYear.chargeReached(told, 0.5)).isEqualTo(1);
        assertThat(SolvedYear.chargeReached(told, 1)).isCloseTo(0.2, within(1e-9));
        double often = SolvedYear.chargeReached(told, 0.9);
        long below = Arrays.stream(told.year().charge()).filter(c -> c < often).count();
        assertThat(below).isLessThanOrEqualTo((long) (0.1 * 365 * 24) + 1);
        assertThat(often).isBetween(0.2, 1.0);
    }

    @Test
    void the_pipe_is_full_on_all_days_but_the_dry_ones() {
        DesignYear.Told told = year(DesignYear.Source.MONTHS);
        assertThat(SolvedYear.leastFlow(told)).isEqualTo(0.01);
        assertThat(SolvedYear.daysFull(told)).isCloseTo(334.0 / 365, within(1e-12));
    }
}
