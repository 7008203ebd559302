package org.leat.catalogue.tables;

import java.util.Locale;
import org.leat.catalogue.rows.Spread;
import org.leat.design.FittingKind;

/** Loss coefficients K of fittings on their own bore, with the range met, from {@code fittings.csv}. */
public final class FittingLoss {

    private static final LazyTable<Row> ROWS = LazyTable.of("fittings", Row.class);

    private FittingLoss() {}

    private record Row(String kind, double low, double usual, double high, String source) {}

    /** {@return K of a fitting, on the velocity in its own bore} Small screwed fittings scatter by 30 % and more. */
    public static Spread of(FittingKind kind) {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return ROWS.rows().stream()
                .filter(row -> row.kind().equals(name))
                .map(row -> new Spread(row.low(), row.usual(), row.high(), row.source()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no loss tabled for " + kind));
    }
}
