package org.leat.plant.duties;

import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.tables.MaterialModulus;
import org.leat.catalogue.tables.SupportSpan;
import org.leat.law.Answer;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Celsius;

/**
 * Greatest distance between supports of a section above ground, at its hottest wall. Tables are of PE100 at 20 °C and of PVC schedule 40 to
 * 38 °C; a softer wall gets a span shorter by the cube root of the ratio of stiffness, as the sag of a beam over its span has it, and PVC-U of a thinner
 * wall than schedule 40 by the cube root of that ratio.
 */
public final class SupportedSpan {

    private static final double TWENTY = Celsius.toKelvin(20);

    /** Nominal size and wall of schedule 40, m: ASTM D1785 (from memory). */
    private static final double[][] SCHEDULE_40 = {
        {0.025, 0.0334, 0.00338},
        {0.032, 0.0422, 0.00356},
        {0.040, 0.0483, 0.00368},
        {0.050, 0.0603, 0.00391},
        {0.065, 0.0730, 0.00516},
        {0.080, 0.0889, 0.00549},
        {0.100, 0.1143, 0.00602}
    };

    /** Of a metric pipe beside one of the inch series. */
    private static final double MARGIN = 1.06;

    private SupportedSpan() {}

    /** {@return m; outside where no table reaches, null for a material of which there is none} */
    public static @Nullable Amount greatest(SectionNumbers section) {
        PipeMaterial material = section.material();
        if (material == PipeMaterial.PVC_U) {
            return Amount.of(polyvinylChloride(section), section.path() + "/pipe");
        }
        return material == PipeMaterial.PE100 || material == PipeMaterial.PE80
                ? Amount.of(polyethylene(section, material), section.path() + "/pipe")
                : null;
    }

    private static Answer polyethylene(SectionNumbers section, PipeMaterial material) {
        double ratio = section.outsideDiameter() / section.leastWall();
        Answer tabled = SupportSpan.polyethylene(
                ratio <= 11.5 ? 11 : ratio <= 17.8 ? 17 : (int) Math.ceil(ratio), section.outsideDiameter());
        Answer now = MaterialModulus.longTerm(material, section.highestWallTemperature());
        double cold = MaterialModulus.longTerm(PipeMaterial.PE100, TWENTY).orThrow();
        return tabled instanceof Answer.Value span && now instanceof Answer.Value modulus
                ? Answer.of(span.value() * Math.cbrt(Math.min(1, modulus.value() / cold)))
                : tabled instanceof Answer.Value ? now : tabled;
    }

    private static Answer polyvinylChloride(SectionNumbers section) {
        double nominal = SCHEDULE_40[0][0];
        double wall = SCHEDULE_40[0][2];
        if (section.outsideDiameter() * MARGIN < SCHEDULE_40[0][1]) {
            return Answer.below(
                    "span of PVC pipe", "outside diameter", section.outsideDiameter(), SCHEDULE_40[0][1] / MARGIN, "m");
        }
        for (double[] size : SCHEDULE_40) {
            if (size[1] <= section.outsideDiameter() * MARGIN) {
                nominal = size[0];
                wall = size[2];
            }
        }
        Answer tabled = SupportSpan.polyvinylChloride(nominal, section.highestWallTemperature());
        return tabled instanceof Answer.Value span
                ? Answer.of(span.value() * Math.cbrt(Math.min(1, section.leastWall() / wall)))
                : tabled;
    }
}
