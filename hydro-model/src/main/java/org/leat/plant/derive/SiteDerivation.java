package org.leat.plant.derive;

import org.leat.design.Site;
import org.leat.design.Stream;
import org.leat.design.TemperatureRange;
import org.leat.hydraulics.AtmosphericPressure;
import org.leat.hydraulics.Estimate;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Site and water of a plant. */
final class SiteDerivation {

    private SiteDerivation() {}

    static SiteNumbers of(Site site, double lowestWater, double highestWater, Assume assume) {
        Estimate head = GaugingDerivation.head(
                site.grossHead(), Celsius.of(WaterNumbers.at(lowestWater).temperature()));
        double altitude =
                assume.stated(site.altitude(), "/site/altitude", QuantityKind.LENGTH, 500, 0, 3000, "assumed/altitude");
        TemperatureRange air = site.airTemperature();
        double lowestAir = air != null
                ? Si.of(air.lowest())
                : assume.sound(
                        "/site/air-temperature/lowest",
                        QuantityKind.TEMPERATURE,
                        Celsius.toKelvin(-10),
                        Celsius.toKelvin(-30),
                        Celsius.toKelvin(10),
                        "assumed/air-temperature");
        double highestAir = air != null
                ? Si.of(air.highest())
                : assume.sound(
                        "/site/air-temperature/highest",
                        QuantityKind.TEMPERATURE,
                        Celsius.toKelvin(35),
                        Celsius.toKelvin(25),
                        Celsius.toKelvin(45),
                        "assumed/air-temperature");
        Stream stream = site.stream();
        return new SiteNumbers(
                head.value(),
                head.plusMinus().orElse(0),
                altitude,
                AtmosphericPressure.atAltitude(altitude),
                new SiteNumbers.Temperatures(lowestWater, highestWater, lowestAir, highestAir),
                StreamDerivation.of(stream, assume));
    }
}
