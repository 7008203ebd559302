package org.leat.page;

import org.leat.check.Comparison;
import org.leat.check.Outcome;
import org.leat.quantity.QuantityKind;

/** What the pictures of a page are about, in their order; every finding belongs to one. */
enum Topic {
    PLANT("plant", "The plant, from stream to socket"),
    PRESSURE("pressure", "Pressure along the pipe"),
    TORQUE("torque", "Torque over speed"),
    POWER("power", "Power over flow"),
    YEAR("year", "Through the year"),
    BUS("bus", "What each case makes of the bus"),
    WATTS("watts", "Where every watt goes"),
    MARGINS("margins", "What holds, tightest first");

    private final String id;
    private final String title;

    Topic(String id, String title) {
        this.id = id;
        this.title = title;
    }

    String id() {
        return id;
    }

    String title() {
        return title;
    }

    /** {@return the picture that a finding stands beside} By what is compared and where, whatever pack it comes from. */
    static Topic of(Outcome outcome) {
        Comparison comparison = outcome.comparison();
        QuantityKind kind = comparison == null ? null : comparison.kind();
        String path = outcome.path();
        if (outcome.during().equals("year") || path.startsWith("/loads")) {
            return YEAR;
        }
        if (kind == QuantityKind.PRESSURE || path.startsWith("/penstock")) {
            return PRESSURE;
        }
        if (kind == QuantityKind.VOLTAGE) {
            return BUS;
        }
        if (path.startsWith("/runner") || path.startsWith("/alternator")) {
            return TORQUE;
        }
        if (path.startsWith("/nozzles") || path.startsWith("/intake") || path.startsWith("/site")) {
            return POWER;
        }
        if (path.startsWith("/rectifier")
                || path.startsWith("/regulator")
                || path.startsWith("/dump-load")
                || path.startsWith("/battery")) {
            return BUS;
        }
        return path.equals("/") ? WATTS : PLANT;
    }
}
