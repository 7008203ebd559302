package org.leat.catalogue.tables;

import java.util.List;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeStandard;

/**
 * Wall of plastic pressure pipe by the preferred-number rule: {@code e = dn/(2 S + 1)} with {@code S = 10^(k/10)}
 * exactly (SDR 11 is S 5.0119), rounded to 0.01 mm, then up to 0.1 mm, at least the standard's least wall. It is not
 * dn/SDR: 110 mm SDR 17 has 6.6 mm, not 6.5.
 *
 * <p>Source: ISO 4065; small sizes that a standard tables otherwise come from {@code wall-exceptions.csv}. An SDR outside
 * the series takes {@code S = (SDR − 1)/2}. Greatest wall: ISO 11922-1 grade V for polyethylene, ISO 1452-2 for PVC-U.
 */
public final class PreferredWall {

    private static final double MM = 1e-3;
    private static final double SLACK = 1e-6;
    private static final LazyTable<Series> SERIES = LazyTable.of("pipe-series", Series.class);
    private static final LazyTable<Tabled> EXCEPTIONS = LazyTable.of("wall-exceptions", Tabled.class);

    private PreferredWall() {}

    private record Series(double sdr, int tenths) {}

    private record Tabled(String standard, double outsideDiameter, double sdr, double wall) {}

    /** {@return the standard dimension ratios of the series, thickest wall first} */
    public static List<Double> ratios() {
        return SERIES.rows().stream().map(Series::sdr).toList();
    }

    /**
     * {@return least wall, m}
     *
     * @param outsideDiameter nominal, m
     * @param sdr standard dimension ratio, above 3
     */
    public static double minimum(PipeStandard standard, double outsideDiameter, double sdr) {
        return MM * millimetres(standard, outsideDiameter / MM, sdr);
    }

    /** {@return greatest wall, m, of a pipe whose least wall is {@code minimumWall}, m} */
    public static double maximum(PipeStandard standard, double outsideDiameter, double minimumWall) {
        StandardRow row = StandardRow.of(standard, outsideDiameter / MM);
        double wall = minimumWall / MM;
        return MM * (wall + up(row.toleranceShare() * wall + row.toleranceConstant()));
    }

    /** {@return diameters and walls of a size of the standard, m} */
    public static PipeDimensions dimensions(PipeStandard standard, double outsideDiameter, double sdr) {
        return ofWall(standard, outsideDiameter, minimum(standard, outsideDiameter, sdr));
    }

    /** {@return diameters and walls of a pipe whose least wall is known, with the standard's tolerance, m} */
    public static PipeDimensions ofWall(PipeStandard standard, double outsideDiameter, double minimumWall) {
        double greatest = maximum(standard, outsideDiameter, minimumWall);
        return new PipeDimensions(outsideDiameter, minimumWall, (minimumWall + greatest) / 2);
    }

    private static double millimetres(PipeStandard standard, double outsideDiameter, double sdr) {
        StandardRow row = StandardRow.of(standard, outsideDiameter);
        for (Tabled e : EXCEPTIONS.rows()) {
            if (e.standard().equals(standard.title())
                    && Math.abs(e.outsideDiameter() - outsideDiameter) < SLACK
                    && Math.abs(e.sdr() - sdr) < SLACK) {
                return e.wall();
            }
        }
        double wall = outsideDiameter / (2 * seriesNumber(sdr) + 1);
        return Math.max(row.leastWall(), up(Math.rint(wall * 100) / 100));
    }

    private static double seriesNumber(double sdr) {
        for (Series series : SERIES.rows()) {
            if (Math.abs(series.sdr() - sdr) < SLACK) {
                return Math.pow(10, series.tenths() / 10.0);
            }
        }
        return (sdr - 1) / 2;
    }

    /** Up to 0.1 mm; what is a tenth already stays. */
    private static double up(double millimetres) {
        return Math.ceil(millimetres * 10 - SLACK) / 10;
    }
}
