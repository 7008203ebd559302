package org.leat.catalogue.tables;

import org.leat.catalogue.rows.PipeStandard;
import org.leat.law.Physical;

/** A row of {@code pipe-standards.csv}: diameters and walls in mm. */
record StandardRow(
        String standard,
        double sizesAbove,
        double sizesUpTo,
        double designCoefficient,
        double leastWall,
        double toleranceShare,
        double toleranceConstant) {

    private static final LazyTable<StandardRow> ROWS = LazyTable.of("pipe-standards", StandardRow.class);

    /** {@return the row for an outside diameter in mm; sizes beyond the table take its last row} */
    static StandardRow of(PipeStandard standard, double outsideDiameter) {
        Physical.positive("outsideDiameter", outsideDiameter);
        StandardRow found = null;
        for (StandardRow row : ROWS.rows()) {
            if (row.standard.equals(standard.title()) && outsideDiameter > row.sizesAbove) {
                found = row;
            }
        }
        if (found == null) {
            throw new IllegalStateException("no row for " + standard);
        }
        return found;
    }
}
