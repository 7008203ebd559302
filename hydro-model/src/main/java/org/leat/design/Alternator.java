package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Frequency;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.SharePerTemperature;
import org.leat.quantity.Quantities.ThermalResistance;

/** Permanent-magnet machine on the runner's shaft. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Permanent-magnet machine on the runner's shaft")
@Sample(
        "{ open-circuit: { kind: speed-per-volt, speed-per-volt: 30 rpm/V, as: peak }, winding: { resistance-between-leads: 0.2 \u03a9 } }")
public record Alternator(
        @About("what was measured of the voltage") @Fact OpenCircuit openCircuit,
        @About("what was measured of the winding") Winding winding,

        @About("magnets of one polarity") @Limits(atLeast = 1, atMost = 200) @CanBeAbsent @Nullable
        Integer polePairs,

        @About("alternator speed over runner speed; one if left out") @Limits(above = 0) @CanBeAbsent @Nullable
        Double gearRatio,

        @About("continuous, rms of one lead") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> currentLimit,

        @About("of rotor and bearings") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<RotationalSpeed> speedLimit,

        @About("iron and friction, from the power it takes to turn it") @Fact @CanBeAbsent @Nullable
        NoLoadLoss noLoadLoss,

        @About("iron and friction, from coasting; not used where the no-load loss is given")
        @Fact
        @CanBeAbsent
        @Nullable
        SpinDown spinDown,

        @About("winding to air") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ThermalResistance> thermalResistance,

        @About("of the winding") @Fact @CanBeAbsent @Nullable
        InsulationClass insulationClass,

        @About("of the magnets") @Fact @CanBeAbsent @Nullable
        MagnetGrade magnetGrade,

        @About("change of the magnets' flux with temperature, of the flux at 20 °C; below nil")
        @Fact
        @Limits(atLeast = -0.004, atMost = 0)
        @CanBeAbsent
        @Nullable
        Quantity<SharePerTemperature> fluxCoefficient,

        @About("IP code of the housing") @Fact @CanBeAbsent @Nullable
        String protection,

        @About("of the laminations") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Frequency> frequencyLimit) {

    public Alternator {
        Demand.limits(
                        Alternator.class,
                        openCircuit,
                        winding,
                        polePairs,
                        gearRatio,
                        currentLimit,
                        speedLimit,
                        noLoadLoss,
                        spinDown,
                        thermalResistance,
                        insulationClass,
                        magnetGrade,
                        fluxCoefficient,
                        protection,
                        frequencyLimit)
                .hold();
    }
}
