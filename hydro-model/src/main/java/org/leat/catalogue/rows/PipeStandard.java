package org.leat.catalogue.rows;

import java.util.Locale;
import java.util.Optional;
import org.apiguardian.api.API;

/** Standards of plastic pressure pipe that the catalogue knows. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum PipeStandard {
    /** polyethylene; EN 12201-2 has the same walls. */
    ISO_4427("ISO 4427"),
    /** polyethylene, older German table. */
    DIN_8074("DIN 8074"),
    /** PVC-U; EN 1452 is its former name. */
    ISO_1452("ISO 1452"),
    /** PVC-U, older German table. */
    DIN_8062("DIN 8062");

    private final String title;

    PipeStandard(String title) {
        this.title = title;
    }

    /** {@return number and issuing body, as marked on pipe} */
    public String title() {
        return title;
    }

    /** {@return the standard that a mark names, with or without its part and year} */
    public static Optional<PipeStandard> find(String mark) {
        String plain = mark.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
        if (plain.startsWith("EN12201") || plain.startsWith("ENISO4427")) {
            return Optional.of(ISO_4427);
        }
        if (plain.startsWith("EN1452") || plain.startsWith("ENISO1452")) {
            return Optional.of(ISO_1452);
        }
        for (PipeStandard standard : values()) {
            if (plain.startsWith(standard.title.replace(" ", ""))) {
                return Optional.of(standard);
            }
        }
        return Optional.empty();
    }
}
