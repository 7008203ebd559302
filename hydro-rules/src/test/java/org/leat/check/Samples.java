package org.leat.check;

import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;

/** Designs for tests. */
public final class Samples {

    /** The shortest design worth checking. */
    public static final String SHORT = """
            format: 1
            name: sample
            site:
              gross-head: 24 m
            penstock:
              sections:
                - name: run
                  pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }
                  length: 90 m
            nozzles:
              open: [10 mm]
            alternator:
              open-circuit: { kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }
              winding: { resistance-between-leads: 0.2 Ω }
              pole-pairs: 6
            battery:
              chemistry: lithium-iron-phosphate
              cells-in-series: 8
              capacity: 100 Ah
            """;

    private Samples() {}

    /** {@return the short design as read from a file of that name} */
    public static Reading reading() {
        return DesignReader.read(SHORT, "sample.yaml");
    }

    /** {@return the short design} */
    public static Design design() {
        Reading reading = reading();
        Design design = reading.design();
        if (design == null) {
            throw new AssertionError(reading.problems());
        }
        return design;
    }
}
