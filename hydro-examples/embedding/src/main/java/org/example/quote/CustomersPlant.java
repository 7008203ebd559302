package org.example.quote;

import static org.leat.design.Chemistry.LITHIUM_IRON_PHOSPHATE;
import static org.leat.quantity.Measured.exactly;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.leat.design.AlternatorBuilder;
import org.leat.design.BatteryBankBuilder;
import org.leat.design.Design;
import org.leat.design.DesignBuilder;
import org.leat.design.GrossHeadStatedBuilder;
import org.leat.design.NozzleSetBuilder;
import org.leat.design.OpenCircuitVoltsAtSpeedBuilder;
import org.leat.design.PenstockBuilder;
import org.leat.design.PipePolyethyleneBuilder;
import org.leat.design.PolyethyleneGrade;
import org.leat.design.SectionBuilder;
import org.leat.design.SiteBuilder;
import org.leat.design.WindingBuilder;
import org.leat.file.DesignReader;
import org.leat.quantity.RotationalSpeed;
import org.leat.quantity.Si;

/** What a customer tells over the counter, as a design. The numbers are invented. */
final class CustomersPlant {

    private CustomersPlant() {}

    /** The customer's plant on a pipe of that outside diameter and pressure class. */
    static Design on(double outsideDiameterMm, double standardDimensionRatio) {
        return DesignBuilder.builder()
                .format(DesignReader.FORMAT)
                .name("plant at the counter")
                .site(SiteBuilder.builder()
                        .grossHead(GrossHeadStatedBuilder.builder()
                                .head(exactly(metres(26)))
                                .build())
                        .build())
                .penstock(PenstockBuilder.builder()
                        .sections(List.of(SectionBuilder.builder()
                                .name("run")
                                .length(metres(140))
                                .fromElevation(metres(26))
                                .toElevation(metres(0))
                                .pipe(PipePolyethyleneBuilder.builder()
                                        .material(PolyethyleneGrade.PE100)
                                        .outsideDiameter(Si.quantity(outsideDiameterMm, "mm", Length.class))
                                        .sdr(standardDimensionRatio)
                                        .build())
                                .build()))
                        .ratedFittings(Si.quantity(10, "bar", Pressure.class))
                        .build())
                .nozzles(NozzleSetBuilder.builder()
                        .open(List.of(Si.quantity(11, "mm", Length.class)))
                        .build())
                .alternator(AlternatorBuilder.builder()
                        .openCircuit(OpenCircuitVoltsAtSpeedBuilder.builder()
                                .voltage(exactly(Si.quantity(23, "V", ElectricPotential.class)))
                                .speed(Si.quantity(1000, "rpm", RotationalSpeed.class))
                                .build())
                        .winding(WindingBuilder.builder()
                                .resistanceBetweenLeads(exactly(Si.quantity(0.15, "ohm", ElectricResistance.class)))
                                .build())
                        .build())
                .battery(BatteryBankBuilder.builder()
                        .chemistry(LITHIUM_IRON_PHOSPHATE)
                        .cellsInSeries(8)
                        .capacity(Si.quantity(150, "Ah", ElectricCharge.class))
                        .build())
                .build();
    }

    private static Quantity<Length> metres(double metres) {
        return Si.quantity(metres, "m", Length.class);
    }
}
