package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Si;

/** Pipe or hose from intake to nozzles. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Pipe or hose from intake to nozzles")
@Sample(
        "{ sections: [{ name: run, length: 90 m, pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 } }] }")
public record Penstock(
        @About("from the intake down, in order") @Limits(items = 1, mostItems = 100)
        List<Section> sections,

        @About("working pressure of the weakest joint, valve or clamp at 20 °C")
        @Fact
        @Limits(above = 0)
        @CanBeAbsent
        @Nullable
        Quantity<Pressure> ratedFittings,

        @About("force the anchors at bends and end hold") @Fact @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Force> anchors,

        @About("change of length the run can take") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Length> expansionAllowance,

        @About("how the pipe stands to the sun") @CanBeAbsent @Nullable
        Sunlight sunlight,

        @About("whether part of it lies above frost depth") @CanBeAbsent @Nullable
        Boolean exposed,

        @About("what the pipe costs, in any money") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Dimensionless> price,

        @About("of the pipe wall, water standing in the sun") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> highestWallTemperature,

        @About("whether it is emptied whenever water would stand in it in frost") @CanBeAbsent @Nullable
        Boolean drained,

        @About("taken to refill it when it has run empty") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Time> fillingTime,

        @About("greatest between supports above ground; nil where it lies on the ground all along")
        @Limits(atLeast = 0)
        @CanBeAbsent
        @Nullable
        Quantity<Length> supportSpacing,

        @About("how often the water is stopped in a year") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer stopsPerYear) {

    public Penstock {
        sections = List.copyOf(sections);
        Demand.limits(
                        Penstock.class,
                        sections,
                        ratedFittings,
                        anchors,
                        expansionAllowance,
                        sunlight,
                        exposed,
                        price,
                        highestWallTemperature,
                        drained,
                        fillingTime,
                        supportSpacing,
                        stopsPerYear)
                .that(
                        gap(sections) == 0,
                        "sections",
                        gap(sections) == 0 ? "" : apart(sections, gap(sections)),
                        "each section beginning at the elevation where the one before ends")
                .that(names(sections), "sections", "a name used twice", "a name of its own for each section")
                .hold();
    }

    /** {@return the first section that does not begin where the one before it ends; zero if all meet} */
    private static int gap(List<Section> sections) {
        for (int i = 1; i < sections.size(); i++) {
            Quantity<Length> end = sections.get(i - 1).toElevation();
            Quantity<Length> start = sections.get(i).fromElevation();
            if (end != null && start != null && Math.abs(Si.of(end) - Si.of(start)) > 0.005) {
                return i;
            }
        }
        return 0;
    }

    private static String apart(List<Section> sections, int at) {
        Section upper = sections.get(at - 1);
        Section lower = sections.get(at);
        return upper.name() + " ending at " + Demand.print(upper.toElevation()) + " and " + lower.name()
                + " beginning at " + Demand.print(lower.fromElevation());
    }

    private static boolean names(List<Section> sections) {
        return sections.stream().map(Section::name).distinct().count() == sections.size();
    }
}
