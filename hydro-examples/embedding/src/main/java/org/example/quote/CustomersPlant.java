package org.example.quote;

import static org.leat.design.Chemistry.LITHIUM_IRON_PHOSPHATE;
import static org.leat.quantity.Quantities.*;

import java.util.List;
import org.leat.design.*;
import org.leat.file.DesignReader;

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
                                .head(exactly(m(26)))
                                .build())
                        .build())
                .penstock(PenstockBuilder.builder()
                        .sections(List.of(SectionBuilder.builder()
                                .name("run")
                                .length(m(140))
                                .fromElevation(m(26))
                                .toElevation(m(0))
                                .pipe(PipePolyethyleneBuilder.builder()
                                        .material(PolyethyleneGrade.PE100)
                                        .outsideDiameter(mm(outsideDiameterMm))
                                        .sdr(standardDimensionRatio)
                                        .build())
                                .build()))
                        .ratedFittings(bar(10))
                        .build())
                .nozzles(NozzleSetBuilder.builder()
                        .open(List.of(mm(11)))
                        .build())
                .alternator(AlternatorBuilder.builder()
                        .openCircuit(OpenCircuitVoltsAtSpeedBuilder.builder()
                                .voltage(exactly(volts(23)))
                                .speed(rpm(1000))
                                .build())
                        .winding(WindingBuilder.builder()
                                .resistanceBetweenLeads(exactly(ohms(0.15)))
                                .build())
                        .build())
                .battery(BatteryBankBuilder.builder()
                        .chemistry(LITHIUM_IRON_PHOSPHATE)
                        .cellsInSeries(8)
                        .capacity(ampereHours(150))
                        .build())
                .build();
    }
}
