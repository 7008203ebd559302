package org.leat.catalogue.tables;

import java.util.List;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Greatest distance between supports of a plastic pipe full of water above ground, m, from {@code support-spans.csv}. A size between
 * two has the span of the smaller, a temperature between two that of the warmer; where makers differ (by up to 18 %) the shorter
 * holds.
 *
 * <p>Range: PE100 SDR 11 of 32 to 110 mm and SDR 17 of 63 to 110 mm at 20 °C; PVC schedule 40 of nominal 25 to 100 mm from −7 to 38
 * °C; outside, and for hotter pipe, no answer.
 */
public final class SupportSpan {

    private static final double ZERO_CELSIUS = 273.15;
    private static final LazyTable<Row> ROWS = LazyTable.of("support-spans", Row.class);

    private SupportSpan() {}

    private record Row(String material, String wall, int size, double temperature, double span, String maker) {}

    /** {@return span of PE100 at 20 °C, m: the shorter of two makers'} Outside diameter in m. */
    public static Answer polyethylene(int sdr, double outsideDiameter) {
        return shortest(rows("pe100", "SDR" + sdr), "outside diameter", outsideDiameter);
    }

    /** {@return span of PVC schedule 40, m} Nominal size in m, wall temperature in K. */
    public static Answer polyvinylChloride(double nominalSize, double temperature) {
        Physical.positive("temperature", temperature);
        List<Row> table = rows("pvc", "schedule-40");
        double celsius = temperature - ZERO_CELSIUS - 1e-9;
        double warmest = table.stream().mapToDouble(Row::temperature).max().orElseThrow();
        double least = table.stream()
                .mapToDouble(Row::temperature)
                .filter(t -> t >= celsius)
                .min()
                .orElse(Double.NaN);
        if (Double.isNaN(least)) {
            return Answer.outside("span of PVC pipe", "temperature", temperature, 0, warmest + ZERO_CELSIUS, "K");
        }
        return shortest(table.stream().filter(row -> row.temperature() == least).toList(), "nominal size", nominalSize);
    }

    /** {@return spans of each maker, m, in the order of the table} Outside diameter in m, of a tabled size. */
    static List<Double> byMaker(int sdr, double outsideDiameter) {
        return rows("pe100", "SDR" + sdr).stream()
                .filter(row -> row.size() == Math.round(outsideDiameter * 1000))
                .map(Row::span)
                .toList();
    }

    private static List<Row> rows(String material, String wall) {
        return ROWS.rows().stream()
                .filter(row -> row.material().equals(material) && row.wall().equals(wall))
                .toList();
    }

    private static Answer shortest(List<Row> table, String input, double size) {
        double millimetres = Physical.positive(input, size) * 1000;
        double low = table.stream().mapToInt(Row::size).min().orElse(0);
        double high = table.stream().mapToInt(Row::size).max().orElse(0);
        if (millimetres < low - 1e-6 || millimetres > high + 1e-6 || table.isEmpty()) {
            return Answer.outside("span of plastic pipe", input, size, low / 1000, high / 1000, "m");
        }
        int smaller = table.stream()
                .mapToInt(Row::size)
                .filter(s -> s <= millimetres + 1e-6)
                .max()
                .orElseThrow();
        return Answer.of(table.stream()
                .filter(row -> row.size() == smaller)
                .mapToDouble(Row::span)
                .min()
                .orElseThrow());
    }
}
