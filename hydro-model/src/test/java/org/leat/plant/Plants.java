package org.leat.plant;

import java.util.Locale;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;

/** Designs written as a builder would write them. */
public final class Plants {

    private Plants() {}

    /** The least a builder can know, the runner left out. */
    public static final String LEAST = """
            format: 1
            name: least
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
              winding: { resistance-between-leads: 0.2 ohm }
            battery:
              chemistry: lithium-iron-phosphate
              cells-in-series: 8
              capacity: 100 Ah
            """;

    public static Design least() {
        return read(LEAST);
    }

    /** A plant in which every number that its running hangs on is stated. */
    public static Design stated(String head, String bore, String pitch, String regulator) {
        return read(statedText(head, bore, pitch, regulator));
    }

    public static String statedText(String head, String bore, String pitch, String regulator) {
        return String.format(Locale.ROOT, """
                format: 1
                name: stated
                site:
                  gross-head: %s
                  water-temperature: { lowest: 10 °C, highest: 10 °C }
                penstock:
                  sections:
                    - name: run
                      pipe: { kind: other-pipe, bore: 60 mm, wall: 5 mm, roughness: 0.01 mm }
                      length: 100 m
                      fittings: [ { kind: entrance-sharp, loss-coefficient: 0.5 } ]
                nozzles:
                  open: [%s]
                  velocity-coefficient: 0.97
                  contraction-coefficient: 1
                runner:
                  kind: pelton
                  pitch-diameter: %s
                  measured-efficiency: 75 %%
                  runaway-factor: 1.8
                alternator:
                  open-circuit: { kind: volts-at-speed, voltage: 22 V, speed: 1000 rpm, between: leads, as: rms }
                  winding: { resistance-between-leads: 0.2 ohm, resistance-temperature: 20 °C, inductance-between-leads: 0.4 mH, temperature: 20 °C }
                  pole-pairs: 7
                  no-load-loss: { power: 10 W, speed: 1000 rpm }
                rectifier: { drop-per-diode: 0.8 V, slope-resistance: 5 mohm }
                %s
                battery: { chemistry: lithium-iron-phosphate, cells-in-series: 8, capacity: 100 Ah, state-of-charge: 60 %%, internal-resistance: 10 mohm }
                """, head, bore, pitch, regulator);
    }

    public static Design read(String yaml) {
        Reading reading = DesignReader.read(yaml, "test.yaml");
        if (reading.design() == null) {
            throw new AssertionError(reading.problems().toString());
        }
        return reading.design();
    }
}
