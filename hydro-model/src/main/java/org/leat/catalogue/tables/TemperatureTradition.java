package org.leat.catalogue.tables;

/** Published ways of reducing the rating of plastic pipe with temperature; they differ, so reports name the one used. */
public enum TemperatureTradition {
    /** ISO 13761 and EN 12201-1 annex A, polyethylene, 50 years, to 40 °C. The 2024 issue of EN 12201 reaches 50 °C. */
    POLYETHYLENE_ISO("polyethylene-iso", "ISO 13761, EN 12201-1 annex A", 323.15),
    /** Australian practice, polyethylene, far gentler, to 50 °C with a shorter life above 40 °C. */
    POLYETHYLENE_AUSTRALIAN("polyethylene-australian", "Australian practice (PIPA POP013)", 323.15),
    /** ISO 1452-2 annex A, PVC-U, to 45 °C. */
    PVC_U("pvc-u", "ISO 1452-2 annex A", 318.15),
    /** A European seller's chart of PVC-U pipe with fittings, to 60 °C: lower than the pipe alone, so fittings govern. */
    PVC_U_FITTINGS("pvc-u-fittings", "a seller's chart of EN 1452 pipe with fittings", 333.15),
    /** United States practice, PVC 1120 pipe, joints, valves and fittings alike, to 60 °C. */
    PVC_UNITED_STATES("pvc-united-states", "United States practice (PVC 1120)", 333.15);

    private final String row;
    private final String source;
    private final double scope;

    TemperatureTradition(String row, String source, double scope) {
        this.row = row;
        this.source = source;
        this.scope = scope;
    }

    String row() {
        return row;
    }

    /** {@return who published it} */
    public String source() {
        return source;
    }

    /**
     * {@return the highest wall temperature, K, that the newest issue of the source covers} It may lie above the table
     * at hand: between the two the answer is open until that factor is supplied.
     */
    public double scope() {
        return scope;
    }
}
